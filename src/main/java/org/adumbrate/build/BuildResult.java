package org.adumbrate.build;

import java.util.List;
import java.util.Map;

/**
 * What a build made and found.
 *
 * @param outputs the files written
 * @param placements where the passes came to lie
 * @param findings what should be known before printing
 * @param seconds wall time by stage
 */
public record BuildResult(
        List<Output> outputs, List<PassPlacement> placements, List<Finding> findings, Map<String, Double> seconds) {}
