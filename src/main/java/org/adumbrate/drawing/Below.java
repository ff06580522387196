package org.adumbrate.drawing;

import java.util.List;
import java.util.concurrent.atomic.AtomicReferenceArray;

/** What lies below a change: its tiles are drawn when they are first asked for, and held. Safe for use by several threads. */
final class Below {
    private static final InkTile BARE = new InkTile();

    private final InkedLayers tiles;
    private final List<Inks> inks;

    /** What it rests on where less was held before; nothing where it was drawn from bare paper. */
    private final Below lower;

    private final AtomicReferenceArray<InkTile> drawn;

    private Below(InkedLayers tiles, List<Inks> inks, Below lower) {
        this.tiles = tiles;
        this.inks = inks;
        this.lower = lower;
        this.drawn = new AtomicReferenceArray<>(tiles.count());
    }

    /** @param tiles the tiles, with nothing on them */
    static Below nothing(InkedLayers tiles) {
        return new Below(tiles, List.of(), null);
    }

    /** Another with other inks, drawn from this where this holds the first of them. */
    Below of(List<Inks> other) {
        if (other.equals(inks)) {
            return this;
        }
        boolean begins = other.size() > inks.size()
                && !inks.isEmpty()
                && other.subList(0, inks.size()).equals(inks);
        return new Below(tiles, List.copyOf(other), begins ? new Below(tiles, inks, null, drawn) : null);
    }

    private Below(InkedLayers tiles, List<Inks> inks, Below lower, AtomicReferenceArray<InkTile> drawn) {
        this.tiles = tiles;
        this.inks = inks;
        this.lower = lower;
        this.drawn = drawn;
    }

    /** The tile in a column and row of the grid; null if nothing is on it. */
    InkTile tile(int column, int row) {
        int at = tiles.at(column, row);
        InkTile held = drawn.get(at);
        if (held == null) {
            held = draw(column, row);
            drawn.set(at, held);
        }
        return held == BARE ? null : held;
    }

    private InkTile draw(int column, int row) {
        InkTile start = lower == null ? null : lower.heldTile(column, row);
        List<Inks> missing = start == null ? inks : inks.subList(lower.inks.size(), inks.size());
        InkTile under = start == BARE ? null : start;
        boolean nothing = missing.stream().allMatch(ink -> ink.on(column, row).length == 0);
        if (nothing) {
            return under == null ? BARE : under;
        }
        return InkedLayers.onCopy(under, missing, column, row);
    }

    private InkTile heldTile(int column, int row) {
        return drawn.get(tiles.at(column, row));
    }
}
