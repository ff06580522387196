package org.adumbrate.linework.cover;

import java.util.Arrays;
import org.adumbrate.geometry.Extent;
import org.adumbrate.linework.clip.FillRule;
import org.adumbrate.linework.clip.FlatOutline;

/**
 * The edges of an outline under boxes, each around edges that follow each other, and the boxes under larger ones, so that those
 * that a line crosses are found without looking at all. Its crossings alone decide where a line is inside, counted from afar:
 * every corner is on one side of the line or the other, so they are even in number and areas that share corners leave no gap.
 */
final class EdgeTree {
    private static final int NODE = 8;

    private final FlatOutline outline;

    /** From the lowest up: left, top, right and bottom of each box of a level. */
    private final double[][] levels;

    /** @param outline with at least one edge */
    EdgeTree(FlatOutline outline) {
        this.outline = outline;
        double[][] boxes = {leaves(outline)};
        while (boxes[boxes.length - 1].length > 4) {
            double[] above = holding(boxes[boxes.length - 1]);
            boxes = Arrays.copyOf(boxes, boxes.length + 1);
            boxes[boxes.length - 1] = above;
        }
        this.levels = boxes;
    }

    /** The box around all. */
    Extent extent() {
        double[] top = levels[levels.length - 1];
        return new Extent(top[0], top[1], top[2], top[3]);
    }

    private static double[] leaves(FlatOutline outline) {
        double[] boxes = new double[4 * ((outline.edges() + NODE - 1) / NODE)];
        for (int node = 0; node < boxes.length / 4; node++) {
            empty(boxes, node);
            for (int k = node * NODE; k < Math.min(outline.edges(), (node + 1) * NODE); k++) {
                grow(boxes, node, outline.x0(k), outline.y0(k));
                grow(boxes, node, outline.x1(k), outline.y1(k));
            }
        }
        return boxes;
    }

    private static double[] holding(double[] level) {
        int count = level.length / 4;
        double[] boxes = new double[4 * ((count + NODE - 1) / NODE)];
        for (int node = 0; node < boxes.length / 4; node++) {
            empty(boxes, node);
            for (int k = node * NODE; k < Math.min(count, (node + 1) * NODE); k++) {
                grow(boxes, node, level[4 * k], level[4 * k + 1]);
                grow(boxes, node, level[4 * k + 2], level[4 * k + 3]);
            }
        }
        return boxes;
    }

    private static void empty(double[] boxes, int node) {
        boxes[4 * node] = boxes[4 * node + 1] = Double.POSITIVE_INFINITY;
        boxes[4 * node + 2] = boxes[4 * node + 3] = Double.NEGATIVE_INFINITY;
    }

    private static void grow(double[] boxes, int node, double x, double y) {
        boxes[4 * node] = Math.min(boxes[4 * node], x);
        boxes[4 * node + 1] = Math.min(boxes[4 * node + 1], y);
        boxes[4 * node + 2] = Math.max(boxes[4 * node + 2], x);
        boxes[4 * node + 3] = Math.max(boxes[4 * node + 3], y);
    }

    /** Adds to some stretches those on which a line is inside. */
    void inside(Flank line, EdgeCrossings crossings, Spans to) {
        crossings.clear();
        int highest = levels.length - 1;
        through(line, crossings, highest, 0, levels[highest].length / 4);
        crossings.insides(outline.rule() == FillRule.EVEN_ODD, line.length(), to);
    }

    private void through(Flank line, EdgeCrossings crossings, int level, int from, int end) {
        double[] boxes = levels[level];
        for (int k = from; k < end; k++) {
            if (meets(line, boxes[4 * k], boxes[4 * k + 1], boxes[4 * k + 2], boxes[4 * k + 3])) {
                if (level == 0) {
                    edges(line, crossings, k * NODE, Math.min(outline.edges(), (k + 1) * NODE));
                } else {
                    through(
                            line,
                            crossings,
                            level - 1,
                            k * NODE,
                            Math.min(levels[level - 1].length / 4, (k + 1) * NODE));
                }
            }
        }
        crossings.look(end - from);
    }

    /** Whether a line without ends meets a box that does not lie wholly beyond its end. */
    private static boolean meets(Flank line, double left, double top, double right, double bottom) {
        double halfWidth = (right - left) / 2;
        double halfHeight = (bottom - top) / 2;
        double x = left + halfWidth;
        double y = top + halfHeight;
        double ux = Math.abs(line.ux());
        double uy = Math.abs(line.uy());
        // a hair wider than the box, so that nothing is lost to rounding
        return Math.abs(line.across(x, y)) <= halfWidth * uy + halfHeight * ux + 1e-6
                && line.along(x, y) - halfWidth * ux - halfHeight * uy <= line.length() + 1e-6;
    }

    private void edges(Flank line, EdgeCrossings crossings, int from, int end) {
        for (int k = from; k < end; k++) {
            double a = line.across(outline.x0(k), outline.y0(k));
            double b = line.across(outline.x1(k), outline.y1(k));
            if (a < 0 != b < 0) {
                double start = line.along(outline.x0(k), outline.y0(k));
                double stop = line.along(outline.x1(k), outline.y1(k));
                crossings.add(start + (stop - start) * (a / (a - b)), a < 0);
            }
        }
        crossings.look(end - from);
    }
}
