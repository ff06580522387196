package org.adumbrate.figure.shadow;

import java.util.Arrays;
import java.util.List;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.ChordVisitor;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;

/**
 * The drawn edges between surfaces, in pixels of a depth pass, found by the pixel. A depth pass says what its pixels' middles see;
 * where between two middles one surface ends and the next begins, the lines say.
 */
final class DrawnEdges {
    /** Lines may end a little short of what they should meet; each is longer by this, in pixels, at both ends. */
    private static final double LONGER = 0.1;

    /** How far a curve may lie from its chords, in pixels. */
    private static final double TOLERANCE_PX = 0.05;

    private final PixelSize size;
    private final float[] ends;
    private final long[] entries;

    private DrawnEdges(PixelSize size, float[] ends, long[] entries) {
        this.size = size;
        this.ends = ends;
        this.entries = entries;
    }

    static DrawnEdges of(List<VectorPath<SheetPoint>> lines, Affine<SheetPoint, RasterPoint> toPixels, PixelSize size) {
        Collector collector = new Collector(size);
        for (VectorPath<SheetPoint> line : lines) {
            line.transform(toPixels).chords(TOLERANCE_PX, collector);
        }
        long[] entries = Arrays.copyOf(collector.entries, collector.entryCount);
        Arrays.parallelSort(entries);
        return new DrawnEdges(size, Arrays.copyOf(collector.ends, collector.endCount), entries);
    }

    /** Cuts lines into straight segments and notes each with every pixel that it touches. */
    private static final class Collector implements ChordVisitor {
        private final PixelSize size;
        private float[] ends = new float[1 << 12];
        private int endCount;
        private long[] entries = new long[1 << 12];
        private int entryCount;

        Collector(PixelSize size) {
            this.size = size;
        }

        @Override
        public void chord(double x0, double y0, double x1, double y1) {
            double length = Math.hypot(x1 - x0, y1 - y0);
            if (length > 0) {
                double dx = (x1 - x0) / length * LONGER;
                double dy = (y1 - y0) / length * LONGER;
                add(x0 - dx, y0 - dy, x1 + dx, y1 + dy);
            }
        }

        private void add(double ax, double ay, double bx, double by) {
            int row = (int) Math.max(0, Math.floor(Math.min(ay, by)));
            int lastRow = (int) Math.min(size.height() - 1.0, Math.floor(Math.max(ay, by)));
            int segment = endCount / 4;
            boolean any = false;
            for (; row <= lastRow; row++) {
                double from = ay == by ? ax : ax + (bx - ax) * share(ay, by, row);
                double to = ay == by ? bx : ax + (bx - ax) * share(ay, by, row + 1.0);
                int first = (int) Math.max(0, Math.floor(Math.min(from, to)));
                int last = (int) Math.min(size.width() - 1.0, Math.floor(Math.max(from, to)));
                for (int column = first; column <= last; column++) {
                    enter((long) row * size.width() + column, segment);
                    any = true;
                }
            }
            if (any) {
                keep(ax, ay, bx, by);
            }
        }

        private static double share(double ay, double by, double level) {
            return Math.max(0, Math.min(1, (level - ay) / (by - ay)));
        }

        private void enter(long cell, int segment) {
            if (entryCount == entries.length) {
                entries = Arrays.copyOf(entries, 2 * entryCount);
            }
            entries[entryCount++] = cell << Integer.SIZE | segment;
        }

        private void keep(double ax, double ay, double bx, double by) {
            if (endCount == ends.length) {
                ends = Arrays.copyOf(ends, 2 * endCount);
            }
            ends[endCount++] = (float) ax;
            ends[endCount++] = (float) ay;
            ends[endCount++] = (float) bx;
            ends[endCount++] = (float) by;
        }
    }

    /** The edges about one pixel; for use by one thread. */
    final class Near {
        private int[] segments = new int[16];
        private int count;

        /** Turns to a pixel: its own edges and those of its eight neighbours. */
        void turnTo(int column, int row) {
            count = 0;
            for (int j = Math.max(0, row - 1); j <= Math.min(size.height() - 1, row + 1); j++) {
                long first = (long) j * size.width() + Math.max(0, column - 1);
                long last = (long) j * size.width() + Math.min(size.width() - 1, column + 1);
                int at = Arrays.binarySearch(entries, first << Integer.SIZE);
                for (at = at < 0 ? -at - 1 : at; at < entries.length && entries[at] >> Integer.SIZE <= last; at++) {
                    add((int) entries[at]);
                }
            }
        }

        private void add(int segment) {
            for (int k = 0; k < count; k++) {
                if (segments[k] == segment) {
                    return;
                }
            }
            if (count == segments.length) {
                segments = Arrays.copyOf(segments, 2 * count);
            }
            segments[count++] = segment;
        }

        /** Whether an edge runs between two places. */
        boolean part(double px, double py, double qx, double qy) {
            for (int k = 0; k < count; k++) {
                int at = 4 * segments[k];
                double ax = ends[at];
                double ay = ends[at + 1];
                double dx = ends[at + 2] - ax;
                double dy = ends[at + 3] - ay;
                double sideP = dx * (py - ay) - dy * (px - ax);
                double sideQ = dx * (qy - ay) - dy * (qx - ax);
                if ((sideP < 0) != (sideQ < 0)) {
                    double t = sideP / (sideP - sideQ);
                    double along = dx * (px + t * (qx - px) - ax) + dy * (py + t * (qy - py) - ay);
                    if (along >= 0 && along <= dx * dx + dy * dy) {
                        return true;
                    }
                }
            }
            return false;
        }

        /** Whether an edge comes within a distance of a place. */
        boolean touch(double px, double py, double distance) {
            for (int k = 0; k < count; k++) {
                int at = 4 * segments[k];
                double ax = ends[at];
                double ay = ends[at + 1];
                double dx = ends[at + 2] - ax;
                double dy = ends[at + 3] - ay;
                double t = Math.max(0, Math.min(1, (dx * (px - ax) + dy * (py - ay)) / (dx * dx + dy * dy)));
                double x = ax + t * dx - px;
                double y = ay + t * dy - py;
                if (x * x + y * y <= distance * distance) {
                    return true;
                }
            }
            return false;
        }
    }
}
