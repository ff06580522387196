package org.adumbrate.raster.decode.jpeg;

import java.io.IOException;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.spi.IIORegistry;
import javax.imageio.spi.ImageReaderSpi;

/**
 * The platform's own JPEG reader, by name: the one that gives ink samples as they are, and behind a head without doubts
 * (see {@link JpegHeader#head}) all that is needed for the others.
 */
final class PlatformJpeg {
    private static final String NAME = "com.sun.imageio.plugins.jpeg.JPEGImageReaderSpi";
    private static final IIORegistry REGISTRY = platformRegistry();

    private PlatformJpeg() {}

    static synchronized ImageReader reader() throws IOException {
        Iterator<ImageReaderSpi> spis = REGISTRY.getServiceProviders(ImageReaderSpi.class, false);
        while (spis.hasNext()) {
            ImageReaderSpi spi = spis.next();
            if (spi.getClass().getName().equals(NAME)) {
                return spi.createReaderInstance();
            }
        }
        throw new IOException("this Java lacks a JPEG reader");
    }

    /**
     * The registry of readers, which at its birth loads every plug-in that the thread's class loader sees, at a cost greater
     * than that of decoding a picture; so it is shown the platform only. One that somebody else has woken before is taken as
     * it is.
     */
    private static IIORegistry platformRegistry() {
        Thread thread = Thread.currentThread();
        ClassLoader loader = thread.getContextClassLoader();
        thread.setContextClassLoader(ClassLoader.getPlatformClassLoader());
        try {
            IIORegistry registry = IIORegistry.getDefaultInstance();
            // Only here, for this wakes the registry too.
            ImageIO.setUseCache(false);
            return registry;
        } finally {
            thread.setContextClassLoader(loader);
        }
    }
}
