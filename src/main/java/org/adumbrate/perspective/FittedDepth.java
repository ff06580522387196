package org.adumbrate.perspective;

import java.util.List;

/**
 * The range of a depth pass as height lines tell it.
 *
 * @param nearM the distance in metres that level 0 stands for
 * @param farM the distance that level 1 stands for
 * @param residualsMm how much taller each height line is drawn than its level says, in mm, in the readings' order
 * @param distrusted the readings that were left out of account: lines hidden in part, feet off their surface
 */
public record FittedDepth(double nearM, double farM, List<Double> residualsMm, List<DepthReading> distrusted) {
    /** Copies the lists. */
    public FittedDepth {
        residualsMm = List.copyOf(residualsMm);
        distrusted = List.copyOf(distrusted);
    }
}
