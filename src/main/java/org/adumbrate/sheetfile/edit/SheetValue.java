package org.adumbrate.sheetfile.edit;

import java.util.Optional;
import org.adumbrate.sheetfile.complaint.Place;
import org.adumbrate.sheetfile.form.Allowed;

/**
 * A value of a sheet file that may be changed: one that is written, one that holds by default, or one that may be added.
 *
 * @param key its key path
 * @param span where it is written; nothing where it is not
 * @param value what is written, without quotes, or what holds; empty where nothing does, and for lists and mappings
 * @param meaning what its key means, a sentence; empty for an item of a list or what has a name of its own
 * @param allowed what may stand there
 * @param isNeeded true where the key must be given
 * @param isShared true where it is written elsewhere, and stands here by an alias
 */
public record SheetValue(
        String key,
        Optional<Span> span,
        String value,
        String meaning,
        Allowed allowed,
        boolean isNeeded,
        boolean isShared) {
    /**
     * A stretch of the text.
     *
     * @param from its first char, counted from 0 in the whole text
     * @param to behind its last
     * @param begin the same as {@code from} in lines and columns
     * @param end the same as {@code to}
     */
    public record Span(int from, int to, Place begin, Place end) {}
}
