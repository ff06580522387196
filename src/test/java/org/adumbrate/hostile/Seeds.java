package org.adumbrate.hostile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;

/** Small sound files of a format, from which the others are made. */
final class Seeds {
    private static final Map<Format, Seeds> KNOWN = new EnumMap<>(Format.class);

    private final List<byte[]> files;

    private Seeds(List<byte[]> files) {
        this.files = files;
    }

    static synchronized Seeds of(Format format) {
        return KNOWN.computeIfAbsent(format, Seeds::read);
    }

    byte[] any(Random random) {
        return files.get(random.nextInt(files.size())).clone();
    }

    List<byte[]> files() {
        return files;
    }

    private static Seeds read(Format format) {
        List<byte[]> files = new ArrayList<>();
        switch (format) {
            case SHEET -> add(files, "/org/adumbrate/sheetfile", "");
            case OUTLINE -> {
                add(files, "seeds/svg", "");
                add(files, "/org/adumbrate/figure/outline", ".svg");
            }
            case TIFF, JPEG, HDR -> {
                add(files, "seeds/" + format.folder(), "");
                add(files, "/org/adumbrate/raster/decode", format.suffix());
            }
            default -> add(files, "seeds/" + format.folder(), "");
        }
        return new Seeds(List.copyOf(files));
    }

    private static void add(List<byte[]> files, String folder, String suffix) {
        String ending = suffix.isEmpty() && folder.endsWith("sheetfile") ? Format.SHEET.suffix() : suffix;
        for (Path file : in(folder)) {
            if (file.toString().endsWith(ending)) {
                files.add(bytes(file));
            }
        }
    }

    /** The files of a resource folder, by name. */
    static List<Path> in(String folder) {
        try (Stream<Path> found = Files.list(folder(folder))) {
            return found.filter(Files::isRegularFile).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path folder(String name) {
        try {
            return Path.of(Seeds.class.getResource(name).toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
