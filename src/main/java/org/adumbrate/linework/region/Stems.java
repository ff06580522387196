package org.adumbrate.linework.region;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Tells the crowns of trees from their stems: a stem is a part narrower than the crown it belongs to, longer than wide, and no
 * tip. The narrow parts of a region are what its opening by a disc leaves out (Serra, "Image analysis and mathematical
 * morphology", 1982).
 */
final class Stems {
    /** The disc's radius as a share of that of the largest disc in the piece. */
    private static final double NARROW = 0.45;
    /** A stem reaches at least this many radii of the disc away from the crown. */
    private static final double LONG = 1.2;
    /** A stem has at least this share of its area in its farther half; a pointed tip has a quarter. */
    private static final double BLUNT = 0.32;
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
        double size = Math.sqrt(piece.getArea());
        double radius = MaximumInscribedCircle.getRadiusLine(piece, size / 100).getLength();
        if (piece.getArea() > LANK * 4 * radius * radius) {
            stems.add(piece);
            return;
        }
        double disc = NARROW * radius;
        Geometry crown = piece.buffer(-disc).buffer(disc);
        Geometry narrow = OverlayNGRobust.overlay(piece, crown, OverlayNG.DIFFERENCE);
        for (int k = 0; k < narrow.getNumGeometries(); k++) {
            Geometry part = narrow.getGeometryN(k);
            if (isStem(part, crown, LONG * disc)) {
                stems.add(part);
            }
        }
    }

    private static boolean isStem(Geometry part, Geometry crown, double longMm) {
        double reach = new DiscreteHausdorffDistance(part, crown).orientedDistance();
        if (reach < longMm) {
            return false;
        }
        Geometry farther = OverlayNGRobust.overlay(part, crown.buffer(reach / 2), OverlayNG.DIFFERENCE);
        return farther.getArea() >= BLUNT * part.getArea();
    }
}
