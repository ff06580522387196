package org.adumbrate.report.page;

import java.io.IOException;
import java.io.InputStream;
import org.adumbrate.geometry.PixelSize;

/**
 * A picture that the report takes in.
 *
 * @param png the PNG, which is read while the report is written
 * @param size its size
 */
public record Picture(Png png, PixelSize size) {
    /** Where the bytes of a PNG come from. */
    @FunctionalInterface
    public interface Png {
        /** Reads it from its beginning. */
        InputStream open() throws IOException;
    }
}
