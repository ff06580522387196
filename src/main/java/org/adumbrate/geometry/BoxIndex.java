package org.adumbrate.geometry;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds which of many boxes a rectangle touches: boxes that lie together are held together in ever larger ones (sort-tile-recursive
 * packing: Leutenegger, Lopez and Edgington, "STR: a simple and efficient algorithm for R-tree packing", ICDE 1997). Safe for use by
 * several threads.
 */
public final class BoxIndex {
    private static final int NODE = 16;

    /** Boxes by their numbers, in the order of the leaves. */
    private final int[] order;

    /** From the leaves up: left, top, right and bottom of each box of a level. */
    private final double[][] levels;

    private BoxIndex(int[] order, double[][] levels) {
        this.order = order;
        this.levels = levels;
    }

    /** An index of some boxes. */
    public static BoxIndex of(List<Extent> boxes) {
        int[] order = packed(boxes);
        double[] leaves = new double[4 * order.length];
        for (int k = 0; k < order.length; k++) {
            Extent box = boxes.get(order[k]);
            leaves[4 * k] = box.left();
            leaves[4 * k + 1] = box.top();
            leaves[4 * k + 2] = box.right();
            leaves[4 * k + 3] = box.bottom();
        }
        double[][] levels = {leaves};
        while (levels[levels.length - 1].length > 4 * NODE) {
            levels = Arrays.copyOf(levels, levels.length + 1);
            levels[levels.length - 1] = holding(levels[levels.length - 2]);
        }
        return new BoxIndex(order, levels);
    }

    /** Slices by the middles' x, each sorted by their y. */
    private static int[] packed(List<Extent> boxes) {
        int count = boxes.size();
        Integer[] byX = IntStream.range(0, count).boxed().toArray(Integer[]::new);
        Arrays.sort(
                byX,
                Comparator.comparingDouble(
                        k -> boxes.get(k).left() + boxes.get(k).right()));
        int slice = NODE * (int) Math.max(1, Math.ceil(Math.sqrt((double) count / NODE)));
        for (int from = 0; from < count; from += slice) {
            Arrays.sort(
                    byX,
                    from,
                    Math.min(count, from + slice),
                    Comparator.comparingDouble(
                            k -> boxes.get(k).top() + boxes.get(k).bottom()));
        }
        return Arrays.stream(byX).mapToInt(Integer::intValue).toArray();
    }

    private static double[] holding(double[] level) {
        int count = level.length / 4;
        double[] above = new double[4 * ((count + NODE - 1) / NODE)];
        for (int node = 0; node < above.length / 4; node++) {
            double left = Double.POSITIVE_INFINITY;
            double top = Double.POSITIVE_INFINITY;
            double right = Double.NEGATIVE_INFINITY;
            double bottom = Double.NEGATIVE_INFINITY;
            for (int k = node * NODE; k < Math.min(count, (node + 1) * NODE); k++) {
                left = Math.min(left, level[4 * k]);
                top = Math.min(top, level[4 * k + 1]);
                right = Math.max(right, level[4 * k + 2]);
                bottom = Math.max(bottom, level[4 * k + 3]);
            }
            above[4 * node] = left;
            above[4 * node + 1] = top;
            above[4 * node + 2] = right;
            above[4 * node + 3] = bottom;
        }
        return above;
    }

    /** The numbers of the boxes that share some area with a rectangle, or would if they had any, in ascending order. */
    public int[] touching(double left, double top, double right, double bottom) {
        Search search = new Search(left, top, right, bottom);
        int highest = levels.length - 1;
        search.through(highest, 0, levels[highest].length / 4);
        int[] found = Arrays.copyOf(search.found, search.count);
        Arrays.sort(found);
        return found;
    }

    private final class Search {
        private final double left;
        private final double top;
        private final double right;
        private final double bottom;
        private int[] found = new int[64];
        private int count;

        Search(double left, double top, double right, double bottom) {
            this.left = left;
            this.top = top;
            this.right = right;
            this.bottom = bottom;
        }

        void through(int level, int from, int end) {
            double[] boxes = levels[level];
            for (int k = from; k < end; k++) {
                boolean apart = boxes[4 * k] >= right
                        || boxes[4 * k + 2] <= left
                        || boxes[4 * k + 1] >= bottom
                        || boxes[4 * k + 3] <= top;
                if (!apart && level == 0) {
                    add(order[k]);
                } else if (!apart) {
                    through(level - 1, k * NODE, Math.min(levels[level - 1].length / 4, (k + 1) * NODE));
                }
            }
        }

        private void add(int number) {
            if (count == found.length) {
                found = Arrays.copyOf(found, 2 * count);
            }
            found[count++] = number;
        }
    }
}
