package org.adumbrate.figure.shadow;

import java.util.Arrays;
import java.util.List;

/** The rows of a {@link SunSilhouette}, one after the other, and what can be said of each block of them. */
final class ShadeRows {
    private static final double PITCH = 0.001;
    private static final int MOST_ROWS = 16384;

    private final double lowest;
    private final double pitch;
    private final int[] begin;
    private final float[] towards;
    private final ShadeBlocks blocks;
    private float[] left = new float[4096];
    private float[] right = new float[4096];
    private float[] leftToward = new float[4096];
    private float[] rightToward = new float[4096];
    private double nearest = Double.POSITIVE_INFINITY;
    private double farthest = Double.NEGATIVE_INFINITY;

    private ShadeRows(double lowest, double pitch, int count) {
        this.lowest = lowest;
        this.pitch = pitch;
        this.begin = new int[count + 1];
        this.towards = new float[count];
        this.blocks = new ShadeBlocks(count);
    }

    /** The rows of a figure. */
    static ShadeRows of(StandingSolid figure, SunFrame sun) {
        List<DiscShade> discs = figure.solid().discs().stream()
                .map(disc -> new DiscShade(disc, figure.turn(), figure.mirrored(), sun))
                .toList();
        double lowest = discs.stream().mapToDouble(DiscShade::lowest).min().orElse(0);
        double highest = discs.stream().mapToDouble(DiscShade::highest).max().orElse(0);
        int count = (int) Math.min(MOST_ROWS, Math.ceil((highest - lowest) / PITCH));
        ShadeRows rows = new ShadeRows(lowest, count == 0 ? PITCH : (highest - lowest) / count, count);
        rows.fill(discs);
        return rows;
    }

    private void fill(List<DiscShade> discs) {
        int[] first = new int[discs.size()];
        int[] last = new int[discs.size()];
        for (int k = 0; k < first.length; k++) {
            first[k] = rowAt(discs.get(k).lowest());
            last[k] = rowAt(discs.get(k).highest());
        }
        ShadeRuns runs = new ShadeRuns();
        for (int row = 0; row < count(); row++) {
            runs.clear();
            double up = lowest + (row + 0.5) * pitch;
            for (int k = 0; k < first.length; k++) {
                if (first[k] <= row && row <= last[k]) {
                    discs.get(k).addTo(runs, up);
                }
            }
            keep(row, runs);
        }
        spreadTowards();
    }

    private void keep(int row, ShadeRuns runs) {
        int at = begin[row];
        if (at + runs.count() > left.length) {
            int room = 2 * (at + runs.count());
            left = Arrays.copyOf(left, room);
            right = Arrays.copyOf(right, room);
            leftToward = Arrays.copyOf(leftToward, room);
            rightToward = Arrays.copyOf(rightToward, room);
        }
        double mean = 0;
        double width = 0;
        int widest = at;
        for (int k = 0; k < runs.count(); k++, at++) {
            left[at] = (float) runs.left(k);
            right[at] = (float) runs.right(k);
            leftToward[at] = (float) runs.leftToward(k);
            rightToward[at] = (float) runs.rightToward(k);
            nearest = Math.min(nearest, Math.min(leftToward[at], rightToward[at]));
            farthest = Math.max(farthest, Math.max(leftToward[at], rightToward[at]));
            double wide = right[at] - left[at] + 1e-9;
            mean += wide * (leftToward[at] + rightToward[at]) / 2;
            width += wide;
            widest = right[at] - left[at] > right[widest] - left[widest] ? at : widest;
            blocks.hold(row, left[at], right[at]);
        }
        begin[row + 1] = at;
        towards[row] = width > 0 ? (float) (mean / width) : Float.NaN;
        boolean any = runs.count() > 0;
        blocks.settle(row, any ? left[widest] : Float.POSITIVE_INFINITY, any ? right[widest] : 0);
    }

    /** Rows with nothing in them take the distance of the next one that has. */
    private void spreadTowards() {
        for (int row = 1; row < towards.length; row++) {
            towards[row] = Float.isNaN(towards[row]) ? towards[row - 1] : towards[row];
        }
        for (int row = towards.length - 2; row >= 0; row--) {
            towards[row] = Float.isNaN(towards[row]) ? towards[row + 1] : towards[row];
        }
    }

    int count() {
        return towards.length;
    }

    /** The row at a height; below 0 or beyond the last where there is none. */
    int rowAt(double up) {
        return (int) Math.floor((up - lowest) / pitch);
    }

    /** The height of a row's lower bound. */
    double up(int row) {
        return lowest + row * pitch;
    }

    /** The first run of a row; the one after its last is the first of the next. */
    int begin(int row) {
        return begin[row];
    }

    double left(int run) {
        return left[run];
    }

    double right(int run) {
        return right[run];
    }

    double leftToward(int run) {
        return leftToward[run];
    }

    double rightToward(int run) {
        return rightToward[run];
    }

    /** How far toward the sun a row lies in the mean. */
    double toward(int row) {
        return towards[row];
    }

    /** How far toward the sun the farthest bound lies. */
    double farthest() {
        return farthest;
    }

    /** How far toward the sun the nearest bound lies. */
    double nearest() {
        return nearest;
    }

    /** What can be said of each block of rows. */
    ShadeBlocks blocks() {
        return blocks;
    }
}
