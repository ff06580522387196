package org.adumbrate.editing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import org.adumbrate.output.FileClaims;
import org.adumbrate.sheetfile.complaint.Complaint;
import org.adumbrate.sheetfile.complaint.Place;
import org.adumbrate.sheetfile.edit.Edit;
import org.adumbrate.sheetfile.edit.EditResult;
import org.adumbrate.sheetfile.edit.SheetText;
import org.adumbrate.sheetfile.edit.SheetValue;

/** Edits a sheet file on the disk, and takes edits back. */
public final class SheetFileEdits {
    private final Path file;
    private final SheetText text;

    private SheetFileEdits(Path file, SheetText text) {
        this.file = file;
        this.text = text;
    }

    /**
     * Opens a sheet file.
     *
     * @throws IOException if it cannot be read, or is no YAML
     */
    public static SheetFileEdits of(Path file) throws IOException {
        SheetText text = SheetText.read(file);
        text.values(); // complains of what is no YAML
        return new SheetFileEdits(file, text);
    }

    /**
     * Opens a text that was read from its file, be it YAML or not. Where the file says something else by the time of an edit,
     * nothing is written.
     */
    public static SheetFileEdits of(SheetText text) {
        return new SheetFileEdits(text.file(), text);
    }

    /** The text as it was when it was opened. */
    public SheetText text() {
        return text;
    }

    /**
     * What nothing but the edit itself may write: the sheet file, what undoes its edits, and the files that it names.
     *
     * @throws IOException if it is no YAML
     */
    public FileClaims claims() throws IOException {
        FileClaims claims =
                new FileClaims().reads(file).spares(HistoryFile.of(text).file(), "what undoes edits");
        for (SheetValue value : text.values()) {
            if (value.span().isPresent() && !value.value().isBlank()) {
                named(value).ifPresent(path -> {
                    if (value.allowed().type().equals("output")) {
                        claims.spares(path, value.key());
                    } else if (Files.isRegularFile(path)) {
                        claims.reads(path, value.key());
                    }
                });
            }
        }
        return claims;
    }

    /** The file that a value names, if it is no word of another kind. */
    private Optional<Path> named(SheetValue value) {
        try {
            return Optional.of(file.resolveSibling(value.value().strip()));
        } catch (InvalidPathException noFile) {
            return Optional.empty();
        }
    }

    /**
     * Makes edits.
     *
     * @param isDry true to write nothing
     * @throws IOException if the file cannot be written; it is then as it was
     */
    public EditResult edit(List<Edit> edits, boolean isDry) throws IOException {
        return made(text.edited(edits), isDry);
    }

    /**
     * Takes a text that somebody typed, as one edit; refused where it is no YAML, or gives complaints that the text as it stands
     * does not. Otherwise as {@link #edit}.
     */
    public EditResult typed(String next, boolean isDry) throws IOException {
        return made(TypedText.edit(text, new SheetText(file, next)), isDry);
    }

    private EditResult made(EditResult result, boolean isDry) throws IOException {
        if (result instanceof EditResult.Edited edited
                && !isDry
                && !edited.spans().isEmpty()) {
            PastEdit past = past(edited);
            write(edited.text(), history -> history.with(past));
        }
        return result;
    }

    /** The key of the edit that {@link #undo} would take back. */
    public Optional<String> undoable() {
        return key(history().done());
    }

    /** The key of the edit that {@link #redo} would make again. */
    public Optional<String> redoable() {
        return key(history().undone());
    }

    private static Optional<String> key(List<PastEdit> edits) {
        return edits.isEmpty()
                ? Optional.empty()
                : edits.get(edits.size() - 1).told().stream().findFirst().map(PastEdit.ToldChange::key);
    }

    /** Takes back the last edit that was not taken back; as {@link #edit}. */
    public EditResult undo(boolean isDry) throws IOException {
        List<PastEdit> done = history().done();
        return done.isEmpty()
                ? refused("there is no edit to undo; what builds and editors change is not kept")
                : back(done.get(done.size() - 1), isDry, History::undoing, "undone");
    }

    /** Makes the last edit again that was taken back; as {@link #edit}. */
    public EditResult redo(boolean isDry) throws IOException {
        List<PastEdit> undone = history().undone();
        return undone.isEmpty()
                ? refused("there is no undone edit to make again; a new edit forgets those that were undone")
                : back(undone.get(undone.size() - 1), isDry, History::redoing, "made again");
    }

    private EditResult back(PastEdit past, boolean isDry, BiFunction<History, PastEdit, History> step, String word)
            throws IOException {
        String now = text.text();
        String what = "the edit of '" + past.told().get(0).key() + "' cannot be " + word
                + ": the sheet file was changed since";
        Optional<List<EditResult.Span>> found =
                Swap.back(now, past.swaps(), past.after().equals(Digest.of(now)));
        if (found.isEmpty()) {
            return refused(what + " at that place; change it by hand");
        }
        List<EditResult.Span> spans = found.get();
        SheetText next = new SheetText(file, Swap.without(now, past.swaps(), spans));
        List<Complaint> fresh = next.complaintsBeside(text);
        if (!fresh.isEmpty()) {
            Complaint first = fresh.get(0);
            return refused(what + ", and line " + first.line() + " would become wrong: " + first.text());
        }
        PastEdit way = past.reversed();
        if (!isDry) {
            PastEdit settled =
                    new PastEdit(way.told(), Digest.of(now), Digest.of(next.text()), Swap.of(now, next.text(), spans));
            write(next, history -> step.apply(history, settled));
        }
        Place place = next.place(spans.isEmpty() ? 0 : spans.get(0).newFrom());
        List<EditResult.Change> changes = way.told().stream()
                .map(told -> new EditResult.Change(told.key(), present(told.before()), present(told.after()), place))
                .toList();
        return new EditResult.Edited(next, changes, spans);
    }

    private PastEdit past(EditResult.Edited edited) {
        List<PastEdit.ToldChange> told = edited.changes().stream()
                .map(change -> new PastEdit.ToldChange(
                        change.key(), change.before().orElse(""), change.after().orElse("")))
                .toList();
        String next = edited.text().text();
        return new PastEdit(told, Digest.of(text.text()), Digest.of(next), Swap.of(text.text(), next, edited.spans()));
    }

    private void write(SheetText next, UnaryOperator<History> step) throws IOException {
        HistoryFile before = HistoryFile.of(text);
        HistoryFile after = HistoryFile.of(next);
        History history = step.apply(history(before));
        before.write(history);
        if (!after.equals(before)) {
            after.write(history); // the edit moved the outputs; the way back is found from there
        }
        SheetFileWriter.write(file, text.text(), next.text());
    }

    private History history() {
        return history(HistoryFile.of(text));
    }

    private History history(HistoryFile kept) {
        return kept.read().at(Digest.of(text.text()));
    }

    private static Optional<String> present(String text) {
        return Optional.of(text).filter(told -> !told.isEmpty());
    }

    private EditResult refused(String reason) {
        return new EditResult.Refused(List.of(new Complaint(file, 1, 1, reason)));
    }
}
