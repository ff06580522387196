package org.adumbrate.linework.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.adumbrate.geometry.BoxIndex;
import org.adumbrate.geometry.Extent;

/** The edges of a shape: of its rims one after the other, the shape to the side of (-dy, dx) of each edge (dx, dy). */
final class ShapeEdges {
    /** Edges that face each other run against each other to within this angle: chords of arcs that do not begin alike. */
    private static final double OPPOSITE = -Math.cos(Math.toRadians(15));

    /** Shorter stretches than this come of rounding, in mm. */
    private static final double SHORTEST_MM = 5e-4;

    /** Of so many edges each may be held against each. */
    private static final int FEW = 48;

    private final List<Rim> rims;
    private final int[] firstEdges;
    private final double[] x;
    private final double[] y;
    private final double[] toX;
    private final double[] toY;

    ShapeEdges(List<Rim> rims) {
        this.rims = rims;
        this.firstEdges = new int[rims.size() + 1];
        int count = 0;
        for (int k = 0; k < rims.size(); k++) {
            count += rims.get(k).size();
            firstEdges[k + 1] = count;
        }
        x = new double[count];
        y = new double[count];
        toX = new double[count];
        toY = new double[count];
        int edge = 0;
        for (Rim rim : rims) {
            for (int k = 0; k < rim.size(); k++, edge++) {
                x[edge] = rim.x(k);
                y[edge] = rim.y(k);
                toX[edge] = rim.x(k + 1);
                toY[edge] = rim.y(k + 1);
            }
        }
    }

    int size() {
        return x.length;
    }

    int rims() {
        return rims.size();
    }

    /** The number of a rim's first edge; past the last rim, how many edges there are. */
    int first(int rim) {
        return firstEdges[rim];
    }

    double area() {
        return rims.stream().mapToDouble(Rim::area).sum();
    }

    double perimeter() {
        return rims.stream().mapToDouble(Rim::perimeter).sum();
    }

    double x(int edge) {
        return x[edge];
    }

    double y(int edge) {
        return y[edge];
    }

    /** Where an edge ends. */
    double toX(int edge) {
        return toX[edge];
    }

    /** As {@link #toX}. */
    double toY(int edge) {
        return toY[edge];
    }

    double length(int edge) {
        return Math.hypot(toX[edge] - x[edge], toY[edge] - y[edge]);
    }

    /** The stretches on which edges face each other across the shape, being so far apart. */
    List<Facing> facing(double least, double most) {
        List<Facing> found = new ArrayList<>();
        if (size() <= FEW) {
            for (int i = 0; i < size(); i++) {
                for (int j = i + 1; j < size(); j++) {
                    face(i, j, least, most, found::add);
                }
            }
            return found;
        }
        List<Extent> boxes = new ArrayList<>();
        for (int k = 0; k < size(); k++) {
            boxes.add(box(k));
        }
        BoxIndex index = BoxIndex.of(boxes);
        for (int i = 0; i < size(); i++) {
            Extent near = boxes.get(i).grown(1.05 * most);
            for (int j : index.touching(near.left(), near.top(), near.right(), near.bottom())) {
                if (j > i) {
                    face(i, j, least, most, found::add);
                }
            }
        }
        return found;
    }

    private Extent box(int k) {
        double margin = 1e-6;
        return new Extent(
                Math.min(x[k], toX[k]) - margin,
                Math.min(y[k], toY[k]) - margin,
                Math.max(x[k], toX[k]) + margin,
                Math.max(y[k], toY[k]) + margin);
    }

    private void face(int i, int j, double least, double most, Consumer<Facing> found) {
        double li = length(i);
        double lj = length(j);
        double ix = (toX[i] - x[i]) / li;
        double iy = (toY[i] - y[i]) / li;
        double jx = (toX[j] - x[j]) / lj;
        double jy = (toY[j] - y[j]) / lj;
        if (ix * jx + iy * jy > OPPOSITE) {
            return;
        }
        double ux = ix - jx;
        double uy = iy - jy;
        double norm = Math.hypot(ux, uy);
        ux /= norm;
        uy /= norm;
        // places along the mean direction, counted from where the first edge begins
        double iEnd = ux * (toX[i] - x[i]) + uy * (toY[i] - y[i]);
        double jBegin = ux * (x[j] - x[i]) + uy * (y[j] - y[i]);
        double jEnd = ux * (toX[j] - x[i]) + uy * (toY[j] - y[i]);
        double from = Math.max(0, jEnd);
        double to = Math.min(iEnd, jBegin);
        if (to - from < SHORTEST_MM) {
            return;
        }
        double iFrom = from / iEnd;
        double iTo = to / iEnd;
        double jFrom = (from - jBegin) / (jEnd - jBegin);
        double jTo = (to - jBegin) / (jEnd - jBegin);
        double px = mix(x[j], toX[j], jFrom) - mix(x[i], toX[i], iFrom);
        double py = mix(y[j], toY[j], jFrom) - mix(y[i], toY[i], iFrom);
        double qx = mix(x[j], toX[j], jTo) - mix(x[i], toX[i], iTo);
        double qy = mix(y[j], toY[j], jTo) - mix(y[i], toY[i], iTo);
        double width0 = ux * py - uy * px;
        double width1 = ux * qy - uy * qx;
        if (Math.min(width0, width1) < least || Math.max(width0, width1) > most) {
            return;
        }
        found.accept(new Facing(
                i,
                j,
                mix(x[i], toX[i], iFrom) + px / 2,
                mix(y[i], toY[i], iFrom) + py / 2,
                mix(x[i], toX[i], iTo) + qx / 2,
                mix(y[i], toY[i], iTo) + qy / 2,
                width0,
                width1,
                li * iFrom,
                li * iTo,
                lj * jTo,
                lj * jFrom));
    }

    private static double mix(double a, double b, double t) {
        return a + t * (b - a);
    }
}
