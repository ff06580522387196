package org.adumbrate.linework.pens;

import java.util.OptionalDouble;

/** What lines may depict, with a weight of the series of ISO 128-2:2020: 0.13 0.18 0.25 0.35 0.5 0.7 1.0 mm. */
public enum LineRole {
    /** What the section plane slices. */
    CUT("cut", 0.7),
    /** Edges of the building beyond the cut. */
    BUILDING("building", 0.25),
    /** Furniture and fittings. */
    FURNITURE("furniture", 0.18),
    /** Joints and patterns of floors. */
    PAVING("paving", 0.13),
    /** The terrain. */
    GROUND("ground", 0.25),
    /** Trees and plants. */
    PLANTING("planting", 0.13),
    /** Panes. */
    GLASS("glass", 0.13),
    /** Buildings that stand around. */
    NEIGHBOUR("neighbour", 0.13),
    /** Vertical references of known height, which are measured and not drawn. */
    HEIGHT_LINES("height lines", 0),
    /** Anything else. */
    OTHER("other", 0.25);

    private final String word;
    private final double widthMm;

    LineRole(String word, double widthMm) {
        this.word = word;
        this.widthMm = widthMm;
    }

    /** The role in a word or two. */
    public String word() {
        return word;
    }

    /** The weight that suits it in mm; none where it is not drawn. */
    public OptionalDouble widthMm() {
        return widthMm > 0 ? OptionalDouble.of(widthMm) : OptionalDouble.empty();
    }
}
