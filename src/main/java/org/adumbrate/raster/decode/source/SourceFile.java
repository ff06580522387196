package org.adumbrate.raster.decode.source;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.PixelSize;

/**
 * The file being read, and the words for its faults.
 *
 * @param path where it lies
 * @param bytes its length
 */
public record SourceFile(Path path, long bytes) {
    /** The longest side accepted, in pixels. */
    public static final int LONGEST_SIDE = 100_000;

    /** The most pixels accepted: an A0 sheet at 800 px an inch. A few hundred bytes can claim more, and take minutes. */
    static final long MOST_PIXELS = 1 << 30;

    private static final String EXPORT_AGAIN = "export it again";

    /**
     * Finds the file that is to be read.
     *
     * @throws InputFault if there is no such file, or nothing in it
     */
    public static SourceFile find(Path path) throws IOException {
        if (Files.notExists(path)) {
            throw new InputFault(path, "does not exist", "check the name");
        }
        if (Files.isDirectory(path)) {
            throw new InputFault(path, "is a folder", "name a raster file in it");
        }
        if (!Files.isReadable(path)) {
            throw new InputFault(path, "may not be read", "check its permissions");
        }
        long bytes = Files.size(path);
        if (bytes == 0) {
            throw new InputFault(path, "is empty", EXPORT_AGAIN);
        }
        return new SourceFile(path, bytes);
    }

    /** For a file that stops short; {@code where} such as {@code "after row 120 of 2200"}. */
    public InputFault endsEarly(String where) {
        return new InputFault(path, "ends early, " + where, "copy or " + EXPORT_AGAIN);
    }

    /** For a file that contradicts itself or its format. */
    public InputFault damaged(String what) {
        return new InputFault(path, "is damaged: " + what, EXPORT_AGAIN);
    }

    /** As above, when a library said so. */
    public InputFault damaged(String what, Throwable cause) {
        return new InputFault(path, "is damaged: " + what, EXPORT_AGAIN, cause);
    }

    /** For a file that may be sound but asks for more time or memory than a pass is worth. */
    public InputFault tooMuch(String what, String remedy) {
        return new InputFault(path, what, remedy);
    }

    /** For a file that may be sound but is of a kind that is not read. */
    public InputFault unsupported(String what) {
        return new InputFault(path, what + " is not read here", "save it as 8 or 16 bit PNG or TIFF");
    }

    /**
     * The size that a file states, once it has been found possible.
     *
     * @throws InputFault if it is not, or is beyond {@link #LONGEST_SIDE} or {@link #MOST_PIXELS}
     */
    public PixelSize checkedSize(long width, long height) throws InputFault {
        String claim = width + " x " + height + " px";
        if (width < 1 || height < 1) {
            throw damaged("states a size of " + claim);
        }
        if (width > LONGEST_SIDE || height > LONGEST_SIDE || width * height > MOST_PIXELS) {
            throw tooMuch(
                    "states a size of " + claim + ", beyond " + LONGEST_SIDE + " px a side or " + MOST_PIXELS
                            + " px in all",
                    "export it smaller");
        }
        return new PixelSize((int) width, (int) height);
    }

    /**
     * Holds a stated size against the bytes there are.
     *
     * @param leastBytes the fewest bytes in which the format can write such a size
     * @throws InputFault if the file is shorter
     */
    public void requireBytes(PixelSize size, long leastBytes) throws InputFault {
        if (bytes < leastBytes) {
            throw damaged("states a size of " + size + ", which its " + bytes + " bytes cannot hold");
        }
    }
}
