package org.adumbrate.raster.decode;

import com.twelvemonkeys.imageio.plugins.bmp.BMPImageReaderSpi;
import com.twelvemonkeys.imageio.plugins.pnm.PAMImageReaderSpi;
import com.twelvemonkeys.imageio.plugins.pnm.PNMImageReaderSpi;
import java.io.IOException;
import javax.imageio.ImageReader;
import org.apache.commons.imaging.AbstractImageParser;
import org.apache.commons.imaging.ImageInfo;
import org.apache.commons.imaging.bytesource.ByteSource;
import org.apache.commons.imaging.formats.pnm.PnmImageParser;

/** The formats whose pixels are left to an image library altogether. */
enum Plugin {
    /** Rows mostly from the bottom up. */
    BMP,
    /** Portable bitmap, graymap and pixmap (P1 to P6). */
    PNM,
    /** Portable arbitrary map (P7). */
    PAM;

    /** Whether rows always come from the top down. */
    boolean inOrder() {
        return this != BMP;
    }

    /** What the head says. */
    PluginHead head(SourceFile file) throws IOException {
        return switch (this) {
            case BMP -> BmpHead.read(file);
            case PNM, PAM -> PluginHead.of(file, info(file, new PnmImageParser()), 8);
        };
    }

    private ImageInfo info(SourceFile file, AbstractImageParser<?> parser) throws IOException {
        try {
            return parser.getImageInfo(ByteSource.file(file.path().toFile()), null);
        } catch (IOException | RuntimeException e) {
            throw file.damaged("its head cannot be read as " + this, e);
        }
    }

    /** A reader of pixels. */
    ImageReader reader() throws IOException {
        return switch (this) {
            case BMP -> new BMPImageReaderSpi().createReaderInstance(null);
            case PNM -> new PNMImageReaderSpi().createReaderInstance(null);
            case PAM -> new PAMImageReaderSpi().createReaderInstance(null);
        };
    }
}
