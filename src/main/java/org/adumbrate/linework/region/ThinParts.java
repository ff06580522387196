package org.adumbrate.linework.region;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Thickens what would be too thin to print, such as glass in a section. */
public final class ThinParts {
    private static final int MOST_ROUNDS = 8;
    /** What is as thick as this share of the minimum is thick enough. */
    private static final double ALMOST = 0.98;
    /** Parts that reach less than this many radii of half the minimum are corners. */
    private static final double CORNER = 0.5;
    /** Tips that reach more than this many radii are thin: corners of less than 13 degrees. */
    private static final double TIP = 8;
    /** Ends of parts stay square, and sharper corners are cut. */
    private static final double MITRE_LIMIT = 2;

    private ThinParts() {}

    /**
     * The same region with its thin parts thickened evenly on both sides to the minimum; everything else keeps its place. Parts may
     * come out thicker where they vary in width, and flow together where they come close.
     *
     * @param minimumMm the least thickness, in mm, positive
     * @throws IllegalArgumentException if the minimum is not positive and finite
     */
    public static Region<SheetPoint> thickened(Region<SheetPoint> region, double minimumMm) {
        if (!(minimumMm > 0 && minimumMm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a minimum thickness of " + minimumMm + " mm is not positive");
        }
        Geometry all = region.polygons();
        for (int round = 0; round < MOST_ROUNDS; round++) {
            List<Geometry> grown = new ArrayList<>();
            for (Geometry part : thin(all, minimumMm)) {
                grown.add(offset(part, (minimumMm - width(part)) / 2));
            }
            if (grown.isEmpty()) {
                break;
            }
            grown.add(all);
            all = OverlayNGRobust.union(grown);
        }
        return Region.ofPolygons(region.space(), all);
    }

    /** Limbs too narrow, and tips that are no mere corners any more. */
    private static List<Geometry> thin(Geometry all, double minimumMm) {
        double radius = ALMOST * minimumMm / 2;
        List<Geometry> thin = new ArrayList<>();
        for (NarrowPart part : NarrowPart.of(all, radius, CORNER * radius)) {
            if (part.isBlunt() || part.reachMm() > TIP * radius) {
                thin.add(part.shape());
            }
        }
        return thin;
    }

    /** The width of a long part: area over half the perimeter, less than its true width by a share of width over length. */
    private static double width(Geometry part) {
        return 2 * part.getArea() / part.getLength();
    }

    private static Geometry offset(Geometry geometry, double distance) {
        BufferParameters square =
                new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, MITRE_LIMIT);
        return BufferOp.bufferOp(geometry, distance, square);
    }
}
