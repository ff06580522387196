package org.adumbrate.linework.read;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A folder for the files of a container of properties, which JUnit's own temporary folders do not serve. */
final class PropertyFolder {
    private PropertyFolder() {}

    static Path make(String name) throws IOException {
        return Files.createTempDirectory(name);
    }

    /** Removes it with the files in it. */
    static void remove(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }
}
