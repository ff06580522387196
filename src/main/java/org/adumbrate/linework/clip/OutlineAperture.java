package org.adumbrate.linework.clip;

import java.util.List;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.VectorPath;

/** The inside of an outline of any shape, its curves taken as short chords. */
final class OutlineAperture implements Aperture {
    /** Of one clip; clips within each other have a limit of their own. */
    private static final int MOST_EDGES = 200_000;

    private final FlatOutline outline;
    private final double[] edges;
    private final Bounds box = new Bounds();
    private final EdgeBands bands;
    private final Effort effort;

    OutlineAperture(VectorPath<?> path, FillRule rule, Effort effort) {
        this.outline = FlatOutline.of(path, rule, MOST_EDGES);
        this.edges = outline.coordinates();
        this.effort = effort;
        effort.spend(edges());
        for (int k = 0; k < edges.length; k += 2) {
            box.add(edges[k], edges[k + 1]);
        }
        this.bands = edges.length == 0 ? null : new EdgeBands(edges, box, effort);
    }

    /** How many straight edges it has. */
    int edges() {
        return edges.length / 4;
    }

    @Override
    public List<FlatOutline> outlines() {
        return List.of(outline);
    }

    @Override
    public Coverage coverage(Bounds other) {
        if (bands == null || !box.meets(other.left(), other.top(), other.right(), other.bottom(), TOLERANCE)) {
            return Coverage.NOTHING;
        }
        if (bands.anyBetween(other.top(), other.bottom(), k -> edgeMeets(other, k))) {
            return Coverage.PART;
        }
        return holds(other.middleX(), other.middleY()) ? Coverage.WHOLE : Coverage.NOTHING;
    }

    @Override
    public void crossings(PathPiece piece, Splits splits) {
        if (bands == null) {
            return;
        }
        Bounds around = Bounds.of(piece);
        bands.between(around.top(), around.bottom(), k -> {
            if (edgeMeets(around, k)) {
                crossings(piece, k, splits);
            }
        });
    }

    /** Where a piece passes the line through an edge, within the edge's own length. */
    private void crossings(PathPiece piece, int k, Splits splits) {
        effort.spend(Effort.CROSSING);
        double dx = edges[k + 2] - edges[k];
        double dy = edges[k + 3] - edges[k + 1];
        double length = Math.hypot(dx, dy);
        double ux = dx / length;
        double uy = dy / length;
        Splits passes = new Splits();
        SideChanges.note(piece, uy, -ux, uy * edges[k] - ux * edges[k + 1], passes);
        for (double t : passes.inOrder()) {
            double along = ux * (piece.xAt(t) - edges[k]) + uy * (piece.yAt(t) - edges[k + 1]);
            if (along >= -TOLERANCE && along <= length + TOLERANCE) {
                splits.add(t);
            }
        }
    }

    @Override
    public boolean holds(double x, double y) {
        if (bands == null) {
            return false;
        }
        Winding winding = new Winding(x, y);
        bands.between(y, y, winding::pass);
        return winding.onBorder
                || (outline.rule() == FillRule.EVEN_ODD ? winding.crossed % 2 != 0 : winding.turns != 0);
    }

    private boolean edgeMeets(Bounds other, int k) {
        return other.meets(
                Math.min(edges[k], edges[k + 2]),
                Math.min(edges[k + 1], edges[k + 3]),
                Math.max(edges[k], edges[k + 2]),
                Math.max(edges[k + 1], edges[k + 3]),
                TOLERANCE);
    }

    /** How often the outline passes a ray that goes from a point to the left, upwards less downwards. */
    private final class Winding {
        private final double x;
        private final double y;
        private int crossed;
        private int turns;
        private boolean onBorder;

        Winding(double x, double y) {
            this.x = x;
            this.y = y;
        }

        void pass(int k) {
            double ax = edges[k];
            double ay = edges[k + 1];
            double bx = edges[k + 2];
            double by = edges[k + 3];
            onBorder |= distance(ax, ay, bx, by) <= TOLERANCE;
            if (ay <= y != by <= y && ax + (y - ay) / (by - ay) * (bx - ax) < x) {
                crossed++;
                turns += by > ay ? 1 : -1;
            }
        }

        private double distance(double ax, double ay, double bx, double by) {
            double dx = bx - ax;
            double dy = by - ay;
            double t = ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy);
            double along = Math.max(0, Math.min(1, t));
            return Math.hypot(x - ax - along * dx, y - ay - along * dy);
        }
    }
}
