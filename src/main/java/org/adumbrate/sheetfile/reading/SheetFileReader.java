package org.adumbrate.sheetfile.reading;

import java.nio.file.Path;
import java.util.Optional;
import org.adumbrate.fault.InputFault;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.form.Cursor;
import org.adumbrate.sheetfile.form.Form;
import org.adumbrate.sheetfile.form.Forms;
import org.adumbrate.sheetfile.form.Notes;
import org.adumbrate.sheetfile.yaml.YamlText;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads sheet files. */
public final class SheetFileReader {
    private static final Form SHEET = Forms.of(Sheet.class);

    private SheetFileReader() {}

    /**
     * Reads a sheet file strictly: every key known and given once, every value of its kind, in its unit and in range,
     * every input file in its place. Paths are taken from the folder of the sheet file. No input file is opened.
     *
     * @param file the sheet file, UTF-8, at most 1 MiB
     * @throws SheetFileFault if anything in it cannot be followed; carries all complaints. Where the text is no YAML at
     *     all, that is the only one
     * @throws InputFault if there is no such file, or it cannot be read, or it is too large to be a sheet file
     */
    public static SheetFile read(Path file) throws SheetFileFault, InputFault {
        return read(file, YamlText.read(file));
    }

    /** As above, of a text that was read already. */
    public static SheetFile read(Path file, String text) throws SheetFileFault {
        Node node = YamlText.compose(file, text);
        Notes notes = new Notes(file);
        Optional<?> sheet = SHEET.read(node, Cursor.top(notes));
        new CrossChecks(notes).run();
        if (sheet.isEmpty() || !notes.complaints().isEmpty()) {
            throw new SheetFileFault(notes.complaints());
        }
        return new SheetFile(file, (Sheet) sheet.get(), notes.places());
    }
}
