package org.adumbrate.sheetfile.complaint;

import java.nio.file.Path;
import org.adumbrate.fault.Shown;

/**
 * One thing wrong with a sheet file.
 *
 * @param file the sheet file, as it was named to the program
 * @param line where, counted from 1
 * @param column where in the line, counted from 1
 * @param text what was found, what was expected, and the nearest known word where one is near; one line
 */
public record Complaint(Path file, int line, int column, String text) {
    /** What the text quotes may be shown. */
    public Complaint {
        text = Shown.line(text);
    }

    /** As {@code file:line:column: text}. */
    @Override
    public String toString() {
        return Shown.line(file.toString()) + ":" + line + ":" + column + ": " + text;
    }
}
