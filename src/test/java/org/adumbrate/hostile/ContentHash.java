package org.adumbrate.hostile;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Names files by their content, so that the same one is kept once. */
final class ContentHash {
    private static final int DIGITS = 12;

    private ContentHash() {}

    /** The first digits of the SHA-256. */
    static String of(byte[] content) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(content);
            return HexFormat.of().formatHex(digest).substring(0, DIGITS);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
