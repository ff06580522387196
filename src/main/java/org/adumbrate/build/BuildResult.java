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
 * @param stages what was reused of earlier builds and what was made anew, by what is worth keeping
 */
public record BuildResult(
        List<Output> outputs,
        List<PassPlacement> placements,
        List<Finding> findings,
        Map<String, Double> seconds,
        Map<String, Reuse.Count> stages) {}
