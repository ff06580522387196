package org.adumbrate.build;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.security.DigestInputStream;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import org.adumbrate.build.kept.Sha256;

/**
 * SHA-256 (FIPS 180-4) of files. A file is not read again while its length and time say that it is the same; one that was
 * written a moment ago is, as a clock may be too coarse to tell two writings apart.
 */
final class Digests {
    private static final long MOMENT_MS = 2_000;

    private static final int BUFFER = 1 << 16;

    private record Known(FileStamp stamp, String digest, boolean settled) {}

    private final Map<Path, Known> known = new HashMap<>();
    private final Map<Path, FileStamp> used = new HashMap<>();
    private boolean unreadable;

    /** Begins a build. */
    synchronized void begin() {
        used.clear();
        unreadable = false;
        known.values().removeIf(file -> !file.settled());
    }

    /** The digest of a file; of one that cannot be read something, and then {@link #stillTrue} is false. */
    synchronized String of(Path file) {
        FileStamp stamp = FileStamp.of(file);
        Known before = known.get(file);
        used.putIfAbsent(file, stamp);
        if (before != null && before.stamp().equals(stamp)) {
            return before.digest();
        }
        try {
            String digest = read(file);
            boolean settled = stamp.time().toMillis() + MOMENT_MS < System.currentTimeMillis();
            known.put(file, new Known(stamp, digest, settled));
            return digest;
        } catch (IOException e) {
            // whoever needs the file tells what is wrong with it
            unreadable = true;
            return "unreadable";
        }
    }

    /** True if every file that was asked for since the beginning could be read and is still the same. */
    synchronized boolean stillTrue() {
        return !unreadable
                && used.entrySet().stream()
                        .allMatch(file -> FileStamp.of(file.getKey()).equals(file.getValue()));
    }

    private static String read(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file);
                DigestInputStream digesting = new DigestInputStream(in, Sha256.begin())) {
            byte[] buffer = new byte[BUFFER];
            while (digesting.read(buffer) >= 0) {
                // reading is all that is needed
            }
            return HexFormat.of().formatHex(digesting.getMessageDigest().digest());
        }
    }

    /**
     * By what a changed file is known without reading it.
     *
     * @param length in bytes; -1 if there is no such file
     * @param time of its last change
     */
    record FileStamp(long length, FileTime time) {
        private static final FileStamp MISSING = new FileStamp(-1, FileTime.fromMillis(0));

        static FileStamp of(Path file) {
            try {
                return new FileStamp(Files.size(file), Files.getLastModifiedTime(file));
            } catch (IOException e) {
                return MISSING;
            }
        }
    }
}
