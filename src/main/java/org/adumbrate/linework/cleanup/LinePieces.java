package org.adumbrate.linework.cleanup;

import java.util.Arrays;

/**
 * LinePieces of lines, each straight or one cubic curve, in flat arrays, as there are many. A piece has two ends: end 0 of
 * piece k has the number 2k, end 1 the number 2k + 1.
 */
final class LinePieces {
    /** In mm: what lies no farther apart is the same place. Files are exact to a few thousandths. */
    static final double SAME_MM = 0.01;

    private double[] ends = new double[256];
    private double[][] controls = new double[64][];
    private boolean[] gone = new boolean[64];
    private int size;

    int size() {
        return size;
    }

    /** Adds a straight piece and gives its number. */
    int line(double x0, double y0, double x1, double y1) {
        if (size == gone.length) {
            ends = Arrays.copyOf(ends, 2 * ends.length);
            controls = Arrays.copyOf(controls, 2 * controls.length);
            gone = Arrays.copyOf(gone, 2 * gone.length);
        }
        size++;
        move(size - 1, x0, y0, x1, y1);
        return size - 1;
    }

    /** Adds a curve with two control points, given as x, y, x, y. */
    void curve(double x0, double y0, double[] control, double x1, double y1) {
        int piece = line(x0, y0, x1, y1); // may move the table of control points, so it comes first
        controls[piece] = control;
    }

    /** Gives a piece other ends. */
    void move(int piece, double x0, double y0, double x1, double y1) {
        ends[4 * piece] = x0;
        ends[4 * piece + 1] = y0;
        ends[4 * piece + 2] = x1;
        ends[4 * piece + 3] = y1;
    }

    void remove(int piece) {
        gone[piece] = true;
    }

    boolean isGone(int piece) {
        return gone[piece];
    }

    /** True for a piece that is still there and straight. */
    boolean isLine(int piece) {
        return !gone[piece] && controls[piece] == null;
    }

    /** True for a piece that is still there and a curve. */
    boolean isCurve(int piece) {
        return !gone[piece] && controls[piece] != null;
    }

    /** A curve's control points: x, y, x, y. */
    double[] control(int piece) {
        return controls[piece];
    }

    /** The x of an end by its number. */
    double x(int end) {
        return ends[2 * end];
    }

    /** The y of an end by its number. */
    double y(int end) {
        return ends[2 * end + 1];
    }

    /** Where a control point lies that an end's tangent points to; the other end of a straight piece. */
    double towardX(int end) {
        double[] control = controls[end >> 1];
        return control == null ? x(end ^ 1) : control[2 * (end & 1)];
    }

    /** As {@link #towardX}. */
    double towardY(int end) {
        double[] control = controls[end >> 1];
        return control == null ? y(end ^ 1) : control[2 * (end & 1) + 1];
    }

    /** The distance between two ends by their numbers. */
    double distance(int a, int b) {
        return Math.hypot(x(a) - x(b), y(a) - y(b));
    }

    /** The distance between a piece's ends. */
    double span(int piece) {
        return distance(2 * piece, 2 * piece + 1);
    }

    /** Numbers of the straight pieces that are there. */
    int[] lines() {
        int[] numbers = new int[size];
        int count = 0;
        for (int k = 0; k < size; k++) {
            if (isLine(k)) {
                numbers[count++] = k;
            }
        }
        return Arrays.copyOf(numbers, count);
    }
}
