package org.adumbrate.linework.outline;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.PieceVisitor;
import org.adumbrate.geometry.VectorPath;

/** Takes a filled path apart into its runs, each closed; those of less than three corners enclose nothing and are left out. */
final class RimReader implements PieceVisitor {
    /** How far a curve may lie from its chord, in mm: a twentieth of a printed dot at 600 dpi. */
    private static final double FLATNESS_MM = 0.002;

    /** Corners as near as this are the same but for rounding, in mm. */
    private static final double SAME_MM = 1e-6;

    private final List<Rim> rims = new ArrayList<>();
    private double[] x = new double[8];
    private double[] y = new double[8];
    private int count;

    private RimReader() {}

    static List<Rim> of(VectorPath<?> path) {
        RimReader reader = new RimReader();
        path.pieces(reader);
        return reader.rims;
    }

    @Override
    public void begin(double atX, double atY) {
        count = 0;
        corner(atX, atY);
    }

    @Override
    public void piece(PathPiece piece) {
        piece.chords(FLATNESS_MM, (x0, y0, x1, y1) -> corner(x1, y1));
    }

    @Override
    public void end(boolean closed) {
        while (count > 1 && isSame(count - 1, x[0], y[0])) {
            count--;
        }
        if (count > 2) {
            rims.add(new Rim(Arrays.copyOf(x, count), Arrays.copyOf(y, count)));
        }
    }

    private void corner(double atX, double atY) {
        if (count > 0 && isSame(count - 1, atX, atY)) {
            return;
        }
        if (count == x.length) {
            x = Arrays.copyOf(x, 2 * count);
            y = Arrays.copyOf(y, 2 * count);
        }
        x[count] = atX;
        y[count++] = atY;
    }

    private boolean isSame(int corner, double atX, double atY) {
        return Math.abs(x[corner] - atX) <= SAME_MM && Math.abs(y[corner] - atY) <= SAME_MM;
    }
}
