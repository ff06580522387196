package org.adumbrate.linework.outline;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.VectorPath;

/**
 * Reads a shape of any number of corners and holes as a line. The middle lies between edges that face each other across the shape; their
 * distance is the width, and where it is not, the line turns, ends or branches.
 */
final class MiddleFinder {
    /** Shorter than so many widths, a shape has no direction. */
    private static final double SHORTEST = 0.5;

    /** By how much the area may differ from that of the line, as a share, and for each end and corner, in widths squared. */
    private static final double AREA_SHARE = 0.03;

    private static final double AREA_OF_CORNER = 0.6;

    private static final int MOST_EDGES = 200_000;

    private MiddleFinder() {}

    /**
     * The line that a shape was made of, if it was.
     *
     * @param rims the shape's own rim first and then its holes, each turned so that the shape lies to the side of (-dy, dx) of its edges
     * @param outline the same as it is drawn
     */
    static Optional<OutlinedLine> of(List<Rim> rims, VectorPath<PagePoint> outline) {
        ShapeEdges edges = new ShapeEdges(rims);
        double area = edges.area();
        double about = aboutWidth(area, edges.perimeter());
        if (area <= 0 || about > 1.25 * Widths.WIDEST_MM || edges.size() > MOST_EDGES) {
            return Optional.empty();
        }
        List<Facing> all = edges.facing(about / 2, 2.2 * about);
        double width = width(all);
        double tolerance = Widths.tolerance(width);
        List<Facing> stretches = FlankClaims.settled(
                all.stream()
                        .filter(facing -> Math.abs(facing.width0() - width) <= tolerance
                                && Math.abs(facing.width1() - width) <= tolerance)
                        .toList(),
                edges.size());
        if (stretches.isEmpty() || !Widths.isLine(width)) {
            return Optional.empty();
        }
        MiddleEnds ends = new MiddleEnds(edges, stretches, width);
        if (!ends.areSound()) {
            return Optional.empty();
        }
        VectorPath<PagePoint> middle = MiddlePath.of(ends, stretches.size());
        double length = middle.length();
        double expected = length * width + ends.round() * Math.PI / 8 * width * width;
        double allowed = AREA_SHARE * area + AREA_OF_CORNER * width * width * (ends.corners() + ends.free());
        if (length < SHORTEST * width || Math.abs(area - expected) > allowed) {
            return Optional.empty();
        }
        LineCap cap = ends.free() > 0 && ends.round() == ends.free() ? LineCap.ROUND : LineCap.BUTT;
        return Optional.of(new OutlinedLine(outline, middle, length, width, cap, /* across= */ Optional.empty()));
    }

    /** A strip of length l and width w has the area lw and the perimeter 2l + 2w. */
    private static double aboutWidth(double area, double perimeter) {
        double square = perimeter * perimeter - 16 * area;
        return (perimeter - Math.sqrt(Math.max(0, square))) / 4;
    }

    /** The median of the widths by length. */
    private static double width(List<Facing> facing) {
        double half = facing.stream().mapToDouble(Facing::length).sum() / 2;
        List<Facing> ordered = facing.stream()
                .sorted(Comparator.comparingDouble(one -> one.width0() + one.width1()))
                .toList();
        double sum = 0;
        for (Facing one : ordered) {
            sum += one.length();
            if (sum >= half) {
                return (one.width0() + one.width1()) / 2;
            }
        }
        return 0;
    }
}
