package org.adumbrate.raster.decode;

/** The bytes with which a format begins. */
final class Magic {
    private static final String ANY = "..";
    private static final int STEP = 3;

    private Magic() {}

    /**
     * Whether a file begins so.
     *
     * @param patterns hexadecimal bytes set apart by blanks, {@code ..} for any; several patterns set apart by {@code " | "}
     * @param head its first bytes
     */
    static boolean matches(String patterns, byte[] head) {
        int from = 0;
        int bar = patterns.indexOf('|');
        while (bar >= 0) {
            if (matches(patterns, from, bar - 1, head)) {
                return true;
            }
            from = bar + 2;
            bar = patterns.indexOf('|', from);
        }
        return matches(patterns, from, patterns.length(), head);
    }

    private static boolean matches(String patterns, int from, int to, byte[] head) {
        for (int at = from, i = 0; at < to; at += STEP, i++) {
            boolean any = patterns.startsWith(ANY, at);
            if (i >= head.length || (!any && Integer.parseInt(patterns, at, at + 2, 16) != (head[i] & 0xff))) {
                return false;
            }
        }
        return true;
    }
}
