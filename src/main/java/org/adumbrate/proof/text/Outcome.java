package org.adumbrate.proof.text;

import org.adumbrate.sheetfile.edit.EditResult;
import org.adumbrate.sheetfile.edit.SheetText;

/** What came of a change that a page asked for. */
public sealed interface Outcome {
    /**
     * It was tried in the text that it was meant for.
     *
     * @param before the text that it was meant for
     * @param state as it is afterwards
     * @param result what it changed, or why it was refused
     */
    record Done(SheetText before, TextState state, EditResult result) implements Outcome {}

    /**
     * The text is not the one that it was meant for.
     *
     * @param state as it is
     */
    record Stale(TextState state) implements Outcome {}
}
