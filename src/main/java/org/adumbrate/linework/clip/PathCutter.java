package org.adumbrate.linework.clip;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.PlanePoint;
import org.adumbrate.geometry.VectorPath;

/**
 * Copies the visible parts of a path, run by run. A closed run that is cut loses its closing step; if what is left runs
 * through the point where it began, it is put together there again.
 */
final class PathCutter<P extends PlanePoint> implements VectorPath.Visitor {
    private static final double SHORTEST = 1e-12;

    private enum Ending {
        OPEN,
        CLOSED,
        /** By a piece of its own, the last. */
        CLOSED_BY_PIECE
    }

    /** A visible part; joined when it goes on from the one before. */
    private record Kept(Piece piece, boolean joined) {}

    private final List<Aperture> apertures;
    private final VectorPath.Builder<P> out;
    private final List<Kept> run = new ArrayList<>();
    private boolean cutAnywhere;
    private boolean cut;
    private boolean down;
    private double startX;
    private double startY;
    private double x;
    private double y;

    private PathCutter(List<Aperture> apertures, VectorPath.Builder<P> out) {
        this.apertures = apertures;
        this.out = out;
    }

    /** What of a path lies in all the apertures; the path itself if all of it does. */
    static <P extends PlanePoint> VectorPath<P> cut(VectorPath<P> path, List<Aperture> apertures) {
        PathCutter<P> cutter = new PathCutter<>(apertures, VectorPath.in(path.space()));
        path.visit(cutter);
        cutter.endRun(Ending.OPEN);
        return cutter.cutAnywhere ? cutter.out.build() : path;
    }

    @Override
    public void moveTo(double toX, double toY) {
        endRun(Ending.OPEN);
        startX = x = toX;
        startY = y = toY;
    }

    @Override
    public void lineTo(double toX, double toY) {
        add(Piece.line(x, y, toX, toY));
    }

    @Override
    public void curveTo(double x1, double y1, double x2, double y2, double toX, double toY) {
        add(Piece.curve(x, y, x1, y1, x2, y2, toX, toY));
    }

    @Override
    public void close() {
        boolean goesBack = run.isEmpty() || x != startX || y != startY;
        if (goesBack) {
            add(Piece.line(x, y, startX, startY));
        }
        endRun(goesBack ? Ending.CLOSED_BY_PIECE : Ending.CLOSED);
    }

    private void add(Piece piece) {
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
        x = piece.x3();
        y = piece.y3();
    }

    private boolean visible(Piece piece, double t) {
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
    private void keep(Piece piece, double from, double to) {
        if (!Double.isNaN(from)) {
            run.add(new Kept(piece.part(from, to), down && from == 0));
            down = to == 1;
        }
    }

    /** Writes the run out. */
    private void endRun(Ending ending) {
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
        x = startX;
        y = startY;
    }

    private boolean runsThroughStart() {
        if (run.isEmpty() || !down) {
            return false;
        }
        Piece first = run.get(0).piece;
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
