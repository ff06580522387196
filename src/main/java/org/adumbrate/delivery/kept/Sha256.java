package org.adumbrate.delivery.kept;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** SHA-256 (FIPS 180-4). */
public final class Sha256 {
    /** The bytes of a digest. */
    static final int BYTES = 32;

    private Sha256() {}

    /** Begins a digest. */
    public static MessageDigest begin() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java machine has SHA-256", e);
        }
    }

    /** The digest of some bytes, and of others from some byte to the end, as if they were one row. */
    static byte[] of(byte[] first, byte[] bytes, int from) {
        MessageDigest digest = begin();
        digest.update(first);
        digest.update(bytes, from, bytes.length - from);
        return digest.digest();
    }

    /** The digest of some bytes. */
    static byte[] of(byte[] bytes) {
        return begin().digest(bytes);
    }
}
