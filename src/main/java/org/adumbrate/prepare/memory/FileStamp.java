package org.adumbrate.prepare.memory;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;

/**
 * By what a changed file is known without reading it.
 *
 * @param length in bytes; -1 if there is no such file
 * @param time of its last change
 */
public record FileStamp(long length, FileTime time) {
    private static final FileStamp MISSING = new FileStamp(-1, FileTime.fromMillis(0));

    /** How a file is now. */
    public static FileStamp of(Path file) {
        try {
            return new FileStamp(Files.size(file), Files.getLastModifiedTime(file));
        } catch (IOException e) {
            return MISSING;
        }
    }
}
