package org.adumbrate.output;

import java.io.IOException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where a path leads when every link on the way is followed, whether or not anything stands there yet. */
final class RealPath {
    /** As many as Linux follows: path_resolution(7). */
    private static final int MOST_LINKS = 40;

    private RealPath() {}

    /**
     * Follows the links of a path, those that lead nowhere too.
     *
     * @throws FileSystemLoopException if links lead round in a circle
     * @throws IOException if a link cannot be read
     */
    static Path of(Path file) throws IOException {
        return followed(file.toAbsolutePath(), MOST_LINKS);
    }

    private static Path followed(Path file, int links) throws IOException {
        if (Files.exists(file)) {
            return file.toRealPath();
        }
        Path parent = file.getParent();
        if (parent == null) {
            return file;
        }
        Path folder = followed(parent, links);
        String name = file.getFileName().toString();
        if (name.equals(".")) {
            return folder;
        }
        if (name.equals("..")) {
            return folder.getParent() == null ? folder : folder.getParent();
        }
        Path here = folder.resolve(name);
        if (!Files.isSymbolicLink(here)) {
            return here;
        }
        if (links == 0) {
            throw new FileSystemLoopException(file.toString());
        }
        return followed(folder.resolve(Files.readSymbolicLink(here)), links - 1);
    }
}
