package org.adumbrate.raster.decode;

import java.io.IOException;
import java.util.OptionalDouble;
import org.adumbrate.geometry.PixelSize;
import org.apache.commons.imaging.ImageInfo;

/**
 * What the head of a file says that a library is to unpack.
 *
 * @param size its size, found possible
 * @param dpi its resolution, if stated
 */
record PluginHead(PixelSize size, OptionalDouble dpi) {
    /** One found by the library; the resolutions that it gives for these formats are made up. */
    static PluginHead of(SourceFile file, ImageInfo info, long mostPixelsPerByte) throws IOException {
        PixelSize size = file.checkedSize(info.getWidth(), info.getHeight());
        file.requireBytes(size, size.count() / mostPixelsPerByte);
        return new PluginHead(size, OptionalDouble.empty());
    }
}
