package org.adumbrate.figure.shadow;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.adumbrate.geometry.ModelPoint;

/**
 * A part of a figure as the sun sees it, as a box in the {@link SunFrame}: what its shadow is bounded by.
 *
 * @param sun the frame
 * @param foot where the box is counted from
 * @param left its least across
 * @param right its greatest across
 * @param low its least up
 * @param high its greatest up
 * @param far how far toward the sun it reaches
 */
record ShadowPart(SunFrame sun, ModelPoint foot, double left, double right, double low, double high, double far) {
    private static final int PARTS = 12;
    private static final double SLACK = 0.001;
    private static final double LEAST_NARROWING = 0.1;

    /** The parts of a figure. */
    static List<ShadowPart> of(SunSilhouette figure, ModelPoint foot, SunFrame sun) {
        ShadeRows rows = figure.rows();
        ShadeBlocks shade = rows.blocks();
        int blocks = shade.count();
        int each = Math.max(1, (blocks + PARTS - 1) / PARTS);
        List<ShadowPart> parts = new ArrayList<>();
        for (int from = 0; from < blocks; from += each) {
            double left = Double.POSITIVE_INFINITY;
            double right = Double.NEGATIVE_INFINITY;
            int end = Math.min(blocks, from + each);
            for (int block = from; block < end; block++) {
                left = Math.min(left, shade.mostLeft(block));
                right = Math.max(right, shade.mostRight(block));
            }
            if (left < right) {
                double low = rows.up(from * SunSilhouette.BLOCK);
                double high = rows.up(end * SunSilhouette.BLOCK);
                parts.add(new ShadowPart(sun, foot, left, right, low, high, rows.farthest()));
            }
        }
        return parts;
    }

    /** The corners of the body in which its shadow lies, from where it hides the sun down to an elevation. */
    List<ModelPoint> sweptTo(double elevation) {
        double wide = wideAt(elevation);
        List<ModelPoint> corners = corners(wide, up -> far);
        corners.addAll(corners(wide, up -> Math.min(far, towardAt(elevation, high + wide))));
        return corners;
    }

    /** The corners of its shadow on the level plane at an elevation. */
    List<ModelPoint> on(double elevation) {
        return corners(wideAt(elevation), up -> towardAt(elevation, up));
    }

    private List<ModelPoint> corners(double wide, DoubleUnaryOperator toward) {
        List<ModelPoint> corners = new ArrayList<>();
        for (double across : new double[] {left - wide, right + wide}) {
            for (double up : new double[] {low - wide, high + wide}) {
                corners.add(sun.point(foot, across, up, toward.applyAsDouble(up)));
            }
        }
        return corners;
    }

    private double towardAt(double elevation, double up) {
        return (elevation - foot.z() - sun.cos() * up) / sun.sin();
    }

    /**
     * How far the penumbra reaches beyond the sun's own view of the part, at most: r times the distance from the part, which
     * itself grows by r cot(altitude) where it reaches beyond. With the sun's disc nearly on the horizon there is no bound,
     * and what lies a hundred times as far as the figure is tall is let go.
     */
    private double wideAt(double elevation) {
        double distance = Math.max(0, far - towardAt(elevation, high));
        double growth = SolarDisc.RADIUS * sun.cos() / sun.sin();
        return SLACK + SolarDisc.RADIUS * distance / Math.max(LEAST_NARROWING, 1 - growth);
    }
}
