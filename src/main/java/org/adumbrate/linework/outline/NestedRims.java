package org.adumbrate.linework.outline;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.adumbrate.geometry.BoxIndex;
import org.adumbrate.geometry.Extent;
import org.adumbrate.linework.clip.FillRule;

/** Sorts the rims of one path to shapes: each an outer rim with the rims of its holes. */
final class NestedRims {
    private final List<Rim> rims;
    private final FillRule rule;
    private final List<Extent> boxes;
    private final BoxIndex index;

    private NestedRims(List<Rim> rims, FillRule rule) {
        this.rims = rims;
        this.rule = rule;
        this.boxes = rims.stream().map(Rim::box).toList();
        this.index = BoxIndex.of(boxes.stream().map(box -> box.grown(1e-6)).toList());
    }

    /** The shapes; what is drawn within a shape and changes nothing of it is left out. */
    static List<List<Rim>> shapes(List<Rim> rims, FillRule rule) {
        return new NestedRims(rims, rule).shapes();
    }

    private List<List<Rim>> shapes() {
        int[][] around = new int[rims.size()][];
        List<List<Rim>> shapes = new ArrayList<>();
        for (int k = 0; k < rims.size(); k++) {
            around[k] = around(k);
            shapes.add(windings(around[k]) == 0 ? new ArrayList<>(List.of(rims.get(k))) : List.of());
        }
        for (int k = 0; k < rims.size(); k++) {
            Rim hole = rims.get(k);
            if (shapes.get(k).isEmpty() && isHole(k, around[k])) {
                Arrays.stream(around[k])
                        .boxed()
                        .filter(other -> !shapes.get(other).isEmpty())
                        .min(Comparator.comparingDouble(
                                other -> Math.abs(rims.get(other).area())))
                        .ifPresent(outer -> shapes.get(outer).add(hole));
            }
        }
        return shapes.stream().filter(shape -> !shape.isEmpty()).toList();
    }

    /** How often rims go around a place; 0 is outside. */
    private int windings(int[] around) {
        int windings = 0;
        for (int rim : around) {
            windings += sign(rim);
        }
        return rule == FillRule.EVEN_ODD ? Math.floorMod(windings, 2) : windings;
    }

    private boolean isHole(int rim, int[] around) {
        return rule == FillRule.EVEN_ODD || windings(around) + sign(rim) == 0;
    }

    private int sign(int rim) {
        return rims.get(rim).area() > 0 ? 1 : -1;
    }

    /** The rims that go around all of a rim. */
    private int[] around(int rim) {
        Extent box = boxes.get(rim);
        int[] found = new int[4];
        int count = 0;
        for (int other : index.touching(box.left(), box.top(), box.right(), box.bottom())) {
            if (other != rim && holds(boxes.get(other), box) && rims.get(other).holds(rims.get(rim))) {
                if (count == found.length) {
                    found = Arrays.copyOf(found, 2 * count);
                }
                found[count++] = other;
            }
        }
        return Arrays.copyOf(found, count);
    }

    private static boolean holds(Extent outer, Extent inner) {
        return outer.left() <= inner.left()
                && outer.top() <= inner.top()
                && outer.right() >= inner.right()
                && outer.bottom() >= inner.bottom();
    }
}
