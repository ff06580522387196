package org.adumbrate.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A copy of a demo sheet with its exports, to build in without touching the tree. */
public final class DemoCopy {
    private DemoCopy() {}

    /** Copies {@code passes/kiln-yard} below a folder, and returns the copy. */
    public static Path kilnYard(Path folder) throws IOException {
        Path source = Path.of("passes", "kiln-yard");
        Path copy = Files.createDirectories(folder.resolve("passes").resolve("kiln-yard"));
        List<Path> files;
        try (Stream<Path> all = Files.list(source)) {
            files = all.filter(Files::isRegularFile).toList();
        }
        for (Path file : files) {
            Files.copy(file, copy.resolve(file.getFileName()));
        }
        return copy;
    }
}
