package org.adumbrate.editing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.sheetfile.edit.EditResult;

/**
 * A stretch of text that came in the place of another, with what stands around it, by which it is found again.
 *
 * @param at where it begins in the text after the change, in chars
 * @param lead what stands before it
 * @param before the old stretch
 * @param after the new one
 * @param tail what stands behind it
 */
record Swap(int at, String lead, String before, String after, String tail) {
    /** Enough to tell one line of a sheet file from the others. */
    private static final int AROUND = 40;

    private static final int LEAST_AROUND = 5;

    static List<Swap> of(String before, String after, List<EditResult.Span> spans) {
        List<Swap> swaps = new ArrayList<>();
        for (EditResult.Span span : joined(spans)) {
            swaps.add(new Swap(
                    span.newFrom(),
                    after.substring(Math.max(0, span.newFrom() - AROUND), span.newFrom()),
                    before.substring(span.oldFrom(), span.oldTo()),
                    after.substring(span.newFrom(), span.newTo()),
                    after.substring(span.newTo(), Math.min(after.length(), span.newTo() + AROUND))));
        }
        return swaps;
    }

    /** Spans that lie near each other are one, so that what lies between is not kept twice. */
    private static List<EditResult.Span> joined(List<EditResult.Span> spans) {
        List<EditResult.Span> joined = new ArrayList<>();
        for (EditResult.Span span : spans) {
            EditResult.Span last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (last != null && span.oldFrom() - last.oldTo() < LEAST_AROUND) {
                joined.set(
                        joined.size() - 1,
                        new EditResult.Span(last.oldFrom(), span.oldTo(), last.newFrom(), span.newTo()));
            } else {
                joined.add(span);
            }
        }
        return joined;
    }

    /**
     * Where swaps are to be taken back, as spans from a text to the one without them; nothing where one of them is not found, or
     * found twice.
     *
     * @param swaps in their order
     * @param isExact true for the very text that the change left
     */
    static Optional<List<EditResult.Span>> back(String text, List<Swap> swaps, boolean isExact) {
        List<EditResult.Span> spans = new ArrayList<>();
        int end = 0;
        int shift = 0;
        for (Swap swap : swaps) {
            int at = isExact ? swap.at() : swap.found(text);
            if (at < end) {
                return Optional.empty();
            }
            end = at + swap.after().length();
            spans.add(new EditResult.Span(
                    at, end, at + shift, at + shift + swap.before().length()));
            shift += swap.before().length() - swap.after().length();
        }
        return Optional.of(spans);
    }

    /** A text without swaps that stand at given spans. */
    static String without(String text, List<Swap> swaps, List<EditResult.Span> spans) {
        StringBuilder result = new StringBuilder(text);
        for (int k = swaps.size() - 1; k >= 0; k--) {
            result.replace(
                    spans.get(k).oldFrom(), spans.get(k).oldTo(), swaps.get(k).before());
        }
        return result.toString();
    }

    /** Found by as much of what stood around it as still stands there, if that is in one place only. */
    private int found(String text) {
        for (int around = AROUND; around >= LEAST_AROUND; around /= 2) {
            String before = lead.substring(Math.max(0, lead.length() - around));
            String whole = before + after + tail.substring(0, Math.min(tail.length(), around));
            int first = text.indexOf(whole);
            if (first >= 0) {
                return text.indexOf(whole, first + 1) < 0 ? first + before.length() : -1;
            }
        }
        return -1;
    }
}
