package org.adumbrate.linework.profile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;

/** Splits runs where their weight changes. A run of one weight, closed or not, stays as it is. */
final class RunSplitter implements VectorPath.Visitor {
    private final WeightAlong weights;
    private final List<List<VectorPath<SheetPoint>>> byWeight;
    private final List<Piece> run = new ArrayList<>();
    private double startX;
    private double startY;
    private double x;
    private double y;
    private boolean closed;

    RunSplitter(WeightAlong weights, List<List<VectorPath<SheetPoint>>> byWeight) {
        this.weights = weights;
        this.byWeight = byWeight;
    }

    @Override
    public void moveTo(double toX, double toY) {
        end();
        startX = toX;
        startY = toY;
        x = toX;
        y = toY;
    }

    @Override
    public void lineTo(double toX, double toY) {
        run.add(new Piece(x, y, toX, toY));
        x = toX;
        y = toY;
    }

    @Override
    public void curveTo(double x1, double y1, double x2, double y2, double toX, double toY) {
        run.add(new Piece(x, y, x1, y1, x2, y2, toX, toY));
        x = toX;
        y = toY;
    }

    @Override
    public void close() {
        closed = true;
        lineTo(startX, startY);
        end();
    }

    /** Ends a run. */
    void end() {
        if (!run.isEmpty()) {
            split(weights.of(run));
        }
        run.clear();
        closed = false;
    }

    private void split(int[] along) {
        boolean whole = Arrays.stream(along).allMatch(weight -> weight == along[0]);
        Stretch stretch = null;
        int n = 0;
        for (Piece piece : run) {
            int steps = piece.steps();
            int from = 0;
            for (int k = 1; k <= steps; k++) {
                if (k == steps || along[n + k] != along[n + from]) {
                    Piece part = piece.part((double) from / steps, k == steps ? 1 : (double) k / steps);
                    if (stretch == null || stretch.weight != along[n + from]) {
                        keep(stretch);
                        stretch = new Stretch(along[n + from], part);
                    }
                    boolean closing = whole && closed && n + steps == along.length;
                    if (closing) {
                        stretch.path.close();
                    } else {
                        part.draw(stretch.path);
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

        Stretch(int weight, Piece first) {
            this.weight = weight;
            path.moveTo(first.at(0, 0), first.at(0, 1));
        }
    }
}
