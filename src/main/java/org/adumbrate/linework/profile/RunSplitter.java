package org.adumbrate.linework.profile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.PieceVisitor;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;

/** Splits runs where their weight changes. A run of one weight, closed or not, stays as it is. */
final class RunSplitter implements PieceVisitor {
    private final WeightAlong weights;
    private final List<List<VectorPath<SheetPoint>>> byWeight;
    private final List<PathPiece> run = new ArrayList<>();

    RunSplitter(WeightAlong weights, List<List<VectorPath<SheetPoint>>> byWeight) {
        this.weights = weights;
        this.byWeight = byWeight;
    }

    @Override
    public void piece(PathPiece piece) {
        run.add(piece);
    }

    @Override
    public void end(boolean closed) {
        split(weights.of(run), closed);
        run.clear();
    }

    private void split(int[] along, boolean closed) {
        boolean whole = Arrays.stream(along).allMatch(weight -> weight == along[0]);
        Stretch stretch = null;
        int n = 0;
        for (PathPiece piece : run) {
            int steps = LineDepth.steps(piece);
            int from = 0;
            for (int k = 1; k <= steps; k++) {
                if (k == steps || along[n + k] != along[n + from]) {
                    PathPiece part = piece.part((double) from / steps, k == steps ? 1 : (double) k / steps);
                    if (stretch == null || stretch.weight != along[n + from]) {
                        keep(stretch);
                        stretch = new Stretch(along[n + from], part);
                    }
                    boolean closing = whole && closed && n + steps == along.length;
                    if (closing) {
                        stretch.path.close();
                    } else {
                        part.drawOn(stretch.path);
                    }
                    from = k;
                }
            }
            n += steps;
        }
        keep(stretch);
    }

    private void keep(Stretch stretch) {
        if (stretch != null) {
            byWeight.get(stretch.weight).add(stretch.path.build());
        }
    }

    /** What has one weight so far. */
    private static final class Stretch {
        private final int weight;
        private final VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);

        Stretch(int weight, PathPiece first) {
            this.weight = weight;
            path.moveTo(first.x0(), first.y0());
        }
    }
}
