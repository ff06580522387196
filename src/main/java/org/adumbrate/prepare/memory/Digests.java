package org.adumbrate.prepare.memory;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;

/**
 * SHA-256 (FIPS 180-4) of files. A file is not read again while its length and time say that it is the same; one that was
 * written a moment ago is, as a clock may be too coarse to tell two writings apart.
 */
public final class Digests {
    private static final long MOMENT_MS = 2_000;
    private static final int BUFFER = 1 << 16;

    private record Known(FileStamp stamp, String digest, boolean settled) {}

    private final Map<Path, Known> known = new HashMap<>();

    /** The digests that a run uses. */
    synchronized DigestsInUse begin() {
        known.values().removeIf(file -> !file.settled());
        return new DigestsInUse(this);
    }

    /**
     * The digest of a file.
     *
     * @param stamp the file's, taken before
     * @throws IOException if it cannot be read
     */
    synchronized String of(Path file, FileStamp stamp) throws IOException {
        Known before = known.get(file);
        if (before != null && before.stamp().equals(stamp)) {
            return before.digest();
        }
        String digest = read(file);
        boolean settled = stamp.time().toMillis() + MOMENT_MS < System.currentTimeMillis();
        known.put(file, new Known(stamp, digest, settled));
        return digest;
    }

    private static String read(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file);
                DigestInputStream digesting = new DigestInputStream(in, sha256())) {
            byte[] buffer = new byte[BUFFER];
            while (digesting.read(buffer) >= 0) {
                // reading is all that is needed
            }
            return HexFormat.of().formatHex(digesting.getMessageDigest().digest());
        }
    }

    /** An empty digest. */
    public static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
