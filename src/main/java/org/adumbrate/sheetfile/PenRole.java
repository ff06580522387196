package org.adumbrate.sheetfile;

import org.adumbrate.geometry.Length;

/**
 * What the lines of a pen depict. Each has a weight of the series of ISO 128-2:2020 (0.13 0.18 0.25 0.35 0.5 0.7 1.0 mm), which
 * a pen without a width of its own takes.
 */
public enum PenRole {
    /** What the section plane slices. */
    CUT(0.7),
    /** The bounds of the building against what lies far behind it. */
    PROFILE(0.5),
    /** Edges of the building beyond the cut. */
    BUILDING(0.25),
    /** Furniture and fittings. */
    FURNITURE(0.18),
    /** Joints and patterns of floors and walls. */
    PAVING(0.13),
    /** The terrain. */
    GROUND(0.25),
    /** Trees and plants. */
    PLANTING(0.13),
    /** Panes. */
    GLASS(0.13),
    /** Buildings that stand around. */
    NEIGHBOUR(0.13),
    /** Anything else. */
    OTHER(0.25);

    private final double widthMm;

    PenRole(double widthMm) {
        this.widthMm = widthMm;
    }

    /** The line weight of a pen that states none. */
    public Length width() {
        return Length.ofMillimetres(widthMm);
    }
}
