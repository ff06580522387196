package org.adumbrate.linework.region;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Tells the crowns of trees from their stems: narrower than the crown they belong to, longer than wide, and no tips. */
final class Stems {
    /** What is narrow, as a share of the radius of the largest disc in the piece. */
    private static final double NARROW = 0.45;
    /** A stem reaches at least as far as this many times what is narrow. */
    private static final double LONG = 1.2;
    /** A piece is a stem alone if it has this many times the area of the square around its largest disc. */
    private static final double LANK = 3;

    private Stems() {}

    static Region<SheetPoint> cutOff(Region<SheetPoint> region) {
        List<Geometry> stems = new ArrayList<>();
        for (Region<SheetPoint> piece : region.pieces()) {
            addStems(piece.polygons(), stems);
        }
        return stems.isEmpty() ? region : region.minus(Region.ofPolygons(region.space(), OverlayNGRobust.union(stems)));
    }

    private static void addStems(Geometry piece, List<Geometry> stems) {
        double precision = Math.sqrt(piece.getArea()) / 100;
        double radius = MaximumInscribedCircle.getRadiusLine(piece, precision).getLength();
        if (piece.getArea() > LANK * 4 * radius * radius) {
            stems.add(piece);
            return;
        }
        double narrow = NARROW * radius;
        for (NarrowPart part : NarrowPart.of(piece, narrow, LONG * narrow)) {
            if (part.isBlunt()) {
                stems.add(part.shape());
            }
        }
    }
}
