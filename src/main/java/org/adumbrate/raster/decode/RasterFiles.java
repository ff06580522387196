package org.adumbrate.raster.decode;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.adumbrate.fault.InputFault;
import org.adumbrate.raster.RasterReader;
import org.adumbrate.raster.decode.source.SourceFile;

/** Opens raster files of any format that is read here. */
public final class RasterFiles {
    /** Enough to find the root element of an SVG or a web page behind its preamble. */
    private static final int HEAD = 512;

    private RasterFiles() {}

    /**
     * Opens a raster file and reads its head; which format it is, its content decides and not its name. The cost does
     * not depend on the number of pixels.
     *
     * @param file a JPEG, PNG, TIFF, BMP, PNM or Radiance HDR file
     * @throws InputFault if it is missing, empty, of another kind, damaged in its head, of a kind of compression or
     *     sample that is not read, or states a size that cannot be
     * @throws IOException if it cannot be read
     */
    public static RasterReader open(Path file) throws IOException {
        SourceFile source = SourceFile.find(file);
        byte[] head;
        try (InputStream in = Files.newInputStream(file)) {
            head = in.readNBytes(HEAD);
        }
        for (FileKind kind : FileKind.values()) {
            if (kind.matches(head)) {
                return kind.open(source);
            }
        }
        throw new InputFault(
                file,
                "looks like " + Lookalike.describe(head) + ", not like a raster that is read here",
                "name a JPEG, PNG, TIFF, BMP, PNM or HDR file");
    }
}
