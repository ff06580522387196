package org.adumbrate.figure.planting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.perspective.View;

/**
 * Points on a floor that keep a least distance from each other and leave no gap (Bridson, "Fast Poisson disk sampling in
 * arbitrary dimensions", SIGGRAPH sketches 2007). Distances are measured on the floor, so that the points come closer with
 * their distance from the eye as the floor itself does.
 */
final class FloorScatter {
    /** More plants than a drawing can show one by one. */
    static final int MOST = 5000;

    /** New points are tried around a point this often before it is left; Bridson's own number. */
    private static final int TRIES = 30;

    /** A new beginning is looked for this often in every piece of the region, so that no corner is left bare. */
    private static final int BEGINNINGS = 60;

    private final Region<SheetPoint> region;
    private final View view;
    private final double elevation;
    private final double spacing;
    private final double farthest;
    private final SplitMix random;
    private final List<ModelPoint> points = new ArrayList<>();
    private final Map<Long, ModelPoint> cells = new HashMap<>();
    private int grown;

    /**
     * @param region where the points are seen
     * @param elevation of the floor in metres
     * @param spacing least distance in metres
     * @param farthest the greatest depth in metres
     */
    FloorScatter(
            Region<SheetPoint> region, View view, double elevation, double spacing, double farthest, SplitMix random) {
        this.region = region;
        this.view = view;
        this.elevation = elevation;
        this.spacing = spacing;
        this.farthest = farthest;
        this.random = random;
    }

    /** @throws Refusal if there would be more than {@value #MOST} */
    List<ModelPoint> points() throws Refusal {
        for (Region<SheetPoint> piece : region.pieces()) {
            Optional<Extent> extent = piece.extent();
            for (int k = 0; k < BEGINNINGS && extent.isPresent(); k++) {
                beginning(piece, extent.get()).ifPresent(points::add);
                grow();
            }
        }
        return points;
    }

    private Optional<ModelPoint> beginning(Region<SheetPoint> piece, Extent extent) {
        SheetPoint seen = new SheetPoint(
                random.between(extent.left(), extent.right()), random.between(extent.top(), extent.bottom()));
        return piece.contains(seen)
                ? view.onLevel(seen, elevation).filter(this::isFree).map(this::taken)
                : Optional.empty();
    }

    /** Adds points around those that have not been gone around yet. */
    private void grow() throws Refusal {
        for (; grown < points.size(); grown++) {
            for (int k = 0; k < TRIES; k++) {
                ModelPoint next = near(points.get(grown));
                if (isFree(next) && view.project(next).filter(region::contains).isPresent()) {
                    points.add(taken(next));
                }
            }
            if (points.size() > MOST) {
                throw new Refusal("more than " + MOST + " plants would stand there; widen the spacing of " + spacing
                        + " m or plant a smaller region");
            }
        }
    }

    /** A point between one and two spacings away, as likely everywhere. */
    private ModelPoint near(ModelPoint p) {
        double distance = spacing * StrictMath.sqrt(random.between(1, 4));
        double angle = random.between(0, 2 * Math.PI);
        return new ModelPoint(
                p.x() + distance * StrictMath.cos(angle), p.y() + distance * StrictMath.sin(angle), elevation);
    }

    private boolean isFree(ModelPoint p) {
        if (view.depth(p) > farthest) {
            return false;
        }
        for (int dx = -2; dx <= 2; dx++) {
            for (int dy = -2; dy <= 2; dy++) {
                ModelPoint other = cells.get(cell(p, dx, dy));
                if (other != null && StrictMath.hypot(p.x() - other.x(), p.y() - other.y()) < spacing) {
                    return false;
                }
            }
        }
        return true;
    }

    private ModelPoint taken(ModelPoint p) {
        cells.put(cell(p, 0, 0), p);
        return p;
    }

    /** A cell near a point's own; cells are so small that no two points share one. */
    private long cell(ModelPoint p, int dx, int dy) {
        double perMetre = StrictMath.sqrt(2) / spacing;
        long column = (long) Math.floor(p.x() * perMetre) + dx;
        long row = (long) Math.floor(p.y() * perMetre) + dy;
        return (column << 32) ^ (row & 0xffffffffL);
    }
}
