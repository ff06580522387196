package org.adumbrate.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Whether names that differ in upper and lower case alone are one name in a folder. The file system is asked by what it
 * already holds, as nothing may be written before it is known.
 */
final class LetterCase {
    /** Names of a folder that are looked at. */
    private static final int MOST = 1_000;

    private LetterCase() {}

    /** Asks the nearest folder that is there and can tell; where none can, names that differ are two. */
    static boolean isIgnoredIn(Path folder) {
        for (Path at = folder; at != null; at = at.getParent()) {
            Optional<Boolean> told = byEntries(at);
            if (told.isEmpty() && at.getParent() != null && Files.isDirectory(at)) {
                told = byName(at.getParent(), at.getFileName().toString());
            }
            if (told.isPresent()) {
                return told.get();
            }
        }
        return false;
    }

    private static Optional<Boolean> byEntries(Path folder) {
        Set<String> names;
        try (Stream<Path> entries = Files.list(folder)) {
            names = entries.limit(MOST)
                    .map(entry -> entry.getFileName().toString())
                    .collect(Collectors.toSet());
        } catch (IOException unreadable) {
            return Optional.empty();
        }
        if (names.stream().anyMatch(name -> !swapped(name).equals(name) && names.contains(swapped(name)))) {
            return Optional.of(false);
        }
        return names.stream()
                .map(name -> byName(folder, name))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<Boolean> byName(Path folder, String name) {
        String other = swapped(name);
        return other.equals(name)
                ? Optional.empty()
                : Optional.of(Files.exists(folder.resolve(other), LinkOption.NOFOLLOW_LINKS));
    }

    private static String swapped(String name) {
        String upper = name.toUpperCase(Locale.ROOT);
        return upper.equals(name) ? name.toLowerCase(Locale.ROOT) : upper;
    }
}
