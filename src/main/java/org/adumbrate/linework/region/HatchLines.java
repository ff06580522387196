package org.adumbrate.linework.region;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;

/**
 * Parallel lines that fill a region. They are counted from the sheet's origin, not from the region, so that regions side by side
 * are hatched in one sweep and a sheet built anew is hatched as before. What a region leaves of a line shorter than a tenth of
 * the spacing is dropped.
 */
public final class HatchLines {
    /** The narrowest spacing, in mm; closer lines print as a solid. */
    public static final double LEAST_SPACING_MM = 0.05;

    private static final double LEAST_STROKE = 0.1;

    private HatchLines() {}

    /**
     * Hatching lines, the first direction before the second, each line one path with a run for every stretch of it.
     *
     * @param region what is filled
     * @param angleDeg the direction of the lines, in degrees counter-clockwise from the horizontal as seen on the sheet
     * @param spacingMm the distance from line to line, in mm, at least {@link #LEAST_SPACING_MM}
     * @param crossing whether a second set of lines crosses the first at a right angle
     * @throws IllegalArgumentException if the angle is not finite or the spacing is too small
     */
    public static List<VectorPath<SheetPoint>> lines(
            Region<SheetPoint> region, double angleDeg, double spacingMm, boolean crossing) {
        List<VectorPath<SheetPoint>> lines = new ArrayList<>();
        addLines(region, angleDeg, spacingMm, lines);
        if (crossing) {
            addLines(region, angleDeg + 90, spacingMm, lines);
        }
        return lines;
    }

    /**
     * An etched pattern, as for glass: strokes in rows, each row shifted by half a period against the one before it.
     *
     * @param region what is filled
     * @param angleDeg the direction of the strokes, as for {@link #lines}
     * @param spacingMm the distance from row to row, in mm, at least {@link #LEAST_SPACING_MM}
     * @param strokeMm the length of a stroke, in mm, positive
     * @param gapMm the gap after a stroke, in mm, positive
     * @throws IllegalArgumentException if a measure is out of range
     */
    public static List<VectorPath<SheetPoint>> etched(
            Region<SheetPoint> region, double angleDeg, double spacingMm, double strokeMm, double gapMm) {
        if (!(strokeMm >= LEAST_SPACING_MM && gapMm >= LEAST_SPACING_MM)) {
            throw new IllegalArgumentException(
                    "strokes of " + strokeMm + " mm with gaps of " + gapMm + " mm cannot be told apart");
        }
        List<VectorPath<SheetPoint>> rows = new ArrayList<>();
        double period = strokeMm + gapMm;
        for (Scan.Row row : Scan.rows(region, angleDeg, checked(spacingMm))) {
            VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
            double shift = row.number() % 2 == 0 ? 0 : period / 2;
            for (Scan.Stretch stretch : row.stretches()) {
                long first = (long) Math.floor((stretch.from() - shift - strokeMm) / period);
                for (long k = first; k * period + shift < stretch.to(); k++) {
                    double from = Math.max(stretch.from(), k * period + shift);
                    double to = Math.min(stretch.to(), k * period + shift + strokeMm);
                    addStroke(row, from, to, LEAST_STROKE * spacingMm, path);
                }
            }
            addIfDrawn(path, rows);
        }
        return rows;
    }

    private static void addLines(
            Region<SheetPoint> region, double angleDeg, double spacingMm, List<VectorPath<SheetPoint>> lines) {
        for (Scan.Row row : Scan.rows(region, angleDeg, checked(spacingMm))) {
            VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
            for (Scan.Stretch stretch : row.stretches()) {
                addStroke(row, stretch.from(), stretch.to(), LEAST_STROKE * spacingMm, path);
            }
            addIfDrawn(path, lines);
        }
    }

    private static double checked(double spacingMm) {
        if (!(spacingMm >= LEAST_SPACING_MM && spacingMm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "a hatch spacing of " + spacingMm + " mm is not at least " + LEAST_SPACING_MM + " mm");
        }
        return spacingMm;
    }

    private static void addStroke(
            Scan.Row row, double from, double to, double leastMm, VectorPath.Builder<SheetPoint> path) {
        if (to - from >= leastMm) {
            path.moveTo(row.x(from), row.y(from));
            path.lineTo(row.x(to), row.y(to));
        }
    }

    private static void addIfDrawn(VectorPath.Builder<SheetPoint> path, List<VectorPath<SheetPoint>> paths) {
        VectorPath<SheetPoint> drawn = path.build();
        if (!drawn.isEmpty()) {
            paths.add(drawn);
        }
    }
}
