package org.adumbrate.editing;

import java.util.ArrayList;
import java.util.List;

/**
 * An edit that was made, or one that was undone.
 *
 * @param told what it changed, a line for each key
 * @param before a digest of the whole text before it
 * @param after a digest of the whole text after it
 * @param swaps the stretches that it changed
 */
record PastEdit(List<ToldChange> told, String before, String after, List<Swap> swaps) {
    /** The same in the other direction. */
    PastEdit reversed() {
        List<Swap> back = new ArrayList<>();
        int shift = 0;
        for (Swap swap : swaps) {
            back.add(new Swap(swap.at() - shift, swap.lead(), swap.after(), swap.before(), swap.tail()));
            shift += swap.after().length() - swap.before().length();
        }
        List<ToldChange> toldBack = told.stream()
                .map(each -> new ToldChange(each.key(), each.after(), each.before()))
                .toList();
        return new PastEdit(toldBack, after, before, back);
    }

    /** One value changed; empty texts where there was or is none. */
    record ToldChange(String key, String before, String after) {}
}
