package org.adumbrate.linework.region;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;

/** Lines and regions for tests, in few words. */
final class Drawn {
    static final SheetSize PAGE = new SheetSize(200, 150);

    private Drawn() {}

    /** An open path through points given as x, y, x, y, ... */
    static VectorPath<SheetPoint> line(double... places) {
        VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
        path.moveTo(places[0], places[1]);
        for (int k = 2; k < places.length; k += 2) {
            path.lineTo(places[k], places[k + 1]);
        }
        return path.build();
    }

    static VectorPath<SheetPoint> box(double left, double top, double right, double bottom) {
        return line(left, top, right, top, right, bottom, left, bottom, left, top);
    }

    /** Part of a circle in short chords, from one angle to another, in degrees clockwise on the sheet from the right. */
    static VectorPath<SheetPoint> arc(double x, double y, double radius, double from, double to) {
        int chords = (int) Math.ceil(Math.abs(to - from) / 4);
        double[] places = new double[2 * chords + 2];
        for (int k = 0; k <= chords; k++) {
            double angle = Math.toRadians(from + k * (to - from) / chords);
            places[2 * k] = x + radius * Math.cos(angle);
            places[2 * k + 1] = y + radius * Math.sin(angle);
        }
        return line(places);
    }

    static Region<SheetPoint> rectangle(double left, double top, double right, double bottom) {
        return Region.rectangle(Space.SHEET, left, top, right, bottom);
    }

    @SafeVarargs
    static List<VectorPath<SheetPoint>> lines(VectorPath<SheetPoint>... paths) {
        List<VectorPath<SheetPoint>> lines = new ArrayList<>();
        for (VectorPath<SheetPoint> path : paths) {
            lines.add(path);
        }
        return lines;
    }

    /** Area of what both cover over area of what either covers: 1 if they are the same. */
    static double overlap(Region<SheetPoint> one, Region<SheetPoint> other) {
        return one.within(other).area() / one.union(other).area();
    }
}
