package org.adumbrate.linework.clip;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.PieceVisitor;
import org.adumbrate.geometry.PlanePoint;
import org.adumbrate.geometry.VectorPath;

/**
 * Copies the visible parts of a path, run by run. A closed run that is cut loses its closing step; if what is left runs
 * through the point where it began, it is put together there again.
 */
final class PathCutter<P extends PlanePoint> implements PieceVisitor {
    private static final double SHORTEST = 1e-12;

    private enum Ending {
        OPEN,
        CLOSED,
        /** By a piece of its own, the last. */
        CLOSED_BY_PIECE
    }

    /** A visible part; joined when it goes on from the one before. */
    private record Kept(PathPiece piece, boolean joined) {}

    private final List<Aperture> apertures;
    private final VectorPath.Builder<P> out;
    private final List<Kept> run = new ArrayList<>();
    private boolean cutAnywhere;
    private boolean cut;
    private boolean down;
    private Ending ending = Ending.OPEN;
    private double startX;
    private double startY;

    private PathCutter(List<Aperture> apertures, VectorPath.Builder<P> out) {
        this.apertures = apertures;
        this.out = out;
    }

    /** What of a path lies in all the apertures; the path itself if all of it does. */
    static <P extends PlanePoint> VectorPath<P> cut(VectorPath<P> path, List<Aperture> apertures) {
        PathCutter<P> cutter = new PathCutter<>(apertures, VectorPath.in(path.space()));
        path.pieces(cutter);
        return cutter.cutAnywhere ? cutter.out.build() : path;
    }

    @Override
    public void begin(double x, double y) {
        startX = x;
        startY = y;
        ending = Ending.OPEN;
    }

    @Override
    public void closing(PathPiece piece) {
        boolean goesBack = run.isEmpty() || piece.x0() != piece.x3() || piece.y0() != piece.y3();
        if (goesBack) {
            piece(piece);
        }
        ending = goesBack ? Ending.CLOSED_BY_PIECE : Ending.CLOSED;
    }

    @Override
    public void piece(PathPiece piece) {
        Splits splits = new Splits();
        apertures.forEach(aperture -> aperture.crossings(piece, splits));
        double[] places = splits.inOrder();
        double from = Double.NaN;
        for (int k = 1; k < places.length; k++) {
            boolean point = places[k] - places[k - 1] < SHORTEST;
            boolean visible = point ? !Double.isNaN(from) : visible(piece, (places[k - 1] + places[k]) / 2);
            if (visible && Double.isNaN(from)) {
                from = places[k - 1];
            } else if (!visible) {
                keep(piece, from, places[k - 1]);
                cut = true;
                down = false;
                from = Double.NaN;
            }
        }
        keep(piece, from, 1);
    }

    private boolean visible(PathPiece piece, double t) {
        double px = piece.xAt(t);
        double py = piece.yAt(t);
        for (Aperture aperture : apertures) {
            if (!aperture.holds(px, py)) {
                return false;
            }
        }
        return true;
    }

    /** Keeps the part from one place to another, or nothing if there is no first place. */
    private void keep(PathPiece piece, double from, double to) {
        if (!Double.isNaN(from)) {
            run.add(new Kept(piece.part(from, to), down && from == 0));
            down = to == 1;
        }
    }

    /** Writes the run out. */
    @Override
    public void end(boolean closed) {
        if (cut && ending != Ending.OPEN && runsThroughStart()) {
            moveLastStretchToFront();
        }
        boolean closes = !cut && ending != Ending.OPEN;
        int drawn = closes && ending == Ending.CLOSED_BY_PIECE ? run.size() - 1 : run.size();
        for (int k = 0; k < run.size(); k++) {
            Kept kept = run.get(k);
            if (!kept.joined) {
                out.moveTo(kept.piece.x0(), kept.piece.y0());
            }
            if (k < drawn) {
                kept.piece.drawOn(out);
            }
        }
        if (closes) {
            out.close();
        }
        cutAnywhere |= cut;
        run.clear();
        cut = false;
        down = false;
    }

    private boolean runsThroughStart() {
        if (run.isEmpty() || !down) {
            return false;
        }
        PathPiece first = run.get(0).piece;
        return first.x0() == startX && first.y0() == startY;
    }

    private void moveLastStretchToFront() {
        int last = run.size() - 1;
        while (last > 0 && run.get(last).joined) {
            last--;
        }
        List<Kept> stretch = new ArrayList<>(run.subList(last, run.size()));
        List<Kept> rest = new ArrayList<>(run.subList(0, last));
        if (!rest.isEmpty()) {
            rest.set(0, new Kept(rest.get(0).piece, /* joined= */ true));
        }
        run.clear();
        run.addAll(stretch);
        run.addAll(rest);
    }
}
