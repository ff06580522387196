package org.adumbrate.sheetfile.form;

import java.util.List;

/**
 * What may stand at a place of a sheet file, for a page or a person that offers it.
 *
 * @param type {@code number}, {@code integer}, {@code flag}, {@code choice}, {@code color}, {@code name}, {@code time},
 *     {@code size}, {@code file}, {@code output}, {@code outline}, {@code frame}, {@code row} (a list of fixed length),
 *     {@code list}, {@code mapping} (known keys) or {@code names} (a mapping by names of one's own)
 * @param units of a number: those that may follow it, the first being that of bare numbers; empty where it takes none
 * @param range of a number, in its first unit
 * @param words the words allowed, or suggested where other texts may stand as well; of an output, how its name may end
 */
public record Allowed(String type, List<String> units, Range range, List<String> words) {
    /** Copies the lists. */
    public Allowed {
        units = List.copyOf(units);
        words = List.copyOf(words);
    }

    static Allowed of(String type, List<String> words) {
        return new Allowed(type, List.of(), Range.ANY, words);
    }

    static Allowed words(List<String> words) {
        return of("choice", words);
    }
}
