package org.adumbrate.geometry;

/** Receives straight lines one by one; they may have no length. */
@FunctionalInterface
public interface ChordVisitor {
    /** Receives the line from (x0, y0) to (x1, y1). */
    void chord(double x0, double y0, double x1, double y1);
}
