package org.adumbrate.sheetfile.complaint;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The known word that someone may have meant. */
public final class Nearest {
    /** The most slips that still make a likely misspelling, however long the word. */
    private static final int MOST_SLIPS = 3;

    private Nearest() {}

    /** The words to add to a complaint: {@code ; did you mean 'opacity'?}, or nothing where no known word is near. */
    public static String hint(String word, Collection<String> known) {
        return to(word, known).map(near -> "; did you mean '" + near + "'?").orElse("");
    }

    /**
     * What to say of a name that nothing has: {@code no floor is called 'yrad'; expected yard or upper; did you mean 'yard'?}
     *
     * @param kind what has such names
     * @param known the names there are
     */
    public static String unknown(String kind, String name, Collection<String> known) {
        String expected = known.isEmpty()
                ? "there is none at all"
                : "expected " + Wording.choice(known.stream().toList());
        return "no " + kind + " is called " + Wording.quoted(name) + "; " + expected + hint(name, known);
    }

    /** The nearest known word, if it is near: one slip, or one in every three letters. */
    public static Optional<String> to(String word, Collection<String> known) {
        String best = null;
        int least = MOST_SLIPS + 1;
        for (String candidate : known) {
            int longer = Math.max(word.length(), candidate.length());
            int shorter = Math.min(word.length(), candidate.length());
            int allowed = Math.min(MOST_SLIPS, Math.max(1, longer / 3));
            if (longer - shorter > allowed) {
                continue;
            }
            int slips = slips(word.toLowerCase(Locale.ROOT), candidate.toLowerCase(Locale.ROOT));
            if (slips <= allowed && slips < longer && slips < least) {
                least = slips;
                best = candidate;
            }
        }
        return Optional.ofNullable(best);
    }

    /**
     * The least number of letters to insert, drop, change or swap with their neighbour: the optimal string alignment
     * distance, after Damerau, "A technique for computer detection and correction of spelling errors" (1964).
     */
    static int slips(String a, String b) {
        int[] beforeLast = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] free = beforeLast;
            beforeLast = last;
            last = row;
            row = free;
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(Math.min(last[j], row[j - 1]) + 1, last[j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
                }
            }
        }
        return row[b.length()];
    }
}
