package org.adumbrate.prepare.memory;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

/** The digests of files that one run relies on. */
final class DigestsInUse {
    private final Digests digests;
    private final Map<Path, FileStamp> used = new HashMap<>();
    private boolean unreadable;

    DigestsInUse(Digests digests) {
        this.digests = digests;
    }

    /** The digest of a file; of one that cannot be read something, and then {@link #stillTrue} is false. */
    synchronized String of(Path file) {
        FileStamp stamp = FileStamp.of(file);
        used.putIfAbsent(file, stamp);
        try {
            return digests.of(file, stamp);
        } catch (IOException e) {
            // whoever needs the file says what is wrong with it
            unreadable = true;
            return "unreadable";
        }
    }

    /** True if every file that was asked for could be read and is still the same. */
    synchronized boolean stillTrue() {
        return !unreadable
                && used.entrySet().stream()
                        .allMatch(file -> FileStamp.of(file.getKey()).equals(file.getValue()));
    }
}
