package org.adumbrate.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * What is painted of items one after the other, for drawings that are taken apart again. An item of a list of the sheet file,
 * such as {@code figures[3]}, shares its layer with the others of the list and stays apart from them; what a key with a name asked
 * for has a layer of that name to itself.
 *
 * <p>All is painted as {@link Paint#of} has it. Where that makes one translucent fill of several items, so that they cover
 * once where they overlap, they stay apart but are faded together: each is opaque, and the opacity is that of all of them.
 *
 * @param opacity how much all of them cover: less than 1 only where they are faded together
 * @param items in drawing order
 */
record PaintedItems(double opacity, List<Item> items) {
    /**
     * The paints of one item.
     *
     * @param key its key path; empty for what no item of a list asked for
     * @param paints in drawing order
     */
    record Item(String key, List<Paint> paints) {
        boolean isOfAList() {
            return !key.isEmpty();
        }
    }

    /** What is painted of a layer, in drawing order. */
    static List<PaintedItems> of(Layer layer) {
        List<Item> singles = new ArrayList<>();
        List<Mark> marks = layer.marks();
        for (int from = 0, to; from < marks.size(); from = to) {
            String key = item(marks.get(from));
            to = from + 1;
            while (to < marks.size() && item(marks.get(to)).equals(key)) {
                to++;
            }
            Paint.of(marks.subList(from, to)).forEach(paint -> singles.add(new Item(key, List.of(paint))));
        }
        return together(singles);
    }

    /** The item of a list that asked for a mark; nothing where none did. */
    private static String item(Mark mark) {
        return mark.key().endsWith("]") ? mark.key() : "";
    }

    private static List<PaintedItems> together(List<Item> singles) {
        List<PaintedItems> all = new ArrayList<>();
        List<Item> apart = new ArrayList<>();
        for (int from = 0, to; from < singles.size(); from = to) {
            to = from + 1;
            while (to < singles.size() && paint(singles, to - 1).fadesWith(paint(singles, to))) {
                to++;
            }
            if (to - from > 1) {
                addApart(apart, all);
                apart = new ArrayList<>();
                List<Item> faded = singles.subList(from, to).stream()
                        .map(item -> new Item(
                                item.key(), List.of(item.paints().get(0).opaque())))
                        .toList();
                all.add(new PaintedItems(paint(singles, from).opacity(), faded));
            } else {
                apart.add(singles.get(from));
            }
        }
        addApart(apart, all);
        return all;
    }

    private static Paint paint(List<Item> singles, int k) {
        return singles.get(k).paints().get(0);
    }

    /** Adds paints that are faded each by itself, those of one item in one. */
    private static void addApart(List<Item> singles, List<PaintedItems> all) {
        List<Item> items = new ArrayList<>();
        for (int from = 0, to; from < singles.size(); from = to) {
            String key = singles.get(from).key();
            List<Paint> paints = new ArrayList<>();
            for (to = from; to < singles.size() && singles.get(to).key().equals(key); to++) {
                paints.add(paint(singles, to));
            }
            items.add(new Item(key, paints));
        }
        if (!items.isEmpty()) {
            all.add(new PaintedItems(1, items));
        }
    }
}
