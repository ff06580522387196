package org.adumbrate.hostile;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.GZIPInputStream;

/**
 * A file of the corpus.
 *
 * @param format what it pretends to be
 * @param stored where it lies, packed once for each {@code .gz} at the end of its name
 */
record CorpusFile(Format format, Path stored) {
    private static final String PACKED = ".gz";

    /** All of a format, by name. */
    static List<CorpusFile> of(Format format) {
        return Seeds.in("corpus/" + format.folder()).stream()
                .map(path -> new CorpusFile(format, path))
                .toList();
    }

    /** Its name when it is unpacked. */
    String name() {
        String name = stored.getFileName().toString();
        return name.substring(0, name.length() - PACKED.length() * layers());
    }

    /** Lays it into a folder. */
    Path unpackedInto(Path folder) throws IOException {
        Path file = folder.resolve(name());
        try (InputStream in = unpacking(new BufferedInputStream(Files.newInputStream(stored)))) {
            Files.copy(in, file);
        }
        return file;
    }

    private InputStream unpacking(InputStream packed) throws IOException {
        InputStream in = packed;
        for (int k = layers(); k > 0; k--) {
            in = new GZIPInputStream(in);
        }
        return in;
    }

    private int layers() {
        String name = stored.getFileName().toString();
        int layers = 0;
        while (name.substring(0, name.length() - PACKED.length() * layers).endsWith(PACKED)) {
            layers++;
        }
        return layers;
    }
}
