package org.adumbrate.fault;

import java.io.IOException;
import java.nio.file.Path;

/** An input that cannot be used: missing, damaged, of an unknown kind, or empty of what it should hold. */
public final class InputFault extends IOException {
    private static final long serialVersionUID = 1L;

    private final transient Path file;

    /**
     * @param file the input at fault
     * @param what what is wrong with it, without the file's name, such as {@code "ends after row 120 of 2200"}
     * @param remedy what to do about it, such as {@code "export it again"}
     */
    public InputFault(Path file, String what, String remedy) {
        super(file + ": " + what + "; " + remedy);
        this.file = file;
    }

    /** As above, with the failure that lies behind it. */
    public InputFault(Path file, String what, String remedy, Throwable cause) {
        super(file + ": " + what + "; " + remedy, cause);
        this.file = file;
    }

    /** The input at fault. */
    public Path file() {
        return file;
    }
}
