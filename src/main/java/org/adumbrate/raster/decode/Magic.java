package org.adumbrate.raster.decode;

import java.util.regex.Pattern;

/** The bytes with which a format begins. */
final class Magic {
    private static final Pattern OR = Pattern.compile("\\|");
    private static final String ANY = "..";

    private Magic() {}

    /**
     * Whether a file begins so.
     *
     * @param patterns hexadecimal bytes set apart by blanks, {@code ..} for any; several patterns set apart by {@code |}
     * @param head its first bytes
     */
    static boolean matches(String patterns, byte[] head) {
        return OR.splitAsStream(patterns).anyMatch(pattern -> matchesOne(pattern.strip(), head));
    }

    private static boolean matchesOne(String pattern, byte[] head) {
        int bytes = (pattern.length() + 1) / 3;
        for (int i = 0; i < bytes; i++) {
            String digits = pattern.substring(3 * i, 3 * i + 2);
            boolean same = i < head.length && (digits.equals(ANY) || Integer.parseInt(digits, 16) == (head[i] & 0xff));
            if (!same) {
                return false;
            }
        }
        return true;
    }
}
