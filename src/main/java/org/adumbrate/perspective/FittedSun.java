package org.adumbrate.perspective;

import java.util.List;

/**
 * The sun as shadows on the drawing tell it.
 *
 * @param direction toward it
 * @param residualsMm how far each sample's tip lies from where this sun casts it, in mm of the sheet, in the samples' order
 */
public record FittedSun(SunDirection direction, List<Double> residualsMm) {
    /** Copies the list. */
    public FittedSun {
        residualsMm = List.copyOf(residualsMm);
    }

    /** The largest residual in mm; 0 for one sample, which any sun can be fitted to. */
    public double worstMm() {
        return residualsMm.stream().mapToDouble(Double::doubleValue).max().orElse(0);
    }
}
