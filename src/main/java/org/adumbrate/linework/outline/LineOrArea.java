package org.adumbrate.linework.outline;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.geometry.Srgb;

/**
 * Tells which of the thin shapes of a page are lines. A long one is. A short one may as well be a window or a post seen small: it is a
 * line if it has the width of lines in its colour, or if many have just its width. Wide ones must be the longer; a wall cut at a small
 * scale looks the same, so lines wider than 1 mm are worth telling.
 */
public final class LineOrArea {
    /** Lines are rarely wider than this, in mm. */
    public static final double WIDE_MM = 1;

    /** Up to this width a shape is a line from so many widths on. */
    private static final double FINE_MM = 0.5;

    private static final double FINE_SLENDER = 4;
    private static final double SLENDER = 8;
    private static final double WIDE_SLENDER = 20;

    /** So many lines of one width and colour are drawn with one pen. */
    private static final int PEN = 3;

    /** A width that is found so many times less often than another is none of a pen, if one of both must be. */
    private static final int RARE = 4;

    /** So many short shapes of one width and colour, none wider than that, are dashes. */
    private static final int DASHES = 20;

    private static final double WIDEST_DASH_MM = 0.7;
    private static final double SHORTEST_DASH = 1.2;

    /** What counts as one width, as a share, and in any case in mm. */
    private static final double SAME_SHARE = 0.02;

    private static final double SAME_MM = 0.005;

    /** Where more than this share of the shapes of one width lie side by side, they are parts of a surface. */
    private static final double SURFACE = 0.3;

    /** Widths in ascending order, by colour: of shapes that are long enough to be lines, ... */
    private final Map<Srgb, double[]> pens;

    /** ... of those that may be dashes, ... */
    private final Map<Srgb, double[]> dashes;

    /** ... of all, those that may be lines across being counted both ways, ... */
    private final Map<Srgb, double[]> all;

    /** ... and of those that lie side by side with others. */
    private final Map<Srgb, double[]> beside;

    /**
     * Looks at all thin shapes of a page.
     *
     * @param shapes the shapes
     * @param colors the colour of each
     * @param sides which of them lie side by side with others
     */
    public LineOrArea(List<OutlinedLine> shapes, List<Srgb> colors, SharedSides sides) {
        Map<Srgb, List<Double>> clear = new HashMap<>();
        Map<Srgb, List<Double>> small = new HashMap<>();
        Map<Srgb, List<Double>> any = new HashMap<>();
        Map<Srgb, List<Double>> shared = new HashMap<>();
        for (int k = 0; k < shapes.size(); k++) {
            OutlinedLine shape = shapes.get(k);
            Srgb color = colors.get(k);
            if (isClear(shape)) {
                add(clear, color, shape);
            } else if (mayBeDash(shape)) {
                add(small, color, shape);
            }
            add(any, color, shape);
            shape.across().ifPresent(other -> add(any, color, other));
            if (sides.isShared(k)) {
                add(shared, color, shape);
            }
        }
        this.pens = sorted(clear);
        this.dashes = sorted(small);
        this.all = sorted(any);
        this.beside = sorted(shared);
    }

    /**
     * The line that a shape is, along its longer side or across; nothing if it is an area.
     *
     * @param isBeside whether it lies side by side with others
     */
    public Optional<OutlinedLine> line(OutlinedLine shape, Srgb color, boolean isBeside) {
        int same = count(all.get(color), shape.widthMm());
        if (isBeside && count(beside.get(color), shape.widthMm()) > SURFACE * same) {
            return Optional.empty();
        }
        OutlinedLine read = shape.across()
                .filter(other -> count(all.get(color), other.widthMm()) > RARE * same)
                .orElse(shape);
        boolean isLine = isClear(read)
                || count(pens.get(color), read.widthMm()) >= PEN
                || (mayBeDash(read) && count(dashes.get(color), read.widthMm()) >= DASHES);
        return isLine ? Optional.of(read) : Optional.empty();
    }

    private static boolean mayBeDash(OutlinedLine shape) {
        return shape.widthMm() <= WIDEST_DASH_MM && shape.slenderness() >= SHORTEST_DASH;
    }

    private static void add(Map<Srgb, List<Double>> widths, Srgb color, OutlinedLine shape) {
        widths.computeIfAbsent(color, c -> new ArrayList<>()).add(shape.widthMm());
    }

    private static boolean isClear(OutlinedLine shape) {
        double slender =
                shape.widthMm() <= FINE_MM ? FINE_SLENDER : shape.widthMm() <= WIDE_MM ? SLENDER : WIDE_SLENDER;
        return shape.slenderness() >= slender;
    }

    /** How many of some widths are the same as one. */
    private static int count(double[] widths, double width) {
        if (widths == null) {
            return 0;
        }
        double same = Math.max(SAME_SHARE * width, SAME_MM);
        return place(widths, width + same) - place(widths, width - same);
    }

    private static int place(double[] widths, double width) {
        int place = Arrays.binarySearch(widths, width);
        return place < 0 ? -place - 1 : place;
    }

    private static Map<Srgb, double[]> sorted(Map<Srgb, List<Double>> widths) {
        Map<Srgb, double[]> sorted = new HashMap<>();
        widths.forEach((color, some) -> sorted.put(
                color, some.stream().mapToDouble(Double::doubleValue).sorted().toArray()));
        return sorted;
    }
}
