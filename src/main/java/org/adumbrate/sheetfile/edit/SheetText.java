package org.adumbrate.sheetfile.edit;

import java.nio.file.Path;
import java.util.List;
import org.adumbrate.fault.InputFault;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.yaml.YamlText;

/**
 * The text of a sheet file, every character of it.
 *
 * @param file the sheet file, from whose folder paths are taken; it is not opened
 * @param text as it stands in the file, with the mark that it may begin with
 */
public record SheetText(Path file, String text) {
    /**
     * The text as it stands in a file.
     *
     * @throws InputFault if there is no such file, or it cannot be read, or it is too large to be a sheet file
     * @throws SheetFileFault if it is no UTF-8 text
     */
    public static SheetText read(Path file) throws InputFault, SheetFileFault {
        return new SheetText(file, YamlText.whole(file));
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
        return Values.of(this);
    }
}
