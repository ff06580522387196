package org.adumbrate.fault;

import java.io.IOException;
import java.nio.file.Path;

/** An output that cannot be written; what stood at its place before still does. */
public final class OutputFault extends IOException {
    private static final long serialVersionUID = 1L;

    /**
     * @param file the output at fault
     * @param what what is wrong, without the file's name
     * @param remedy what to do about it
     */
    public OutputFault(Path file, String what, String remedy, Throwable cause) {
        super(Shown.line(file + ": " + what + "; " + remedy), cause);
    }
}
