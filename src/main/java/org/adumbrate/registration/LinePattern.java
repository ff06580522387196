package org.adumbrate.registration;

import java.util.BitSet;
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

    /** Lines that count are as long as this, in distances between probes: fewer edges say nothing of a line. */
    private static final double COUNTED = 3;

    private final double[] pieces;
    private final double lengthMm;
    private final Probes probes;

    private LinePattern(double[] pieces) {
        this.pieces = pieces;
        lengthMm = length(pieces, Double.POSITIVE_INFINITY);
        probes = Probes.along(pieces, lengthMm);
    }

    /** Of a sheet whose lines are cut into pieces too short to be counted, the lines before they were cut. */
    private static LinePattern ofPieces(double[] pieces) {
        double all = length(pieces, Double.POSITIVE_INFINITY);
        boolean cut = 2 * length(pieces, COUNTED * Probes.spacing(all)) > all;
        return new LinePattern(cut ? StraightRuns.of(pieces) : pieces);
    }

    /** How long all pieces are together that are shorter than a bound, in mm. */
    private static double length(double[] pieces, double below) {
        double sum = 0;
        for (int s = 0; s < pieces.length; s += 4) {
            double length = Math.hypot(pieces[s + 2] - pieces[s], pieces[s + 3] - pieces[s + 1]);
            sum += length < below ? length : 0;
        }
        return sum;
    }

    /** The lines that the paths draw, in mm of the sheet; the order and the direction of the paths do not matter. */
    public static LinePattern of(List<VectorPath<SheetPoint>> paths) {
        DoubleStream.Builder pieces = DoubleStream.builder();
        for (VectorPath<SheetPoint> path : paths) {
            path.chords(
                    TOLERANCE_MM,
                    (x0, y0, x1, y1) -> pieces.add(x0).add(y0).add(x1).add(y1));
        }
        return ofPieces(pieces.build().toArray());
    }

    /** Some of the pieces, by their numbers, as a pattern of their own. */
    LinePattern only(BitSet some) {
        double[] kept = new double[4 * some.cardinality()];
        int at = 0;
        for (int piece = some.nextSetBit(0); piece >= 0; piece = some.nextSetBit(piece + 1)) {
            System.arraycopy(pieces, 4 * piece, kept, at, 4);
            at += 4;
        }
        return new LinePattern(kept);
    }

    /** The number of straight pieces. */
    int count() {
        return pieces.length / 4;
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
