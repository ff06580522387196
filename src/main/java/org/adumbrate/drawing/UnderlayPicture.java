package org.adumbrate.drawing;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import org.adumbrate.fault.InputFault;
import org.adumbrate.fault.OutputFault;

/**
 * A PNG that fills the sheet below the lines of an SVG.
 *
 * @param png the file
 * @param embedded true to put it into the SVG, false to have the SVG refer to it by its path from there
 */
public record UnderlayPicture(Path png, boolean embedded) {
    private static final int PIECE = 3 << 14;

    /** The reference to the picture from another file: relative where there is a way, as a URI. */
    String seenFrom(Path file) {
        Path there = png.toAbsolutePath().normalize();
        try {
            Path way = file.toAbsolutePath().normalize().getParent().relativize(there);
            String path = way.toString().replace(way.getFileSystem().getSeparator(), "/");
            // the prefix keeps a colon from being read as the end of a scheme
            String escaped = new URI(null, null, "./" + path, null).getRawPath();
            return escaped.contains(":") ? escaped : escaped.substring("./".length());
        } catch (IllegalArgumentException | URISyntaxException e) {
            return there.toUri().toString();
        }
    }

    /**
     * Writes the picture as a URI that holds all of it (RFC 2397), piece by piece.
     *
     * @throws InputFault if it cannot be read
     * @throws OutputFault as the output does
     */
    void writeTo(OutputStream out) throws IOException {
        out.write("data:image/png;base64,".getBytes(StandardCharsets.US_ASCII));
        try (InputStream in = Files.newInputStream(png);
                OutputStream encoded = Base64.getEncoder().wrap(new KeptOpen(out))) {
            byte[] piece = new byte[PIECE];
            for (int length = in.readNBytes(piece, 0, PIECE); length > 0; length = in.readNBytes(piece, 0, PIECE)) {
                encoded.write(piece, 0, length);
            }
        } catch (OutputFault e) {
            throw e;
        } catch (IOException e) {
            throw new InputFault(png, "the underlay's picture cannot be read", "build the underlay first", e);
        }
    }

    /** Does not pass on the closing of an encoder. */
    private static final class KeptOpen extends FilterOutputStream {
        KeptOpen(OutputStream out) {
            super(out);
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            out.write(bytes, from, length);
        }

        @Override
        public void close() {
            // whoever opened it closes it
        }
    }
}
