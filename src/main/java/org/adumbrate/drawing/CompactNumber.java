package org.adumbrate.drawing;

/** Writes decimal numbers in as few characters as PDF and SVG allow: {@code 12.5}, {@code -.125}, {@code 0}. */
final class CompactNumber {
    private static final long[] POWERS = {1, 10, 100, 1000, 10_000, 100_000, 1_000_000};

    private CompactNumber() {}

    /** Appends a number, rounded to so many decimals, 0 to 6. */
    static StringBuilder append(StringBuilder text, double value, int decimals) {
        return append(text, Math.round(value * POWERS[decimals]), decimals);
    }

    /** Appends a number given in units of its last decimal. */
    static StringBuilder append(StringBuilder text, long scaled, int decimals) {
        long power = POWERS[decimals];
        if (scaled == 0) {
            return text.append('0');
        }
        if (scaled < 0) {
            text.append('-');
        }
        long size = Math.abs(scaled);
        if (size >= power) {
            text.append(size / power);
        }
        long fraction = size % power;
        if (fraction > 0) {
            text.append('.');
            for (long place = power / 10; fraction > 0; place /= 10) {
                text.append((char) ('0' + fraction / place));
                fraction %= place;
            }
        }
        return text;
    }

    /** A number, rounded to so many decimals. */
    static String of(double value, int decimals) {
        return append(new StringBuilder(), value, decimals).toString();
    }
}
