package org.adumbrate.sheetfile.edit;

import java.util.List;
import java.util.Optional;
import org.adumbrate.sheetfile.complaint.Complaint;
import org.adumbrate.sheetfile.complaint.Place;

/** What came of some edits. */
public sealed interface EditResult permits EditResult.Edited, EditResult.Refused {
    /**
     * They were made.
     *
     * @param text the new text
     * @param changes what each of them changed, and what followed from it
     * @param spans where the new text differs, in order
     */
    record Edited(SheetText text, List<Change> changes, List<Span> spans) implements EditResult {
        /** Copies the lists. */
        public Edited {
            changes = List.copyOf(changes);
            spans = List.copyOf(spans);
        }
    }

    /**
     * None of them was made.
     *
     * @param reasons why, at least one; those of the reader where the sheet file would no longer read well
     */
    record Refused(List<Complaint> reasons) implements EditResult {
        /** Copies the list. */
        public Refused {
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * One value changed.
     *
     * @param key its key path, before the change
     * @param before as it was written; nothing where it was not
     * @param after as it is written now; nothing where it is not
     * @param place where, in the new text, or where it was
     */
    record Change(String key, Optional<String> before, Optional<String> after, Place place) {}

    /**
     * A stretch of text in place of another, both counted in chars of the whole text.
     *
     * @param oldFrom where the old stretch begins
     * @param oldTo where it ends
     * @param newFrom where the new stretch begins
     * @param newTo where it ends
     */
    record Span(int oldFrom, int oldTo, int newFrom, int newTo) {}
}
