package org.adumbrate.raster;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.adumbrate.geometry.PixelSize;

/**
 * What a raster file says of itself, known before any pixel is decoded.
 *
 * @param file the file
 * @param format its format in a word, such as {@code JPEG}
 * @param stored its size as stored
 * @param orientation how it is to be turned for viewing
 * @param type the type of its samples
 * @param light how its samples become light
 * @param dpi its stated resolution, if it states one
 * @param inOrder true when {@link RasterReader#decode} delivers every row once, whole and from the top, so that a window
 *     of rows is enough; false when pieces come in another order or several times, the last one counting
 * @param notes what was passed over or guessed in reading it, without the file's name, for the person to know; mostly none
 */
public record RasterInfo(
        Path file,
        String format,
        PixelSize stored,
        Orientation orientation,
        SampleType type,
        LightDecoder light,
        OptionalDouble dpi,
        boolean inOrder,
        List<String> notes) {

    /** Copies the notes. */
    public RasterInfo {
        notes = List.copyOf(notes);
    }

    /** One with no notes. */
    public RasterInfo(
            Path file,
            String format,
            PixelSize stored,
            Orientation orientation,
            SampleType type,
            LightDecoder light,
            OptionalDouble dpi,
            boolean inOrder) {
        this(file, format, stored, orientation, type, light, dpi, inOrder, List.of());
    }

    /** The size as seen, after turning. */
    public PixelSize size() {
        return orientation.seen(stored);
    }

    /** The memory that all its samples take, in bytes. */
    public long sampleBytes() {
        return stored.count() * light.storedChannels() * type.bytes();
    }
}
