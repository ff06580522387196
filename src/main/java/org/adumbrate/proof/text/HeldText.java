package org.adumbrate.proof.text;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.adumbrate.editing.SheetFileEdits;
import org.adumbrate.fault.OutputFault;
import org.adumbrate.sheetfile.complaint.Complaint;
import org.adumbrate.sheetfile.edit.Edit;
import org.adumbrate.sheetfile.edit.EditResult;
import org.adumbrate.sheetfile.edit.SheetText;

/**
 * The text of a sheet file held open. The file is the truth: before each change it is looked at, and a change that was meant for
 * another text is not made. Safe for use by several threads; those who listen hear of each state once, in order.
 */
public final class HeldText {
    private final Path file;
    private final Consumer<TextState> listener;
    private TextState state;

    private HeldText(Path file, TextState state, Consumer<TextState> listener) {
        this.file = file;
        this.state = state;
        this.listener = listener;
    }

    private interface Change {
        EditResult in(SheetFileEdits edits) throws IOException;
    }

    /**
     * Opens a sheet file, which need not read well.
     *
     * @param listener hears of each new state, and must not take long
     * @throws IOException if there is no such file, or it is no text
     */
    public static HeldText open(Path file, Consumer<TextState> listener) throws IOException {
        TextState first = new TextState(1, 1, SheetText.read(file), TextState.By.OTHER, List.of());
        return new HeldText(file, first, listener);
    }

    /** As it was when it was last looked at. */
    public synchronized TextState state() {
        return state;
    }

    /** Makes edits, and writes them. */
    public Outcome edit(long version, List<Edit> edits) throws IOException {
        return change(version, true, text -> text.edit(edits, false));
    }

    /** What some edits would make of the text; nothing is written. */
    public Outcome tried(long version, List<Edit> edits) throws IOException {
        return change(version, false, text -> text.edit(edits, true));
    }

    /** Takes a text that was typed, and writes it. */
    public Outcome typed(long version, String next) throws IOException {
        return change(version, true, text -> text.typed(next, false));
    }

    /** Takes back the last edit. */
    public Outcome undo(long version) throws IOException {
        return change(version, true, text -> text.undo(false));
    }

    /** Makes the last edit again that was taken back. */
    public Outcome redo(long version) throws IOException {
        return change(version, true, text -> text.redo(false));
    }

    private synchronized Outcome change(long version, boolean writes, Change change) throws IOException {
        look();
        if (version < state.since() || version > state.version()) {
            return new Outcome.Stale(state);
        }
        SheetText before = state.text();
        try {
            EditResult result = change.in(SheetFileEdits.of(before));
            if (result instanceof EditResult.Edited edited
                    && writes
                    && !edited.spans().isEmpty()) {
                become(state.with(edited.text(), TextState.By.PAGE));
            }
            return new Outcome.Done(before, state, result);
        } catch (OutputFault fault) {
            look();
            if (!state.text().equals(before)) {
                return new Outcome.Stale(state);
            }
            return new Outcome.Done(
                    before, state, new EditResult.Refused(List.of(new Complaint(file, 1, 1, fault.getMessage()))));
        }
    }

    /** Looks at the file, and takes what others wrote. */
    public synchronized void look() {
        try {
            SheetText now = SheetText.read(file);
            if (!now.equals(state.text())) {
                become(state.with(now, TextState.By.OTHER));
            } else if (!state.trouble().isEmpty()) {
                become(state.again());
            }
        } catch (IOException unread) {
            if (!state.trouble().equals(List.of(unread.getMessage()))) {
                become(state.unread(unread.getMessage()));
            }
        }
    }

    /** Makes a new state of the same text: files that it names have changed. */
    public synchronized void namedFilesChanged() {
        become(state.again());
    }

    private void become(TextState next) {
        state = next;
        listener.accept(next);
    }
}
