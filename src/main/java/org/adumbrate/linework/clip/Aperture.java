package org.adumbrate.linework.clip;

import java.util.List;
import org.adumbrate.geometry.PathPiece;

/** A closed part of the plane that lines are seen through. */
sealed interface Aperture permits Window, OutlineAperture, Union {
    /**
     * How near to a border still counts as on it, in mm. Files hold coordinates in single precision, which at the far
     * edge of an A0 sheet is no finer than this.
     */
    double TOLERANCE = 5e-4;

    /** How much of a box lies in an aperture. */
    enum Coverage {
        /** All of it. */
        WHOLE,
        /** Some of it, or it would take too long to say. */
        PART,
        /** Nothing of it. */
        NOTHING
    }

    /** The outlines of which any holds what lies in this aperture. */
    List<FlatOutline> outlines();

    /** How much of the box lies in this aperture. */
    Coverage coverage(Bounds box);

    /** Notes all places where a piece crosses the border, and perhaps some more. */
    void crossings(PathPiece piece, Splits splits);

    /** True for a point inside or on the border. */
    boolean holds(double x, double y);
}
