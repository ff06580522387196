package org.adumbrate.linework.region;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * A part of a region that a disc cannot sweep: what the opening by the disc leaves out (Serra, "Image analysis and mathematical
 * morphology", 1982). Narrow limbs are such parts, and so are the tips of corners.
 *
 * @param shape the part
 * @param reachMm how far it reaches away from what the disc sweeps, in mm; infinite if that is nothing
 * @param fartherShare the share of its area that lies in the farther half of its reach: about a half for a limb, a quarter or less
 *     for a tip
 */
record NarrowPart(Geometry shape, double reachMm, double fartherShare) {
    private static final double LEAST_AREA = 1e-3;

    /** Those parts of a region that reach some way. */
    static List<NarrowPart> of(Geometry region, double radiusMm, double leastReachMm) {
        Geometry swept = region.buffer(-radiusMm).buffer(radiusMm);
        Geometry rest = OverlayNGRobust.overlay(region, swept, OverlayNG.DIFFERENCE);
        List<NarrowPart> parts = new ArrayList<>();
        for (int k = 0; k < rest.getNumGeometries(); k++) {
            Geometry shape = rest.getGeometryN(k);
            if (shape.getArea() >= LEAST_AREA * radiusMm * radiusMm) {
                NarrowPart part = of(shape, swept);
                if (part.reachMm >= leastReachMm) {
                    parts.add(part);
                }
            }
        }
        return parts;
    }

    private static NarrowPart of(Geometry shape, Geometry swept) {
        if (swept.isEmpty()) {
            return new NarrowPart(shape, Double.POSITIVE_INFINITY, 1);
        }
        // between its corners too: the middle of a pane between two walls is its farthest place
        DiscreteHausdorffDistance distance = new DiscreteHausdorffDistance(shape, swept);
        distance.setDensifyFraction(0.25);
        double reach = distance.orientedDistance();
        Geometry farther = OverlayNGRobust.overlay(shape, swept.buffer(reach / 2), OverlayNG.DIFFERENCE);
        return new NarrowPart(shape, reach, farther.getArea() / shape.getArea());
    }

    /** True unless it tapers to a tip. */
    boolean isBlunt() {
        return fartherShare >= 0.32;
    }
}
