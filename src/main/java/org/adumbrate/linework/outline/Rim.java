package org.adumbrate.linework.outline;

import java.util.Arrays;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;

/** One closed run of an outline, in mm: its corners in order, curves as chords; no two that follow each other are the same. */
final class Rim {
    private final double[] x;
    private final double[] y;

    /** Takes corners over; none may be the same as the one before it. */
    Rim(double[] x, double[] y) {
        this.x = x;
        this.y = y;
    }

    int size() {
        return x.length;
    }

    /** A corner's x; corners are counted on past the last. */
    double x(int corner) {
        return x[Math.floorMod(corner, x.length)];
    }

    /** As {@link #x}. */
    double y(int corner) {
        return y[Math.floorMod(corner, y.length)];
    }

    /** The area that it goes around in mm²; positive if that lies to the side of (-dy, dx) of an edge (dx, dy). */
    double area() {
        double sum = 0;
        for (int k = 0; k < x.length; k++) {
            sum += (x(k) - x[0]) * (y(k + 1) - y[0]) - (x(k + 1) - x[0]) * (y(k) - y[0]);
        }
        return sum / 2;
    }

    double perimeter() {
        double sum = 0;
        for (int k = 0; k < x.length; k++) {
            sum += edge(k);
        }
        return sum;
    }

    /** The length of the edge from a corner to the next. */
    double edge(int corner) {
        return Math.hypot(x(corner + 1) - x(corner), y(corner + 1) - y(corner));
    }

    Extent box() {
        return new Extent(
                Arrays.stream(x).min().orElse(0),
                Arrays.stream(y).min().orElse(0),
                Arrays.stream(x).max().orElse(0),
                Arrays.stream(y).max().orElse(0));
    }

    /** The same the other way round. */
    Rim reversed() {
        double[] backX = new double[x.length];
        double[] backY = new double[x.length];
        for (int k = 0; k < x.length; k++) {
            backX[k] = x[x.length - 1 - k];
            backY[k] = y[x.length - 1 - k];
        }
        return new Rim(backX, backY);
    }

    /** Whether it goes around a point an odd number of times. */
    boolean holds(double px, double py) {
        boolean inside = false;
        for (int k = 0; k < x.length; k++) {
            double x0 = x[k];
            double y0 = y[k];
            double x1 = x(k + 1);
            double y1 = y(k + 1);
            if (y0 > py != y1 > py && px < x0 + (py - y0) / (y1 - y0) * (x1 - x0)) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** Whether it goes around all of another. */
    boolean holds(Rim other) {
        for (int k = 0; k < other.x.length; k++) {
            if (!holds(other.x[k], other.y[k])) {
                return false;
            }
        }
        return true;
    }

    VectorPath<PagePoint> path() {
        VectorPath.Builder<PagePoint> path = VectorPath.in(Space.PAGE);
        path.moveTo(x[0], y[0]);
        for (int k = 1; k < x.length; k++) {
            path.lineTo(x[k], y[k]);
        }
        path.close();
        return path.build();
    }
}
