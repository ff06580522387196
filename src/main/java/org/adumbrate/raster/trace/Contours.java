package org.adumbrate.raster.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * The lines along which a picture has one value, between its pixels, by marching squares (Maple, "Geometric design and space
 * planning using the marching squares and marching cube algorithms", GMAG 2003) with linear interpolation along the sides.
 * Brighter lies on one side of a line all the way.
 */
public final class Contours {
    private static final int TOP = 0;
    private static final int RIGHT = 1;
    private static final int BOTTOM = 2;
    private static final int LEFT = 3;
    private static final int NONE = -1;

    /**
     * Where a line leaves a square that it enters by a side, for each pattern of bright corners (1 top left, 2 top right, 4 bottom
     * right, 8 bottom left). In the two patterns with bright corners across, the dark corners are parted.
     */
    private static final int[][] EXITS = exits();

    private final float[] values;
    private final int width;
    private final int height;
    private final float level;
    private final BitSet passed;
    private final List<double[]> lines = new ArrayList<>();

    private Contours(float[] values, int width, int height, float level) {
        this.values = values;
        this.width = width;
        this.height = height;
        this.level = level;
        this.passed = new BitSet(2 * width * height);
    }

    /**
     * Traces the lines.
     *
     * @param values row by row from the top
     * @param level the value along the lines
     * @return for each line x0 y0 x1 y1 ... in continuous pixels, one point for each side that it crosses; a closed line ends with
     *     its first point
     */
    public static List<double[]> of(float[] values, int width, int height, double level) {
        Contours contours = new Contours(values, width, height, (float) level);
        contours.trace();
        return contours.lines;
    }

    private static int[][] exits() {
        int[][] ways = {
            {},
            {LEFT, TOP},
            {TOP, RIGHT},
            {LEFT, RIGHT},
            {RIGHT, BOTTOM},
            {LEFT, TOP, RIGHT, BOTTOM},
            {TOP, BOTTOM},
            {LEFT, BOTTOM},
            {BOTTOM, LEFT},
            {BOTTOM, TOP},
            {TOP, RIGHT, BOTTOM, LEFT},
            {BOTTOM, RIGHT},
            {RIGHT, LEFT},
            {RIGHT, TOP},
            {TOP, LEFT},
            {}
        };
        int[][] exits = new int[ways.length][4];
        for (int code = 0; code < ways.length; code++) {
            Arrays.fill(exits[code], NONE);
            for (int k = 0; k < ways[code].length; k += 2) {
                exits[code][ways[code][k]] = ways[code][k + 1];
            }
        }
        return exits;
    }

    private void trace() {
        // lines that begin at the rim are walked from there; what is left is closed
        for (int x = 0; x < width - 1; x++) {
            begin(x, 0, TOP);
            begin(x, height - 2, BOTTOM);
        }
        for (int y = 0; y < height - 1; y++) {
            begin(0, y, LEFT);
            begin(width - 2, y, RIGHT);
        }
        for (int y = 0; y < height - 1; y++) {
            for (int x = 0; x < width - 1; x++) {
                int code = code(x, y);
                if (code != 0 && code != 15) {
                    for (int side = TOP; side <= LEFT; side++) {
                        begin(x, y, side);
                    }
                }
            }
        }
    }

    private int code(int x, int y) {
        int k = y * width + x;
        return (values[k] >= level ? 1 : 0)
                + (values[k + 1] >= level ? 2 : 0)
                + (values[k + width + 1] >= level ? 4 : 0)
                + (values[k + width] >= level ? 8 : 0);
    }

    private void begin(int startX, int startY, int startSide) {
        int x = startX;
        int y = startY;
        int side = startSide;
        if (EXITS[code(x, y)][side] == NONE || passed.get(id(x, y, side))) {
            return;
        }
        double[] points = new double[64];
        int count = 0;
        while (true) {
            points = count + 2 > points.length ? Arrays.copyOf(points, 2 * points.length) : points;
            put(points, count, x, y, side);
            count += 2;
            boolean isOut = x < 0 || y < 0 || x > width - 2 || y > height - 2;
            if (isOut || passed.get(id(x, y, side))) {
                break;
            }
            passed.set(id(x, y, side));
            side = EXITS[code(x, y)][side];
            x += side == RIGHT ? 1 : side == LEFT ? -1 : 0;
            y += side == BOTTOM ? 1 : side == TOP ? -1 : 0;
            side = (side + 2) % 4;
        }
        lines.add(Arrays.copyOf(points, count));
    }

    /** The number of a side of a square: that of its upper or left end, level sides before upright ones. */
    private int id(int x, int y, int side) {
        int column = side == RIGHT ? x + 1 : x;
        int row = side == BOTTOM ? y + 1 : y;
        return 2 * (row * width + column) + side % 2;
    }

    private void put(double[] points, int at, int x, int y, int side) {
        int column = side == RIGHT ? x + 1 : x;
        int row = side == BOTTOM ? y + 1 : y;
        boolean isLevel = side % 2 == 0;
        float one = values[row * width + column];
        float other = values[isLevel ? row * width + column + 1 : (row + 1) * width + column];
        double share = (level - one) / (other - one);
        points[at] = column + 0.5 + (isLevel ? share : 0);
        points[at + 1] = row + 0.5 + (isLevel ? 0 : share);
    }
}
