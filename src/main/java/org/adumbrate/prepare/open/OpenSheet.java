package org.adumbrate.prepare.open;

import java.nio.file.Path;
import org.adumbrate.prepare.memory.Memory;

/**
 * A sheet held open. Every text of the sheet file gives an {@link Edition} of it; what a change of the text does not touch is the same
 * object in both. Safe for use by several threads.
 */
public final class OpenSheet {
    private final Path file;
    private final Memory memory;
    private Edition newest;

    private OpenSheet(Path file, Memory memory) {
        this.file = file;
        this.memory = memory;
    }

    /**
     * Holds a sheet open; nothing is read yet.
     *
     * @param file the sheet file, from whose folder paths are taken
     * @param memory remembers what editions are made of; closing it is left to the caller
     */
    public static OpenSheet of(Path file, Memory memory) {
        return new OpenSheet(file, memory);
    }

    /** The sheet file. */
    public Path file() {
        return file;
    }

    /**
     * The sheet by a text. What is still being made of the edition before ends at its next step, within some milliseconds, and
     * nobody waits for it; but a part that both need is made on, once.
     *
     * @param text of the sheet file, without the mark that it may begin with
     */
    public synchronized Edition edition(String text) {
        if (newest != null) {
            newest.supersede();
        }
        newest = new Edition(file, text, memory, newest == null);
        return newest;
    }
}
