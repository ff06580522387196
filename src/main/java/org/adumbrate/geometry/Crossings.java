package org.adumbrate.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.LineIntersector;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.noding.BasicSegmentString;
import org.locationtech.jts.noding.MCIndexNoder;
import org.locationtech.jts.noding.SegmentIntersector;
import org.locationtech.jts.noding.SegmentString;

/**
 * Counts where lines cross, and where they come close to each other, so that scribble is refused before time and memory run out
 * over it.
 */
final class Crossings implements SegmentIntersector {
    /** More than any drawing of things has; the faces between them are found in some three seconds. */
    private static final int MOST_CROSSINGS = 50_000;

    /** So many lines cannot cross more often. */
    static final int HARMLESS = 300;

    /** Looked through in a second. */
    private static final int MOST_NEAR = 2_000_000;

    private final LineIntersector lines = new RobustLineIntersector();
    private int crossings;
    private int near;

    private Crossings() {}

    /** @throws IllegalArgumentException if lines cross so often that no sensible region could come of them */
    static void requireFew(List<Coordinate[]> lines) {
        List<SegmentString> strings = new ArrayList<>();
        for (Coordinate[] line : lines) {
            strings.add(new BasicSegmentString(line, null));
        }
        Crossings crossings = new Crossings();
        new MCIndexNoder(crossings).computeNodes(strings);
        Space.require(
                !crossings.isDone(),
                () -> "its lines cross each other more than " + MOST_CROSSINGS + " times, or nearly meet " + MOST_NEAR
                        + " times");
    }

    @Override
    public void processIntersections(SegmentString a, int k, SegmentString b, int n) {
        if (a == b && k == n) {
            return;
        }
        near++;
        lines.computeIntersection(
                a.getCoordinate(k), a.getCoordinate(k + 1), b.getCoordinate(n), b.getCoordinate(n + 1));
        crossings += lines.isProper() ? 1 : 0;
    }

    @Override
    public boolean isDone() {
        return crossings > MOST_CROSSINGS || near > MOST_NEAR;
    }
}
