package org.adumbrate.editing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.adumbrate.sheetfile.complaint.Complaint;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.edit.EditResult;
import org.adumbrate.sheetfile.edit.SheetText;
import org.adumbrate.sheetfile.edit.SheetValue;

/** A text that somebody typed in the place of another, as one edit. */
public final class TypedText {
    /** What is said to have changed where no value did: a comment, or the order. */
    private static final String COMMENT = "the text";

    /** Nobody reads more. */
    private static final int MOST_TOLD = 20;

    private TypedText() {}

    /** The edit; refused where the new text is no YAML, or gives complaints that the old one does not. */
    static EditResult edit(SheetText old, SheetText next) {
        Map<String, String> after;
        try {
            after = written(next);
        } catch (SheetFileFault e) {
            return new EditResult.Refused(e.complaints());
        }
        List<Complaint> fresh = next.complaintsBeside(old);
        if (!fresh.isEmpty()) {
            return new EditResult.Refused(fresh);
        }
        Optional<EditResult.Span> span = span(old.text(), next.text());
        return span.<EditResult>map(one -> new EditResult.Edited(next, changes(old, next, after, one), List.of(one)))
                .orElseGet(() -> new EditResult.Edited(next, List.of(), List.of()));
    }

    /** The shortest stretch that may be replaced to make one text of the other; nothing where they are equal. */
    public static Optional<EditResult.Span> span(String old, String next) {
        int most = Math.min(old.length(), next.length());
        int from = 0;
        while (from < most && old.charAt(from) == next.charAt(from)) {
            from++;
        }
        if (from == old.length() && from == next.length()) {
            return Optional.empty();
        }
        if (from > 0 && Character.isHighSurrogate(old.charAt(from - 1))) {
            from--;
        }
        int tail = 0;
        while (tail < most - from && old.charAt(old.length() - 1 - tail) == next.charAt(next.length() - 1 - tail)) {
            tail++;
        }
        if (tail > 0 && Character.isLowSurrogate(old.charAt(old.length() - tail))) {
            tail--;
        }
        return Optional.of(new EditResult.Span(from, old.length() - tail, from, next.length() - tail));
    }

    private static Map<String, String> written(SheetText text) throws SheetFileFault {
        Map<String, String> written = new LinkedHashMap<>();
        for (SheetValue value : text.values()) {
            value.span().ifPresent(span -> written.put(value.key(), value.value()));
        }
        return written;
    }

    private static List<EditResult.Change> changes(
            SheetText old, SheetText next, Map<String, String> after, EditResult.Span span) {
        Map<String, String> before = Map.of();
        try {
            before = written(old);
        } catch (SheetFileFault broken) {
            // what was mended cannot be reported key by key
        }
        Set<String> keys = new LinkedHashSet<>(before.keySet());
        keys.addAll(after.keySet());
        List<EditResult.Change> changes = new ArrayList<>();
        for (String key : before.isEmpty() ? Set.<String>of() : keys) {
            if (changes.size() < MOST_TOLD && !Objects.equals(before.get(key), after.get(key))) {
                changes.add(new EditResult.Change(
                        key,
                        Optional.ofNullable(before.get(key)),
                        Optional.ofNullable(after.get(key)),
                        next.place(span.newFrom())));
            }
        }
        if (changes.isEmpty()) {
            changes.add(new EditResult.Change(
                    COMMENT,
                    Optional.of(old.text().substring(span.oldFrom(), span.oldTo())),
                    Optional.of(next.text().substring(span.newFrom(), span.newTo())),
                    next.place(span.newFrom())));
        }
        return changes;
    }
}
