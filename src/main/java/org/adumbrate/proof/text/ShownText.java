package org.adumbrate.proof.text;

import java.util.Optional;
import org.adumbrate.editing.TypedText;
import org.adumbrate.sheetfile.edit.EditResult;

/**
 * A text as a page shows it: without the mark that a file may begin with, and with every line ended by a single {@code \n}. What is
 * typed there goes back into the text of the file, where each line that was not touched keeps its end.
 */
public final class ShownText {
    private static final char MARK = '\uFEFF';

    private final String whole;
    private final String shown;

    /** For each char of the whole text, where it is shown; the two that end a line are shown at one place. */
    private final int[] places;

    private ShownText(String whole, String shown, int[] places) {
        this.whole = whole;
        this.shown = shown;
        this.places = places;
    }

    /** That of the text of a file. */
    public static ShownText of(String whole) {
        StringBuilder shown = new StringBuilder(whole.length());
        int[] places = new int[whole.length() + 1];
        for (int k = 0; k < whole.length(); k++) {
            char c = whole.charAt(k);
            boolean isSecond = c == '\n' && k > 0 && whole.charAt(k - 1) == '\r';
            places[k] = isSecond ? shown.length() - 1 : shown.length();
            if (!isSecond && !(c == MARK && k == 0)) {
                shown.append(c == '\r' ? '\n' : c);
            }
        }
        places[whole.length()] = shown.length();
        return new ShownText(whole, shown.toString(), places);
    }

    /** The text that is shown. */
    public String text() {
        return shown;
    }

    /** Where a char of the whole text is shown. */
    public int at(int place) {
        return places[place];
    }

    /** The whole text that it becomes when another one is shown. */
    public String typed(String next) {
        Optional<EditResult.Span> span = TypedText.span(shown, next);
        if (span.isEmpty()) {
            return whole;
        }
        EditResult.Span found = span.get();
        String typed = next.substring(found.newFrom(), found.newTo()).replace("\n", lineEnd());
        return joined(joined(whole.substring(0, place(found.oldFrom())), typed), whole.substring(place(found.oldTo())));
    }

    /** Two line ends that come to stand together stay two. */
    private static String joined(String before, String after) {
        return before.endsWith("\r") && after.startsWith("\n") ? before + "\n" + after : before + after;
    }

    /** The first place of the whole text that is shown at a place, behind the mark. */
    private int place(int at) {
        int place = 0;
        while (place < whole.length() && (places[place] < at || (place == 0 && whole.charAt(0) == MARK))) {
            place++;
        }
        return place;
    }

    /** How the first line ends. */
    private String lineEnd() {
        int end = whole.indexOf('\n');
        int old = whole.indexOf('\r');
        if (old < 0) {
            return "\n";
        }
        return end == old + 1 ? "\r\n" : end < 0 || old < end ? "\r" : "\n";
    }
}
