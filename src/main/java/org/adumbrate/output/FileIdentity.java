package org.adumbrate.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.text.Normalizer;
import java.util.Objects;
import java.util.function.Predicate;

/**
 * Which file a path names, whether or not it is there yet: links are followed, and two names of one file (hard links) are
 * told where the file system gives files a key.
 */
final class FileIdentity {
    private final Path path;
    private final Path real;
    private final Object key;

    private FileIdentity(Path path, Path real, Object key) {
        this.path = path;
        this.real = real;
        this.key = key;
    }

    static FileIdentity of(Path path) {
        Path real;
        try {
            real = RealPath.of(path);
        } catch (IOException circular) {
            // it can neither be read nor written, which whoever tries tells
            real = path.toAbsolutePath().normalize();
        }
        return new FileIdentity(path, real, key(real));
    }

    private static Object key(Path real) {
        try {
            return Files.readAttributes(real, BasicFileAttributes.class).fileKey();
        } catch (IOException missing) {
            return null;
        }
    }

    boolean isSame(FileIdentity other) {
        return isSame(other, LetterCase::isIgnoredIn);
    }

    /** @param ignoresCase tells whether names in a folder that differ in case alone are one */
    boolean isSame(FileIdentity other, Predicate<Path> ignoresCase) {
        if (real.equals(other.real) || (key != null && Objects.equals(key, other.key))) {
            return true;
        }
        if (key == null && other.key == null && Files.exists(real) && Files.exists(other.real)) {
            return isSameByTheSystem(other);
        }
        return isAlike(other) && ignoresCase.test(commonFolder(other));
    }

    /** Where files have no key, as on Windows. */
    private boolean isSameByTheSystem(FileIdentity other) {
        try {
            return Files.isSameFile(real, other.real);
        } catch (IOException unknown) {
            return path.equals(other.path);
        }
    }

    /** The same letters, whatever their case and however accents are written. */
    private boolean isAlike(FileIdentity other) {
        return plain(real).equalsIgnoreCase(plain(other.real));
    }

    private static String plain(Path path) {
        return Normalizer.normalize(path.toString(), Normalizer.Form.NFC);
    }

    private Path commonFolder(FileIdentity other) {
        Path folder = real.getRoot();
        for (int k = 0; k < Math.min(real.getNameCount(), other.real.getNameCount()) - 1; k++) {
            if (!real.getName(k).equals(other.real.getName(k))) {
                break;
            }
            folder = folder.resolve(real.getName(k));
        }
        return folder;
    }

    /** True if the other could only lie in this one if this were a folder. */
    boolean isFolderOf(FileIdentity other) {
        return other.real.startsWith(real) && !other.real.equals(real);
    }
}
