package org.adumbrate.geometry;

import java.util.Locale;
import java.util.Optional;

/**
 * A colour as a screen or a file names it: 8-bit sRGB, encoded.
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 */
public record Srgb(int red, int green, int blue) implements Comparable<Srgb> {
    /** Ink. */
    public static final Srgb BLACK = new Srgb(0, 0, 0);

    /** Paper. */
    public static final Srgb WHITE = new Srgb(255, 255, 255);

    /** @throws IllegalArgumentException if a component is outside 0 to 255 */
    public Srgb {
        Space.require(
                (red | green | blue) >= 0 && red <= 255 && green <= 255 && blue <= 255,
                () -> "a colour component must be 0 to 255");
    }

    /** Reads {@code #rrggbb} or {@code #rgb}, in any case; empty for anything else. */
    public static Optional<Srgb> parse(String text) {
        if (!text.matches("#[0-9a-fA-F]{6}|#[0-9a-fA-F]{3}")) {
            return Optional.empty();
        }
        int digits = Integer.parseInt(text.substring(1), 16);
        if (text.length() == 4) {
            return Optional.of(new Srgb((digits >> 8) * 17, (digits >> 4 & 15) * 17, (digits & 15) * 17));
        }
        return Optional.of(new Srgb(digits >> 16, digits >> 8 & 255, digits & 255));
    }

    /** The largest difference of a component, in levels. */
    public int distanceTo(Srgb other) {
        return Math.max(
                Math.abs(red - other.red), Math.max(Math.abs(green - other.green), Math.abs(blue - other.blue)));
    }

    /** The colour as one integer, {@code 0xrrggbb}. */
    public int rgb() {
        return red << 16 | green << 8 | blue;
    }

    @Override
    public int compareTo(Srgb other) {
        return Integer.compare(rgb(), other.rgb());
    }

    /** As {@code #rrggbb}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "#%06x", rgb());
    }
}
