package org.adumbrate.proof;

import java.nio.file.Path;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.open.Edition;
import org.adumbrate.prepare.open.OpenSheet;
import org.adumbrate.sheetfile.edit.SheetText;
import org.adumbrate.sheetfile.yaml.YamlText;

/**
 * The newest edition of a sheet for one purpose. Two purposes have an instance each, over one memory: what is made for one is found by
 * the other, and neither ends the other's work.
 */
final class Editions {
    private final OpenSheet sheet;
    private Edition newest;

    Editions(Path file, Memory memory) {
        this.sheet = OpenSheet.of(file, memory);
    }

    /** The edition of a text: the newest, if it is of that text; else a new one, for which work on the newest ends. */
    synchronized Edition of(SheetText text) {
        String unmarked = YamlText.unmarked(text.text());
        if (newest == null || !newest.text().equals(unmarked)) {
            newest = sheet.edition(unmarked);
        }
        return newest;
    }

    /** A new edition even of the same text: files that it names have changed. */
    synchronized Edition anew(SheetText text) {
        newest = null;
        return of(text);
    }

    /** Lets all work end at its next step. */
    synchronized void end() {
        newest = sheet.edition("");
    }
}
