package org.adumbrate.fault;

import java.io.IOException;
import java.nio.file.Path;

/**
 * An input that cannot be used: missing, damaged, of an unknown kind, or empty of what it should hold. Its message is one line
 * whatever the file holds: control characters, by which a file could command a terminal, are written out.
 */
public final class InputFault extends IOException {
    private static final long serialVersionUID = 1L;

    private final transient Path file;

    /**
     * @param file the input at fault
     * @param what what is wrong with it, without the file's name, such as {@code "ends after row 120 of 2200"}
     * @param remedy what to do about it, such as {@code "export it again"}
     */
    public InputFault(Path file, String what, String remedy) {
        super(line(file, what, remedy));
        this.file = file;
    }

    /** As above, with the failure that lies behind it. */
    public InputFault(Path file, String what, String remedy, Throwable cause) {
        super(line(file, what, remedy), cause);
        this.file = file;
    }

    private static String line(Path file, String what, String remedy) {
        return Shown.line(file + ": " + what + "; " + remedy);
    }

    /** The input at fault. */
    public Path file() {
        return file;
    }
}
