package org.adumbrate.svgsuite;

import java.awt.image.BufferedImage;

/** Where strokes change a picture of what is filled. */
final class Ink {
    /** A pixel is changed if a component is, by more levels than this. */
    private static final int CHANGE = 60;

    /** Pixels that lie within so many of ink are not missed: half a user unit and the smoothing of edges. */
    private static final int REACH = 2;

    private final boolean[] changed;
    private final BufferedImage with;
    private final int width;
    private final int height;

    private Ink(BufferedImage with, boolean[] changed) {
        this.with = with;
        this.changed = changed;
        this.width = with.getWidth();
        this.height = with.getHeight();
    }

    static Ink of(BufferedImage bare, BufferedImage with) {
        boolean[] changed = new boolean[with.getWidth() * with.getHeight()];
        for (int k = 0; k < changed.length; k++) {
            int x = k % with.getWidth();
            int y = k / with.getWidth();
            boolean inside = x < bare.getWidth() && y < bare.getHeight();
            changed[k] = inside && distance(bare.getRGB(x, y), with.getRGB(x, y)) > CHANGE;
        }
        return new Ink(with, changed);
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

    /** The share of what both change that has another colour in the other, edges left out. */
    double otherColor(Ink other) {
        int both = 0;
        int off = 0;
        for (int k = 0; k < changed.length; k++) {
            int x = k % width;
            int y = k / width;
            if (changed[k] && x < other.width && y < other.height && other.changed[y * other.width + x]) {
                both++;
                off += distance(with.getRGB(x, y), other.with.getRGB(x, y)) > CHANGE ? 1 : 0;
            }
        }
        return both == 0 ? 0 : (double) off / both;
    }

    private boolean isNear(int x, int y) {
        for (int dy = -REACH; dy <= REACH; dy++) {
            for (int dx = -REACH; dx <= REACH; dx++) {
                int nx = x + dx;
                int ny = y + dy;
                if (nx >= 0 && ny >= 0 && nx < width && ny < height && changed[ny * width + nx]) {
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
