package org.adumbrate.proof.http;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;

/**
 * A word that nobody can guess.
 *
 * @param text letters that need no escaping in an address or a cookie
 */
public record Secret(String text) {
    private static final int BITS = 256;
    private static final SecureRandom RANDOM = new SecureRandom();

    /** A new one, of 256 random bits. */
    public static Secret random() {
        byte[] bytes = new byte[BITS / Byte.SIZE];
        RANDOM.nextBytes(bytes);
        return new Secret(Base64.getUrlEncoder().withoutPadding().encodeToString(bytes));
    }

    /** Whether a word is this one. How long that takes does not tell how much of it is right. */
    boolean is(String word) {
        return MessageDigest.isEqual(text.getBytes(StandardCharsets.UTF_8), word.getBytes(StandardCharsets.UTF_8));
    }
}
