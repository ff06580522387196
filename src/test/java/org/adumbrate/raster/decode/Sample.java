package org.adumbrate.raster.decode;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.Objects;

/** The sample files that lie beside the tests; a README there says how each was made. */
public final class Sample {
    private Sample() {}

    public static Path file(String name) {
        try {
            return Path.of(
                    Objects.requireNonNull(Sample.class.getResource(name), name).toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    public static byte[] bytes(String name) {
        try (InputStream in = Objects.requireNonNull(Sample.class.getResourceAsStream(name), name)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
