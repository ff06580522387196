package org.adumbrate.drawing;

import java.io.IOException;
import java.util.List;
import org.adumbrate.geometry.Canvas;

/**
 * A drawing held in three stacks: what lies below an item that is being edited, the item, and what lies above it. When the item changes,
 * only tiles that it touched before or touches now are drawn again, from the held picture of what is below: the result is the same, byte
 * for byte, as when everything is drawn at once. Never changed.
 */
public final class InkedStack {
    private final InkedLayers below;
    private final Inks item;
    private final Inks above;
    private final InkedLayers all;

    private InkedStack(InkedLayers below, Inks item, Inks above, InkedLayers all) {
        this.below = below;
        this.item = item;
        this.above = above;
        this.all = all;
    }

    /**
     * Draws everything.
     *
     * @param channels of the pictures that it is laid over: with 1 colours have their luminance
     * @param below what is drawn first
     * @param item what is edited
     * @param above what is drawn over it
     */
    public static InkedStack of(
            Canvas canvas, int channels, List<Layer> below, List<Layer> item, List<Layer> above, int threads)
            throws IOException {
        InkedLayers under = InkedLayers.bare(canvas, channels).with(below, threads);
        Inks edited = under.inks(item);
        Inks over = under.inks(above);
        InkedLayers all = under.drawn(threads, (column, row) -> {
            boolean untouched = edited.on(column, row).length == 0 && over.on(column, row).length == 0;
            InkTile tile = under.tile(column, row);
            return untouched ? tile : InkedLayers.onCopy(tile, List.of(edited, over), column, row);
        });
        return new InkedStack(under, edited, over, all);
    }

    /** The same drawing after the item has changed. */
    public InkedStack with(List<Layer> changed, int threads) throws IOException {
        Inks edited = below.inks(changed);
        InkedLayers drawn = below.drawn(threads, (column, row) -> {
            boolean untouched = item.on(column, row).length == 0 && edited.on(column, row).length == 0;
            return untouched
                    ? all.tile(column, row)
                    : InkedLayers.onCopy(below.tile(column, row), List.of(edited, above), column, row);
        });
        return new InkedStack(below, edited, above, drawn);
    }

    /** Everything, to be laid over light. */
    public InkedLayers all() {
        return all;
    }
}
