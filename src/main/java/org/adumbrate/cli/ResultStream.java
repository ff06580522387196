package org.adumbrate.cli;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;

/** Standard output, which remembers that it could not be written: a print writer keeps that to itself. */
final class ResultStream extends FilterOutputStream {
    private IOException failure;

    ResultStream(OutputStream out) {
        super(out);
    }

    @Override
    public void write(int b) throws IOException {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        try {
            out.write(bytes, from, length);
        } catch (IOException e) {
            failure = e;
            throw e;
        }
    }

    /**
     * Tells of results that were lost.
     *
     * @param code how the command ended
     * @param err takes the complaint
     * @return how the program ends: a command whose results were lost was not done
     */
    int end(int code, PrintWriter err) {
        // a reader such as head, that has seen enough and goes, is no failure
        if (failure == null || "Broken pipe".equals(failure.getMessage())) {
            return code;
        }
        err.println("standard output: cannot be written (" + failure.getMessage()
                + "); make room, or send the results elsewhere");
        return code == ExitCode.DONE ? ExitCode.INPUT_OUTPUT : code;
    }
}
