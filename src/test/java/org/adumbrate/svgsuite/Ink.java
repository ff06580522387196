package org.adumbrate.svgsuite;

import java.awt.image.BufferedImage;

/** Where strokes change a picture of what is filled. */
final class Ink {
    /** A pixel is changed if a component is, by more levels than this. */
    private static final int CHANGE = 60;

    /** Pixels that lie within so many of ink are not missed: half a user unit and the smoothing of edges. */
    private static final int REACH = 2;

    /** As little is seen of a stroke below an area that is almost solid. */
    private static final int TOUCH = 12;

    private final boolean[] changed;

    /** Whether anything at all is changed. */
    private final boolean[] touched;

    private final BufferedImage with;
    private final int width;
    private final int height;

    private Ink(BufferedImage with, boolean[] changed, boolean[] touched) {
        this.with = with;
        this.changed = changed;
        this.touched = touched;
        this.width = with.getWidth();
        this.height = with.getHeight();
    }

    static Ink of(BufferedImage bare, BufferedImage with) {
        boolean[] changed = new boolean[with.getWidth() * with.getHeight()];
        boolean[] touched = new boolean[changed.length];
        for (int k = 0; k < changed.length; k++) {
            int x = k % with.getWidth();
            int y = k / with.getWidth();
            boolean inside = x < bare.getWidth() && y < bare.getHeight();
            int distance = inside ? distance(bare.getRGB(x, y), with.getRGB(x, y)) : 0;
            changed[k] = distance > CHANGE;
            touched[k] = distance > TOUCH;
        }
        return new Ink(with, changed, touched);
    }

    /** How many pixels are changed. */
    int pixels() {
        int count = 0;
        for (boolean pixel : changed) {
            count += pixel ? 1 : 0;
        }
        return count;
    }

    /** How many pixels of this are far from any of the other. */
    int without(Ink other) {
        int count = 0;
        for (int k = 0; k < changed.length; k++) {
            count += changed[k] && !other.isNear(k % width, k / width) ? 1 : 0;
        }
        return count;
    }

    /** The share of what both change that has a colour which the other has nowhere near, as edges are smoothed in many ways. */
    double otherColor(Ink other) {
        int both = 0;
        int off = 0;
        for (int k = 0; k < changed.length; k++) {
            int x = k % width;
            int y = k / width;
            if (changed[k] && x < other.width && y < other.height && other.changed[y * other.width + x]) {
                both++;
                off += other.hasNear(with.getRGB(x, y), x, y) ? 0 : 1;
            }
        }
        return both == 0 ? 0 : (double) off / both;
    }

    private boolean isNear(int x, int y) {
        for (int dy = -REACH; dy <= REACH; dy++) {
            for (int dx = -REACH; dx <= REACH; dx++) {
                int nx = x + dx;
                int ny = y + dy;
                if (nx >= 0 && ny >= 0 && nx < width && ny < height && touched[ny * width + nx]) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether a pixel next to a place, or the one there, has a colour. */
    private boolean hasNear(int color, int x, int y) {
        for (int ny = Math.max(0, y - 1); ny <= Math.min(height - 1, y + 1); ny++) {
            for (int nx = Math.max(0, x - 1); nx <= Math.min(width - 1, x + 1); nx++) {
                if (distance(color, with.getRGB(nx, ny)) <= CHANGE) {
                    return true;
                }
            }
        }
        return false;
    }

    private static int distance(int a, int b) {
        int red = Math.abs((a >> 16 & 255) - (b >> 16 & 255));
        int green = Math.abs((a >> 8 & 255) - (b >> 8 & 255));
        return Math.max(Math.max(red, green), Math.abs((a & 255) - (b & 255)));
    }
}
