package org.adumbrate.sheetfile.edit;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.adumbrate.fault.InputFault;
import org.adumbrate.sheetfile.complaint.Complaint;
import org.adumbrate.sheetfile.complaint.Place;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.form.Form;
import org.adumbrate.sheetfile.form.Steps;
import org.adumbrate.sheetfile.reading.SheetFileReader;
import org.adumbrate.sheetfile.yaml.YamlText;

/** The text of a sheet file, every character of it. Never changed; two are equal if both file and text are. */
public final class SheetText {
    private static final Set<String> LISTS = Set.of("row", "list", "frame");

    private final Path file;
    private final String text;

    /** Held once they were asked for: each edit asks several times for those of the text before and after it. */
    private volatile List<SheetValue> values;

    /**
     * A text.
     *
     * @param file the sheet file, from whose folder paths are taken; it is not opened
     * @param text as it stands in the file, with the mark that it may begin with
     */
    public SheetText(Path file, String text) {
        this.file = file;
        this.text = text;
    }

    /**
     * The text as it stands in a file.
     *
     * @throws InputFault if there is no such file, or it cannot be read, or it is too large to be a sheet file
     * @throws SheetFileFault if it is no UTF-8 text
     */
    public static SheetText read(Path file) throws InputFault, SheetFileFault {
        return new SheetText(file, YamlText.whole(file));
    }

    /** The sheet file, which need not say this. */
    public Path file() {
        return file;
    }

    /** As it stands in the file, with the mark that it may begin with. */
    public String text() {
        return text;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SheetText same && file.equals(same.file) && text.equals(same.text);
    }

    @Override
    public int hashCode() {
        return 31 * file.hashCode() + text.hashCode();
    }

    @Override
    public String toString() {
        return file + ", " + text.length() + " characters";
    }

    /** The text with some edits made, one after the other, or why none of them was. */
    public EditResult edited(List<Edit> edits) {
        return Revision.of(this, edits);
    }

    /** As above, of one or several. */
    public EditResult edited(Edit... edits) {
        return edited(List.of(edits));
    }

    /**
     * All values that stand in the text, and those that hold or may be written without standing there.
     *
     * @throws SheetFileFault if the text is no YAML
     */
    public List<SheetValue> values() throws SheetFileFault {
        List<SheetValue> all = values;
        if (all == null) {
            all = List.copyOf(Values.of(this));
            values = all;
        }
        return all;
    }

    /** What is wrong with the text; nothing where it reads well. */
    public List<Complaint> complaints() {
        try {
            SheetFileReader.read(file, YamlText.unmarked(text));
            return List.of();
        } catch (SheetFileFault e) {
            return e.complaints();
        }
    }

    /** Those complaints that another text does not give, whatever their places. */
    public List<Complaint> complaintsBeside(SheetText other) {
        List<Complaint> found = complaints();
        if (found.isEmpty()) {
            return found;
        }
        List<String> known = other.complaints().stream().map(Complaint::text).toList();
        return found.stream()
                .filter(complaint -> !known.contains(complaint.text()))
                .toList();
    }

    /**
     * A value for a key from words that were typed one by one: {@code 212 188} is a point, {@code A3 landscape} a size.
     *
     * @param key as for {@link Edit}; need not be a key at all
     * @param words at least one
     */
    public String value(String key, List<String> words) {
        boolean isList = words.size() > 1
                && words.get(0).indexOf('[') < 0
                && words.get(0).indexOf('{') < 0
                && Steps.of(key)
                        .flatMap(SheetText::type)
                        .filter(LISTS::contains)
                        .isPresent();
        return isList
                ? words.stream().map(word -> Inscription.key(word, true)).collect(Collectors.joining(", ", "[", "]"))
                : String.join(" ", words);
    }

    private static Optional<String> type(List<String> steps) {
        Optional<Form> form = Optional.of(Revision.SHEET);
        for (String step : steps) {
            form = form.flatMap(holder -> holder.inner(step));
        }
        return form.map(found -> found.allowed().type());
    }

    /** Line and column of a char, counted from 0 in the whole text. */
    public Place place(int at) {
        return Revision.placeIn(text, at);
    }

    /** The first file to be made that the text names; nothing where it names none. */
    public Optional<Path> firstOutput() {
        try {
            return values().stream()
                    .filter(value -> value.span().isPresent()
                            && value.allowed().type().equals("output")
                            && !value.value().isBlank())
                    .findFirst()
                    .map(value -> file.resolveSibling(value.value().strip()));
        } catch (SheetFileFault | InvalidPathException e) {
            return Optional.empty();
        }
    }
}
