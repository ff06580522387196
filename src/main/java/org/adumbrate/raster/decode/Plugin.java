package org.adumbrate.raster.decode;

import com.twelvemonkeys.imageio.plugins.bmp.BMPImageReaderSpi;
import com.twelvemonkeys.imageio.plugins.hdr.HDRImageReadParam;
import com.twelvemonkeys.imageio.plugins.hdr.HDRImageReaderSpi;
import com.twelvemonkeys.imageio.plugins.hdr.tonemap.NullToneMapper;
import com.twelvemonkeys.imageio.plugins.pnm.PAMImageReaderSpi;
import com.twelvemonkeys.imageio.plugins.pnm.PNMImageReaderSpi;
import java.io.IOException;
import java.util.OptionalDouble;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import org.apache.commons.imaging.AbstractImageParser;
import org.apache.commons.imaging.ImageInfo;
import org.apache.commons.imaging.bytesource.ByteSource;
import org.apache.commons.imaging.formats.bmp.BmpImageParser;
import org.apache.commons.imaging.formats.pnm.PnmImageParser;
import org.apache.commons.imaging.formats.rgbe.RgbeImageParser;

/** The formats that libraries read whole: one tells what is in the head, another unpacks the pixels. */
enum Plugin {
    /** Rows mostly from the bottom up. */
    BMP,
    /** Portable bitmap, graymap and pixmap (P1 to P6). */
    PNM,
    /** Portable arbitrary map (P7). */
    PAM,
    /** Radiance RGBE. */
    HDR;

    /** Whether rows always come from the top down. */
    boolean inOrder() {
        return this != BMP;
    }

    /** What the head says. */
    ImageInfo info(SourceFile file) throws IOException {
        AbstractImageParser<?> parser =
                switch (this) {
                    case BMP -> new BmpImageParser();
                    case PNM, PAM -> new PnmImageParser();
                    case HDR -> new RgbeImageParser();
                };
        return parser.getImageInfo(ByteSource.file(file.path().toFile()), null);
    }

    /** The stated resolution; the other formats have none, though the library makes one up. */
    OptionalDouble dpi(ImageInfo info) {
        return this == BMP
                ? Resolution.dpi(info.getPhysicalWidthDpi(), info.getPhysicalHeightDpi(), 1)
                : OptionalDouble.empty();
    }

    /** A reader of pixels. */
    ImageReader reader() throws IOException {
        return switch (this) {
            case BMP -> new BMPImageReaderSpi().createReaderInstance(null);
            case PNM -> new PNMImageReaderSpi().createReaderInstance(null);
            case PAM -> new PAMImageReaderSpi().createReaderInstance(null);
            case HDR -> new HDRImageReaderSpi().createReaderInstance(null);
        };
    }

    /** Parameters under which the reader leaves values as they are. */
    ImageReadParam parameters(ImageReader reader) {
        ImageReadParam parameters = reader.getDefaultReadParam();
        if (parameters instanceof HDRImageReadParam radiance) {
            radiance.setToneMapper(new NullToneMapper());
        }
        return parameters;
    }

    /** For how many pixels a byte of a file may stand, at most. */
    int mostPixelsPerByte() {
        return switch (this) {
            // A run of 255 in two bytes.
            case BMP -> 128;
            case PNM, PAM -> 8;
            // The older runs have no bound; the least is four bytes a row.
            case HDR -> SourceFile.LONGEST_SIDE;
        };
    }
}
