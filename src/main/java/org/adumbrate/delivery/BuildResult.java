package org.adumbrate.delivery;

import java.util.List;
import java.util.Map;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.prepare.passes.PassPlacement;

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
        Map<String, Run.Count> stages) {}
