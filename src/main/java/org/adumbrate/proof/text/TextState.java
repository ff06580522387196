package org.adumbrate.proof.text;

import java.util.List;
import org.adumbrate.sheetfile.edit.SheetText;

/**
 * A state of a sheet: what its file said at some moment.
 *
 * @param version counts the states, from 1: each edit, each step back, each change by others, of the text or of what it names
 * @param since the version with which this text came; edits of it from there on fit
 * @param text as it stands in the file
 * @param by who made it so
 * @param trouble what keeps the file from being read, in which case the text is the last that could be; empty as a rule
 */
public record TextState(long version, long since, SheetText text, By by, List<String> trouble) {
    /** Who changed something. */
    public enum By {
        /** The page. */
        PAGE,
        /** Somebody else, such as an editor, or the modeller that exports anew. */
        OTHER
    }

    /** Copies the list. */
    public TextState {
        trouble = List.copyOf(trouble);
    }

    TextState with(SheetText next, By who) {
        return new TextState(version + 1, version + 1, next, who, List.of());
    }

    /** The same text, of which the files that it names have changed. */
    TextState again() {
        return new TextState(version + 1, since, text, By.OTHER, List.of());
    }

    TextState unread(String why) {
        return new TextState(version + 1, since, text, By.OTHER, List.of(why));
    }
}
