package org.adumbrate.raster.trace;

import java.util.Arrays;

/** The middles of the pixel sides that one ring consists of, in order; used again for ring after ring. */
final class CrackRing {
    private int[] doubled = new int[256];
    private int count;
    private long turned;

    void clear() {
        count = 0;
        turned = 0;
    }

    /** Adds the side from one pixel corner to the next. */
    void add(int x0, int y0, int x1, int y1) {
        if (2 * count + 2 > doubled.length) {
            doubled = Arrays.copyOf(doubled, 2 * doubled.length);
        }
        doubled[2 * count] = x0 + x1;
        doubled[2 * count + 1] = y0 + y1;
        count++;
        turned += (long) x0 * y1 - (long) x1 * y0;
    }

    int count() {
        return count;
    }

    /** The pixels enclosed. */
    double area() {
        return Math.abs(turned) / 2.0;
    }

    double x(int k) {
        return doubled[2 * k] / 2.0;
    }

    double y(int k) {
        return doubled[2 * k + 1] / 2.0;
    }

    /** Where the ring is farthest from its middle: on a convex corner, if it has corners. */
    int farthest() {
        double middleX = 0;
        double middleY = 0;
        for (int k = 0; k < count; k++) {
            middleX += x(k) / count;
            middleY += y(k) / count;
        }
        int farthest = 0;
        double most = -1;
        for (int k = 0; k < count; k++) {
            double dx = x(k) - middleX;
            double dy = y(k) - middleY;
            double squared = dx * dx + dy * dy;
            if (squared > most) {
                most = squared;
                farthest = k;
            }
        }
        return farthest;
    }
}
