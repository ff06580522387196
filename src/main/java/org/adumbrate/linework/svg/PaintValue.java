package org.adumbrate.linework.svg;

import java.util.Locale;
import java.util.Optional;
import org.adumbrate.geometry.Srgb;

/**
 * What an area or a stroke is painted with (SVG 1.1, 11.2).
 *
 * @param kind what kind of paint it is
 * @param color its colour, black if it has none of its own
 * @param solid whether nothing is seen through the colour
 */
record PaintValue(Kind kind, Srgb color, boolean solid) {
    /** No paint at all. */
    static final PaintValue NONE = new PaintValue(Kind.NONE, Srgb.BLACK, /* solid= */ false);

    /** The kinds of paint. */
    enum Kind {
        /** Nothing is painted. */
        NONE,
        /** One colour. */
        COLOR,
        /** The colour that the property {@code color} names. */
        CURRENT,
        /** A gradient or a pattern. */
        SERVER
    }

    /** Reads a paint; empty if it is none, and then CSS ignores the whole declaration. */
    static Optional<PaintValue> parse(String text) {
        String paint = text.strip().toLowerCase(Locale.ROOT);
        if (paint.equals("none") || paint.equals("transparent")) {
            return Optional.of(NONE);
        }
        if (paint.equals("currentcolor")) {
            return Optional.of(new PaintValue(Kind.CURRENT, Srgb.BLACK, /* solid= */ true));
        }
        if (paint.startsWith("url(") || paint.startsWith("context-")) {
            return Optional.of(new PaintValue(Kind.SERVER, Srgb.BLACK, /* solid= */ false));
        }
        return color(paint).map(color -> new PaintValue(Kind.COLOR, color, isSolid(paint)));
    }

    /** Reads a colour: {@code #rgb}, {@code #rrggbb}, {@code rgb(...)} or a name. How solid it is, is not told. */
    static Optional<Srgb> color(String text) {
        String color = text.strip().toLowerCase(Locale.ROOT);
        if (color.startsWith("#")) {
            return switch (color.length()) {
                case 5 -> Srgb.parse(color.substring(0, 4));
                case 9 -> Srgb.parse(color.substring(0, 7));
                default -> Srgb.parse(color);
            };
        }
        if (color.startsWith("rgb")) {
            return components(color.substring(color.indexOf('(') + 1));
        }
        int end = color.indexOf(' ');
        return SvgColorNames.color(end < 0 ? color : color.substring(0, end));
    }

    /** Whether a colour says of itself that nothing is seen through it, as most do by saying nothing (CSS Color 4, 4 and 5). */
    static boolean isSolid(String text) {
        String color = text.strip().toLowerCase(Locale.ROOT);
        if (color.startsWith("#")) {
            return color.length() == 5 ? color.endsWith("f") : color.length() != 9 || color.endsWith("ff");
        }
        int values = color.indexOf('(');
        if (values < 0) {
            return !color.equals("transparent");
        }
        String[] parts = color.substring(values + 1).replace(")", "").split("[,/\\s]+");
        return parts.length < 4
                || SvgLength.parse(parts[3]).map(alpha -> alpha.user(1) >= 1).orElse(true);
    }

    private static Optional<Srgb> components(String text) {
        SvgScanner scanner = new SvgScanner(text);
        int[] levels = new int[3];
        for (int k = 0; k < 3; k++) {
            double number = scanner.number();
            if (Double.isNaN(number)) {
                return Optional.empty();
            }
            double level = scanner.word().equals("%") ? number * 255 / 100 : number;
            levels[k] = (int) Math.round(Math.max(0, Math.min(255, level)));
        }
        return Optional.of(new Srgb(levels[0], levels[1], levels[2]));
    }
}
