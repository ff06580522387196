package org.adumbrate.drawing;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.raster.Halt;

/**
 * A drawing held on the tiles of a canvas's window, to be drawn again where it changes. Paints that stay are made ready once; tiles that no
 * changed paint touches, before or after, are shared; the others are drawn from a held picture of all that lies below the change, so that
 * an item that is dragged costs what lies on and above it. The result is the same, byte for byte, as when everything is drawn at once.
 * Safe for use by several threads.
 */
public final class HeldInk {
    private final List<HeldLayer> layers;
    private final List<Inks> inks;
    private final Below below;
    private final InkedLayers all;

    private HeldInk(List<HeldLayer> layers, List<Inks> inks, Below below, InkedLayers all) {
        this.layers = layers;
        this.inks = inks;
        this.below = below;
        this.all = all;
    }

    /**
     * Draws everything.
     *
     * @param channels of the pictures that it is laid over: with 1 colours have their luminance
     * @param layers in drawing order; those that are not shown are left out
     * @param halt ends the work
     */
    public static HeldInk of(Canvas canvas, int channels, List<Layer> layers, int threads, Halt halt)
            throws IOException {
        InkedLayers bare = InkedLayers.bare(canvas, channels);
        return new HeldInk(List.of(), List.of(), Below.nothing(bare), bare).with(layers, threads, halt);
    }

    /** The same canvas with other layers. */
    public HeldInk with(List<Layer> changed, int threads, Halt halt) throws IOException {
        List<HeldLayer> held = HeldLayer.all(changed, layers, all);
        List<Inks> next = new ArrayList<>();
        held.forEach(layer -> next.addAll(layer.inks()));
        int same = alike(inks, next);
        if (same == inks.size() && same == next.size()) {
            return new HeldInk(held, next, below, all);
        }
        int tail = tail(inks, next, same);
        List<Inks> touching = new ArrayList<>(inks.subList(same, inks.size() - tail));
        touching.addAll(next.subList(same, next.size() - tail));
        Below under = below.of(next.subList(0, same));
        List<Inks> over = next.subList(same, next.size());
        InkedLayers drawn = all.drawn(threads, (column, row) -> {
            halt.check();
            boolean untouched = touching.stream().allMatch(ink -> ink.on(column, row).length == 0);
            return untouched ? all.tile(column, row) : InkedLayers.onCopy(under.tile(column, row), over, column, row);
        });
        return new HeldInk(held, next, under, drawn);
    }

    private static int alike(List<Inks> some, List<Inks> others) {
        int most = Math.min(some.size(), others.size());
        int same = 0;
        while (same < most && some.get(same) == others.get(same)) {
            same++;
        }
        return same;
    }

    private static int tail(List<Inks> some, List<Inks> others, int head) {
        int most = Math.min(some.size(), others.size()) - head;
        int same = 0;
        while (same < most && some.get(some.size() - 1 - same) == others.get(others.size() - 1 - same)) {
            same++;
        }
        return same;
    }

    /** Everything, to be laid over light. */
    public InkedLayers all() {
        return all;
    }
}
