package org.adumbrate.raster.decode.radiance;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.decode.source.SourceFile;

/**
 * The head of a Radiance picture (G. Ward, <em>Radiance File Formats</em>): lines of text up to an empty one, then a line
 * with the size.
 *
 * @param size its size
 * @param length of the head in bytes
 */
record HdrHeader(PixelSize size, int length) {
    private static final int LONGEST = 1 << 16;
    private static final Pattern SIZE = Pattern.compile("-Y (\\d{1,9}) \\+X (\\d{1,9})");

    static HdrHeader read(SourceFile file) throws IOException {
        String text;
        try (InputStream in = Files.newInputStream(file.path())) {
            text = new String(in.readNBytes(LONGEST), StandardCharsets.ISO_8859_1);
        }
        int sizeAt = text.indexOf("\n\n") + 2;
        int end = text.indexOf('\n', sizeAt);
        if (sizeAt < 2 || end < 0) {
            throw file.endsEarly("in its head");
        }
        if (text.substring(0, sizeAt).contains("FORMAT=32-bit_rle_xyze")) {
            throw file.unsupported("HDR in XYZ");
        }
        String stated = text.substring(sizeAt, Math.min(end, sizeAt + 60)).strip();
        Matcher matcher = SIZE.matcher(stated);
        if (!matcher.matches()) {
            throw file.unsupported("HDR with rows in the order \"" + stated + "\"");
        }
        PixelSize size = file.checkedSize(Long.parseLong(matcher.group(2)), Long.parseLong(matcher.group(1)));
        // Runs of the older kind have no bound, but a row takes at least four bytes.
        file.requireBytes(size, end + 4L * size.height());
        return new HdrHeader(size, end + 1);
    }
}
