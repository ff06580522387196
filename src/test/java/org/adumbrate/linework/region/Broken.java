package org.adumbrate.linework.region;

import java.util.List;
import java.util.Random;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;

/** Edges broken the way exports break them. */
final class Broken {
    private Broken() {}

    /**
     * Adds the pieces of a straight edge, some overlapping, some doubled.
     *
     * @param gapMm half of the ends of edges fall short by 0.02 mm to this
     */
    static void breakUp(
            SheetPoint from, SheetPoint to, double gapMm, Random random, List<VectorPath<SheetPoint>> pieces) {
        double length = from.distanceTo(to);
        double start = random.nextBoolean() ? 0 : 0.02 + (gapMm - 0.02) * random.nextDouble();
        double end = length - (random.nextBoolean() ? 0 : 0.02 + (gapMm - 0.02) * random.nextDouble());
        while (start < end) {
            double stop = Math.min(end, start + 1 + 30 * random.nextDouble());
            if (end - stop < 1) {
                stop = end;
            }
            pieces.add(piece(from, to, start / length, stop / length, random));
            if (random.nextInt(20) == 0) {
                double cut = start + (stop - start) * random.nextDouble() / 2;
                pieces.add(
                        piece(from, to, random.nextBoolean() ? cut / length : start / length, stop / length, random));
            }
            start = stop == end ? end : stop - (random.nextBoolean() ? 0 : 0.1 * random.nextDouble());
        }
    }

    private static VectorPath<SheetPoint> piece(
            SheetPoint from, SheetPoint to, double start, double stop, Random random) {
        double a = random.nextBoolean() ? start : stop;
        double b = a == start ? stop : start;
        return Drawn.line(
                from.x() + a * (to.x() - from.x()) + blur(random), from.y() + a * (to.y() - from.y()) + blur(random),
                from.x() + b * (to.x() - from.x()) + blur(random), from.y() + b * (to.y() - from.y()) + blur(random));
    }

    /** Break points of exports are off by up to 0.002 mm. */
    private static double blur(Random random) {
        return 0.002 * (2 * random.nextDouble() - 1);
    }
}
