package org.adumbrate.raster.decode.netpbm;

import java.io.BufferedInputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import org.adumbrate.fault.InputFault;
import org.adumbrate.raster.decode.source.SourceFile;

/** The bytes of a portable map, with the words and numbers of its head; buffered. */
final class PnmInput implements Closeable {
    /** What a head may take, comments included: a thousand times what writers put there. */
    static final int LONGEST_HEAD = 1 << 16;

    private static final long LARGEST_NUMBER = Integer.MAX_VALUE;

    private final SourceFile file;
    private final InputStream in;
    private boolean inHead = true;
    private int position;
    private int last;

    PnmInput(SourceFile file) throws IOException {
        this.file = file;
        this.in = new BufferedInputStream(Files.newInputStream(file.path()), 1 << 16);
    }

    /** From here on nothing is counted: the head ends where the pixels begin. */
    int endHead() {
        inHead = false;
        return position;
    }

    /** The next byte, or -1 at the end. */
    int read() throws IOException {
        last = in.read();
        if (inHead && ++position > LONGEST_HEAD) {
            throw file.tooMuch(
                    "has a head longer than " + LONGEST_HEAD + " bytes",
                    "remove the comments before its pixels, or save it as PNG");
        }
        return last;
    }

    /** Whether the byte read last was the end of the file. */
    boolean ended() {
        return last < 0;
    }

    /** Passes over bytes. */
    void skip(long count) throws IOException {
        in.skipNBytes(count);
    }

    /** Fills an array; false if the file ends before. */
    boolean fill(byte[] bytes, int length) throws IOException {
        return in.readNBytes(bytes, 0, length) == length;
    }

    /** The next byte that is not within a comment, which reaches from a number sign to the end of its line. */
    private int readUncommented() throws IOException {
        int value = read();
        if (value == '#') {
            while (value != '\n' && value != '\r' && value >= 0) {
                value = read();
            }
        }
        return value;
    }

    /** The next byte that is neither blank nor within a comment; -1 at the end. */
    int readVisible() throws IOException {
        int value = readUncommented();
        while (isBlank(value)) {
            value = readUncommented();
        }
        return value;
    }

    /**
     * The next number in decimal digits; the one byte after it is taken as well.
     *
     * @return -1 if what comes next is none, or is beyond 2147483647
     */
    long number() throws IOException {
        int value = readVisible();
        if (value < '0' || value > '9') {
            return -1;
        }
        long number = 0;
        while (value >= '0' && value <= '9') {
            number = 10 * number + value - '0';
            if (number > LARGEST_NUMBER) {
                return -1;
            }
            value = readUncommented();
        }
        return isBlank(value) || value < 0 ? number : -1;
    }

    /** The rest of a line, without its end; null at the end of the file. */
    String line() throws IOException {
        StringBuilder line = new StringBuilder();
        int value = read();
        if (value < 0) {
            return null;
        }
        while (value >= 0 && value != '\n') {
            line.append((char) value);
            value = read();
        }
        return line.toString();
    }

    private static boolean isBlank(int value) {
        return value == ' ' || (value >= '\t' && value <= '\r');
    }

    /** For a head that makes no sense. */
    InputFault badHead(String format, String why) {
        return file.damaged("its head cannot be read as " + format + " (" + why + ")");
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
