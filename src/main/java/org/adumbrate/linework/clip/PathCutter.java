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
 *
 * @param <P> the plane
 */
public final class PathCutter<P extends PlanePoint> implements PieceVisitor {
    private enum Ending {
        OPEN,
        CLOSED,
        /** By a piece of its own, the last. */
        CLOSED_BY_PIECE
    }

    /** What is seen of a path. */
    public interface Sight {
        /** The visible parts of a piece from its beginning to its end: where each begins and ends, 0 to 1. */
        double[] visible(PathPiece piece);

        /** Whether a stretch that was cut off at one end or both is worth keeping, its pieces going on from each other. */
        default boolean keeps(List<PathPiece> stretch) {
            return true;
        }
    }

    /** A visible part; joined when it goes on from the one before. */
    private record Kept(PathPiece piece, boolean joined) {}

    private final Sight sight;
    private final VectorPath.Builder<P> out;
    private final List<Kept> run = new ArrayList<>();
    private boolean cutAnywhere;
    private boolean cut;
    private boolean down;
    private Ending ending = Ending.OPEN;
    private double startX;
    private double startY;

    private PathCutter(Sight sight, VectorPath.Builder<P> out) {
        this.sight = sight;
        this.out = out;
    }

    /** What is seen of a path; the path itself if all of it is. */
    public static <P extends PlanePoint> VectorPath<P> cut(VectorPath<P> path, Sight sight) {
        PathCutter<P> cutter = new PathCutter<>(sight, VectorPath.in(path.space()));
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
        double[] parts = sight.visible(piece);
        double reached = 0;
        for (int k = 0; k < parts.length; k += 2) {
            if (parts[k] > reached) {
                interrupt();
            }
            run.add(new Kept(piece.part(parts[k], parts[k + 1]), down));
            down = true;
            reached = parts[k + 1];
        }
        if (reached < 1) {
            interrupt();
        }
    }

    private void interrupt() {
        cut = true;
        down = false;
    }

    /** Writes the run out. */
    @Override
    public void end(boolean closed) {
        if (cut && ending != Ending.OPEN && runsThroughStart()) {
            moveLastStretchToFront();
        }
        if (cut) {
            dropWhatIsNotKept();
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

    private void dropWhatIsNotKept() {
        int from = 0;
        while (from < run.size()) {
            int end = from + 1;
            while (end < run.size() && run.get(end).joined) {
                end++;
            }
            List<Kept> stretch = run.subList(from, end);
            if (sight.keeps(stretch.stream().map(Kept::piece).toList())) {
                from = end;
            } else {
                stretch.clear();
            }
        }
    }
}
