package org.adumbrate.geometry;

/** A point of one of the three planes; its type says which, and so in which unit it is measured. */
public sealed interface PlanePoint permits SheetPoint, PagePoint, RasterPoint {
    /** To the right, in the unit of the plane. */
    double x();

    /** Down, in the unit of the plane. */
    double y();
}
