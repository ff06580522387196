package org.adumbrate.linework.clip;

import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.VectorPath;

/** An outline of straight edges in mm, every run of it closed, and what counts as its inside; immutable. */
public final class FlatOutline {
    private final double[] edges;
    private final FillRule rule;

    private FlatOutline(double[] edges, FillRule rule) {
        this.edges = edges;
        this.rule = rule;
    }

    /**
     * A path's outline, its curves to within 0.002 mm.
     *
     * @throws TooIntricateException if it has more than so many edges
     */
    public static FlatOutline of(VectorPath<?> path, FillRule rule, int mostEdges) {
        return new FlatOutline(OutlineEdges.of(path, mostEdges), rule);
    }

    /** An upright rectangle. */
    static FlatOutline rectangle(double left, double top, double right, double bottom) {
        return new FlatOutline(
                new double[] {
                    left, top, right, top, right, top, right, bottom, right, bottom, left, bottom, left, bottom, left,
                    top
                },
                FillRule.NON_ZERO);
    }

    /** What counts as its inside. */
    public FillRule rule() {
        return rule;
    }

    /** How many edges it has. */
    public int edges() {
        return edges.length / 4;
    }

    /** Where an edge begins, across. */
    public double x0(int edge) {
        return edges[4 * edge];
    }

    /** Where an edge begins, down. */
    public double y0(int edge) {
        return edges[4 * edge + 1];
    }

    /** Where an edge ends, across. */
    public double x1(int edge) {
        return edges[4 * edge + 2];
    }

    /** Where an edge ends, down. */
    public double y1(int edge) {
        return edges[4 * edge + 3];
    }

    /** x and y of one end and of the other, for each edge; not to be changed. */
    double[] coordinates() {
        return edges;
    }

    /**
     * The area that it encloses of a frame, in mm². Where it winds several times around a place, that place counts as often; where
     * one run goes around another the other way, what lies in both counts nothing.
     */
    public double areaWithin(Extent frame) {
        double area = 0;
        for (int k = 0; k < edges.length; k += 4) {
            area += under(edges[k], edges[k + 1], edges[k + 2], edges[k + 3], frame);
        }
        return Math.abs(area);
    }

    /** The area between an edge and the frame's top, negative for an edge that goes left. */
    private static double under(double x0, double y0, double x1, double y1, Extent frame) {
        if (x0 > x1) {
            return -under(x1, y1, x0, y0, frame);
        }
        double from = Math.max(x0, frame.left());
        double to = Math.min(x1, frame.right());
        if (from >= to) {
            return 0;
        }
        double slope = (y1 - y0) / (x1 - x0);
        double yFrom = y0 + (from - x0) * slope - frame.top();
        double yTo = y0 + (to - x0) * slope - frame.top();
        double height = frame.height();
        return (to - from) * (meanAbove(yFrom, yTo, 0) - meanAbove(yFrom, yTo, height));
    }

    /** The mean over a straight slope from a to b of how far it lies above a level, and of zero where it does not. */
    private static double meanAbove(double a, double b, double level) {
        double low = Math.min(a, b) - level;
        double high = Math.max(a, b) - level;
        if (low >= 0) {
            return (low + high) / 2;
        }
        return high <= 0 ? 0 : high * high / (2 * (high - low));
    }
}
