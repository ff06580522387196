package org.adumbrate.linework.region;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.adumbrate.geometry.ChordVisitor;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;

/**
 * Where evenly spaced parallel lines lie within a region: every edge says where the lines cross it, and between the first and
 * second, third and fourth crossing of a line lies the region (scan conversion by the even-odd rule).
 */
final class Scan {
    private Scan() {}

    /** A stretch of a line, in mm along it. */
    record Stretch(double from, double to) {}

    /**
     * The stretches of one line.
     *
     * @param number which line it is, counted from the one through the sheet's origin
     */
    record Row(long number, double acrossMm, double cos, double sin, List<Stretch> stretches) {
        double x(double alongMm) {
            return alongMm * cos + acrossMm * sin;
        }

        double y(double alongMm) {
            return acrossMm * cos - alongMm * sin;
        }
    }

    /** @param angleDeg counter-clockwise from the horizontal as seen on the sheet */
    static List<Row> rows(Region<SheetPoint> region, double angleDeg, double spacingMm) {
        if (!Double.isFinite(angleDeg)) {
            throw new IllegalArgumentException("an angle of " + angleDeg + " degrees has no direction");
        }
        // whole and half turns exactly, so that level lines are level
        double angle = Math.toRadians(Math.IEEEremainder(angleDeg, 360));
        boolean upright = Math.abs(Math.IEEEremainder(angleDeg, 180)) == 90;
        double cos = upright ? 0 : Math.cos(angle);
        double sin = Math.IEEEremainder(angleDeg, 180) == 0 ? 0 : Math.sin(angle);
        Crossings crossings = new Crossings(cos, sin, spacingMm);
        region.sides(crossings);
        List<Row> rows = new ArrayList<>();
        crossings.byRow.forEach(
                (number, found) -> rows.add(new Row(number, number * spacingMm, cos, sin, found.stretches())));
        return rows;
    }

    /** Walks round a region and notes where each edge is crossed. */
    private static final class Crossings implements ChordVisitor {
        private final Map<Long, Found> byRow = new TreeMap<>();
        private final double cos;
        private final double sin;
        private final double spacing;

        Crossings(double cos, double sin, double spacing) {
            this.cos = cos;
            this.sin = sin;
            this.spacing = spacing;
        }

        /** An edge holds its upper end and not its lower one, so that a line through a corner crosses once or twice. */
        @Override
        public void chord(double x0, double y0, double x1, double y1) {
            double along = x0 * cos - y0 * sin;
            double across = (x0 * sin + y0 * cos) / spacing;
            double toAlong = x1 * cos - y1 * sin;
            double toAcross = (x1 * sin + y1 * cos) / spacing;
            long last = (long) Math.ceil(Math.max(across, toAcross));
            for (long row = (long) Math.ceil(Math.min(across, toAcross)); row < last; row++) {
                double share = (row - across) / (toAcross - across);
                byRow.computeIfAbsent(row, key -> new Found()).add(along + share * (toAlong - along));
            }
        }
    }

    private static final class Found {
        private double[] places = new double[4];
        private int count;

        void add(double place) {
            if (count == places.length) {
                places = Arrays.copyOf(places, 2 * count);
            }
            places[count++] = place;
        }

        List<Stretch> stretches() {
            Arrays.sort(places, 0, count);
            List<Stretch> stretches = new ArrayList<>(count / 2);
            for (int k = 0; k + 1 < count; k += 2) {
                stretches.add(new Stretch(places[k], places[k + 1]));
            }
            return stretches;
        }
    }
}
