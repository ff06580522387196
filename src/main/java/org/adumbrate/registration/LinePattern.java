package org.adumbrate.registration;

import java.util.List;
import java.util.stream.DoubleStream;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;

/**
 * The lines of a sheet, made ready to be looked for in passes. Immutable; made once, it serves any number of passes, from
 * several threads.
 */
public final class LinePattern {
    /** How far a curve may lie from the straight pieces that stand for it. */
    private static final double TOLERANCE_MM = 0.01;

    private final double[] pieces;
    private final double lengthMm;
    private final Probes probes;

    private LinePattern(double[] pieces) {
        this.pieces = pieces;
        double sum = 0;
        for (int s = 0; s < pieces.length; s += 4) {
            sum += Math.hypot(pieces[s + 2] - pieces[s], pieces[s + 3] - pieces[s + 1]);
        }
        lengthMm = sum;
        probes = Probes.along(pieces, sum);
    }

    /** The lines that the paths draw, in mm of the sheet; the order and the direction of the paths do not matter. */
    public static LinePattern of(List<VectorPath<SheetPoint>> paths) {
        DoubleStream.Builder pieces = DoubleStream.builder();
        for (VectorPath<SheetPoint> path : paths) {
            path.chords(
                    TOLERANCE_MM,
                    (x0, y0, x1, y1) -> pieces.add(x0).add(y0).add(x1).add(y1));
        }
        return new LinePattern(pieces.build().toArray());
    }

    /** The total length of the lines, in mm. */
    public double lengthMm() {
        return lengthMm;
    }

    /** The straight pieces, x0 y0 x1 y1 in a row, in mm; not to be changed. */
    double[] pieces() {
        return pieces;
    }

    /** Points spread evenly along the lines, where passes are looked at. */
    Probes probes() {
        return probes;
    }
}
