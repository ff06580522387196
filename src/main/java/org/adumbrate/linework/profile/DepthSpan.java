package org.adumbrate.linework.profile;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;

/**
 * From where to where lines reach in depth: a depth pass also shows what no line is drawn on, such as open ground as far as the
 * horizon, and over that a fade would not be seen.
 *
 * @param nearM the depth of the nearest lines, in metres
 * @param farM that of the farthest, above the near one
 */
public record DepthSpan(double nearM, double farM) {
    /** This share of the length is left out at either end: a glimpse of something through a window settles nothing. */
    private static final double STRAYS = 0.01;

    /** Lines that differ less in depth, as a share of the near one, are all at one depth, give or take the pass's own errors. */
    private static final double LEAST = 0.1;

    /**
     * The span of some lines.
     *
     * @param depth how far away what the sheet shows is
     * @param reachMm how far around a line its depth is looked for, in mm of the sheet
     * @return nothing if no line lies where a depth is known
     */
    public static Optional<DepthSpan> of(List<VectorPath<SheetPoint>> paths, DepthField depth, double reachMm) {
        LineDepth around = new LineDepth(depth, reachMm);
        DoubleStream.Builder found = DoubleStream.builder();
        for (VectorPath<SheetPoint> path : paths) {
            path.pieces(piece -> Arrays.stream(around.along(piece)).forEach(found));
        }
        return of(found.build().filter(Double::isFinite).sorted().toArray());
    }

    /** Depths in order, one for each step along the lines; steps are nearly of one length. */
    private static Optional<DepthSpan> of(double[] depths) {
        if (depths.length == 0) {
            return Optional.empty();
        }
        int strays = (int) (STRAYS * depths.length);
        double near = depths[strays];
        return Optional.of(new DepthSpan(near, Math.max(depths[depths.length - 1 - strays], (1 + LEAST) * near)));
    }
}
