package org.adumbrate.raster.decode;

import com.twelvemonkeys.imageio.plugins.jpeg.JPEGImageReaderSpi;
import java.io.IOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.spi.IIORegistry;
import javax.imageio.spi.ImageReaderSpi;

/**
 * The image library's readers, named one by one. Looking for them on the class path would load every plug-in that lies
 * there, and would leave to chance which of two serves.
 */
final class Plugins {
    private static final String PLATFORM_JPEG = "com.sun.imageio.plugins.jpeg.JPEGImageReaderSpi";

    private Plugins() {}

    /** The platform's own JPEG reader: the only one that gives ink samples as they are. */
    static ImageReader platformJpeg() throws IOException {
        for (var spis = registry().getServiceProviders(ImageReaderSpi.class, false); spis.hasNext(); ) {
            ImageReaderSpi spi = spis.next();
            if (spi.getClass().getName().equals(PLATFORM_JPEG)) {
                return spi.createReaderInstance();
            }
        }
        throw new IOException("this Java lacks a JPEG reader");
    }

    /** A JPEG reader for grey and colour. */
    static ImageReader jpeg() throws IOException {
        JPEGImageReaderSpi spi = new JPEGImageReaderSpi();
        spi.onRegistration(registry(), ImageReaderSpi.class);
        return spi.createReaderInstance();
    }

    private static IIORegistry registry() {
        ImageIO.setUseCache(false);
        return IIORegistry.getDefaultInstance();
    }
}
