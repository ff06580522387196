package org.adumbrate.linework.region;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Thickens what would be too thin to print, such as glass in a section. */
public final class ThinParts {
    private static final int MOST_ROUNDS = 6;
    /** Corners stay sharp down to about 10 degrees: sharper ones count as thin. */
    private static final double MITRE_LIMIT = 12;

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

    /** What an opening by the minimum leaves out, but for crumbs in corners. */
    private static List<Geometry> thin(Geometry all, double minimumMm) {
        double reach = 0.495 * minimumMm;
        Geometry thick = offset(offset(all, -reach), reach * 1.001);
        Geometry rest = OverlayNGRobust.overlay(all, thick, OverlayNG.DIFFERENCE);
        List<Geometry> thin = new ArrayList<>();
        for (int k = 0; k < rest.getNumGeometries(); k++) {
            Geometry part = rest.getGeometryN(k);
            if (part.getArea() > 0.02 * minimumMm * minimumMm) {
                thin.add(part);
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
