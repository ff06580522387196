package org.adumbrate.delivery;

import java.nio.file.Path;
import java.util.OptionalInt;

/**
 * A picture as it is to be written.
 *
 * @param file TIFF or PNG, told by its ending
 * @param bits 8 or 16 for a sample
 * @param level deflate level 1 to 9; the program's own choice if absent
 * @param dithered whether 8-bit samples are dithered
 * @param channels 1 or 3; as few as show what is on it truly if absent
 */
public record PictureRequest(Path file, int bits, OptionalInt level, boolean dithered, OptionalInt channels) {
    /** Eight bits, dithered, everything else the program's own choice. */
    public static PictureRequest plain(Path file) {
        return new PictureRequest(file, 8, OptionalInt.empty(), true, OptionalInt.empty());
    }
}
