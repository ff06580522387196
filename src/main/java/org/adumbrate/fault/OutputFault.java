package org.adumbrate.fault;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

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

    /**
     * @param files the outputs at fault
     * @param what what is wrong, without the files' names
     * @param remedy what to do about it
     */
    public OutputFault(String files, String what, String remedy) {
        super(files + ": " + what + "; " + remedy);
    }

    private OutputFault(String lines) {
        super(lines);
    }

    /** Several at once; the message has a line for each. */
    public static OutputFault all(List<OutputFault> faults) {
        return new OutputFault(faults.stream().map(Throwable::getMessage).collect(Collectors.joining("\n")));
    }
}
