package org.adumbrate.linework.outline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds thin shapes of four corners that are parts of a surface: facets and boards lie side by side with others, and have a side in
 * common with them, as the outline of a line has with nothing but its copy. A face may also be outlined along both its sides.
 */
public final class SharedSides {
    /** Ends of sides that are so near are the same, in mm. */
    private static final double GRID_MM = 1e-4;

    /** Sides shorter than so many widths are ends. */
    private static final double END = 2;

    private record Side(long fromX, long fromY, long toX, long toY) {
        static Side of(double x0, double y0, double x1, double y1) {
            long ax = Math.round(x0 / GRID_MM);
            long ay = Math.round(y0 / GRID_MM);
            long bx = Math.round(x1 / GRID_MM);
            long by = Math.round(y1 / GRID_MM);
            return ax < bx || (ax == bx && ay <= by) ? new Side(ax, ay, bx, by) : new Side(bx, by, ax, ay);
        }
    }

    private final Map<Side, Integer> shapeOf = new HashMap<>();
    private final boolean[] shared;
    private final int[] stroked;

    /** Looks for sides that the shapes have in common with each other. */
    public SharedSides(List<OutlinedLine> shapes) {
        shared = new boolean[shapes.size()];
        stroked = new int[shapes.size()];
        for (int k = 0; k < shapes.size(); k++) {
            List<Side> sides = sides(shapes.get(k));
            List<Integer> others = sides.stream().map(shapeOf::get).toList();
            boolean copy =
                    sides.size() == 2 && others.get(0) != null && others.get(0).equals(others.get(1));
            for (int n = 0; n < sides.size() && !copy; n++) {
                if (others.get(n) != null) {
                    shared[k] = true;
                    shared[others.get(n)] = true;
                } else {
                    shapeOf.put(sides.get(n), k);
                }
            }
        }
    }

    /** The long sides of a shape of four corners. */
    private static List<Side> sides(OutlinedLine line) {
        List<Side> sides = new ArrayList<>();
        if (line.outline().runs() == 1 && line.outline().segments() <= 5) {
            double end = END * line.widthMm();
            line.outline().chords(GRID_MM, (x0, y0, x1, y1) -> {
                if (Math.hypot(x1 - x0, y1 - y0) > end) {
                    sides.add(Side.of(x0, y0, x1, y1));
                }
            });
        }
        return sides;
    }

    /** Whether there is any side that could be shared. */
    public boolean isEmpty() {
        return shapeOf.isEmpty();
    }

    /** Looks at an edge of an area. */
    public void edge(double x0, double y0, double x1, double y1) {
        Integer shape = shapeOf.get(Side.of(x0, y0, x1, y1));
        if (shape != null) {
            shared[shape] = true;
        }
    }

    /** Looks at a straight piece of a stroke. */
    public void stroke(double x0, double y0, double x1, double y1) {
        Integer shape = shapeOf.get(Side.of(x0, y0, x1, y1));
        if (shape != null && ++stroked[shape] > 1) {
            shared[shape] = true;
        }
    }

    /** Whether a shape is part of a surface. */
    public boolean isShared(int shape) {
        return shared[shape];
    }
}
