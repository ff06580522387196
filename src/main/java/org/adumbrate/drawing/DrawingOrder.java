package org.adumbrate.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What covers what: the names of the layers from the back to the front, the same in every kind of drawing. {@link #of}
 * is the one place that says how it is by default.
 *
 * @param names from the back to the front, each once; names of layers that a drawing does not have do no harm
 * @param fills those of them that lie directly under the name that follows, wherever that goes
 */
public record DrawingOrder(List<String> names, Set<String> fills) {
    /** The merged passes; always at the back. */
    public static final String UNDERLAY = "underlay";

    /** Birds, planting and figures, which stand before and behind each other. */
    public static final String ENTOURAGE = "entourage";

    /** The figures among them. */
    public static final String FIGURES = "figures";

    /** The fill of the cut, under its hatch. */
    public static final String CUT_BACKING = "cut-backing";

    /** The hatch of the cut. */
    public static final String CUT_HATCH = "cut-hatch";

    /** The outline of what stands against the background. */
    public static final String PROFILE = "profile";

    /** The outline of the cut. */
    public static final String CUT_OUTLINE = "cut-outline";

    /** The height lines, in front so that they are seen when they are switched on. */
    public static final String HEIGHTS = "heights";

    /** @throws IllegalArgumentException if a name occurs twice */
    public DrawingOrder {
        names = List.copyOf(names);
        fills = Set.copyOf(fills);
        if (Set.copyOf(names).size() < names.size()) {
            throw new IllegalArgumentException("layers of one name have one place: " + names);
        }
    }

    /** The layer of a veil's fill. */
    public static String fillOf(String veil) {
        return veil + "-fill";
    }

    /**
     * The order by default: the underlay; lines that no pen was given for; the pens' lines as the sheet file has them; the
     * lines of veils that no pen draws; birds, planting and figures; the cut's backing, hatch and outline. A veil's fill lies
     * directly under the veil's own lines: it covers what is behind them and leaves them black. The profile lies over all
     * lines but those of the veils that come last, such as trees before the building, which cover it as they cover the
     * building's lines.
     *
     * @param strays layers of lines that no pen was given for
     * @param pens the pens in the order of the sheet file
     * @param veils the layer of each veil's own lines, a pen's or one of their own, by the veil's name in the order of the
     *     sheet file
     */
    public static DrawingOrder of(List<String> strays, List<String> pens, Map<String, String> veils) {
        Set<String> lines = new LinkedHashSet<>(strays);
        lines.addAll(pens);
        lines.addAll(veils.values());
        String solid = UNDERLAY;
        for (String layer : lines) {
            solid = veils.containsValue(layer) ? solid : layer;
        }
        Set<String> names = new LinkedHashSet<>();
        names.add(UNDERLAY);
        for (String layer : lines) {
            // over the last lines that belong to no veil
            if (names.contains(solid)) {
                names.add(PROFILE);
            }
            for (String veil : veils.keySet()) {
                if (veils.get(veil).equals(layer)) {
                    names.add(fillOf(veil));
                }
            }
            names.add(layer);
        }
        names.addAll(List.of(PROFILE, ENTOURAGE, CUT_BACKING, CUT_HATCH, CUT_OUTLINE, HEIGHTS));
        Set<String> fills = veils.keySet().stream().map(DrawingOrder::fillOf).collect(Collectors.toSet());
        return new DrawingOrder(List.copyOf(names), fills);
    }

    /**
     * The order with some layers as someone wishes. Every layer is drawn where this order has it, but none of the named
     * before those that are named ahead of it: what is named too far back comes forward to just in front of them. The
     * others stay as they are among themselves, and a veil's fill that is not named stays under the layer that it is under.
     *
     * @param wish names of this order, the backmost first
     * @throws IllegalArgumentException if a name is none of this order's or is named twice, or if something is wished behind
     *     the underlay
     */
    public DrawingOrder rearranged(List<String> wish) {
        require(names.containsAll(wish), wish);
        require(Set.copyOf(wish).size() == wish.size() && wish.indexOf(UNDERLAY) <= 0, wish);
        List<String> waiting = new ArrayList<>(names);
        List<String> placed = new ArrayList<>();
        int reached = 0;
        while (!waiting.isEmpty()) {
            int next = 0;
            while (waits(waiting, next, wish, reached)) {
                next++;
            }
            String name = waiting.remove(next);
            placed.add(name);
            reached += wish.contains(name) ? 1 : 0;
        }
        return new DrawingOrder(placed, fills);
    }

    /** True if a layer, or the layer that it lies under as a fill, must wait for others that are named ahead of it. */
    private boolean waits(List<String> waiting, int at, List<String> wish, int reached) {
        int rank = wish.indexOf(waiting.get(at));
        boolean follows = rank < 0 && fills.contains(waiting.get(at)) && at + 1 < waiting.size();
        return follows ? waits(waiting, at + 1, wish, reached) : rank > reached;
    }

    private static void require(boolean holds, List<String> wish) {
        if (!holds) {
            throw new IllegalArgumentException("no order of layers: " + wish);
        }
    }

    /**
     * Layers in this order, each in the place of its own name or else of the name that it is kept within; those of one place
     * stay as they are among themselves.
     *
     * @throws IllegalArgumentException if a layer has no place in it
     */
    public List<Layer> sort(List<Layer> layers) {
        for (Layer layer : layers) {
            if (place(layer) < 0) {
                throw new IllegalArgumentException("no place for the layer " + layer.name() + " in " + names);
            }
        }
        return layers.stream().sorted(Comparator.comparingInt(this::place)).toList();
    }

    private int place(Layer layer) {
        int own = names.indexOf(layer.name());
        return own < 0 ? layer.within().map(names::indexOf).orElse(-1) : own;
    }
}
