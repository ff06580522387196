package org.adumbrate.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.noding.BasicSegmentString;
import org.locationtech.jts.noding.MCIndexNoder;
import org.locationtech.jts.noding.SegmentIntersector;
import org.locationtech.jts.noding.SegmentString;

/** Counts where lines come close to each other, so that scribble is refused before time and memory run out over it. */
final class Crossings implements SegmentIntersector {
    /** More than any drawing of things has, and still cut in a few seconds. */
    private static final int MOST = 2_000_000;

    private int count;

    private Crossings() {}

    /** @throws IllegalArgumentException if lines cross so often that no sensible region could come of them */
    static void requireFew(List<Coordinate[]> lines) {
        List<SegmentString> strings = new ArrayList<>();
        for (Coordinate[] line : lines) {
            strings.add(new BasicSegmentString(line, null));
        }
        Crossings crossings = new Crossings();
        new MCIndexNoder(crossings).computeNodes(strings);
        Space.require(!crossings.isDone(), () -> "its lines cross each other more than a million times");
    }

    @Override
    public void processIntersections(SegmentString a, int k, SegmentString b, int n) {
        count += a == b && k == n ? 0 : 1;
    }

    @Override
    public boolean isDone() {
        return count > MOST;
    }
}
