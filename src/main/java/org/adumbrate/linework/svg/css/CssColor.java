package org.adumbrate.linework.svg.css;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.adumbrate.geometry.Srgb;

/**
 * A colour that may be seen through (CSS Color 4).
 *
 * @param srgb the colour itself
 * @param alpha how much of it is seen, 0 to 1
 */
public record CssColor(Srgb srgb, double alpha) {
    /** Black through which nothing is seen. */
    public static final CssColor BLACK = new CssColor(Srgb.BLACK, 1);

    private static final CssColor TRANSPARENT = new CssColor(Srgb.BLACK, 0);

    /**
     * Reads a colour: {@code #rgb} and its longer forms (5.2), {@code rgb()} (5.1), {@code hsl()} (7), {@code hwb()} (8), a name
     * (6.1) or {@code transparent}. What SVG 1.1 lets follow it, {@code icc-color()}, is passed over.
     *
     * @return empty if it is none of these
     */
    public static Optional<CssColor> parse(String text) {
        String color = text.strip().toLowerCase(Locale.ROOT);
        int profile = color.indexOf(" icc-color(");
        if (profile > 0) {
            return parse(color.substring(0, profile));
        }
        if (color.startsWith("#")) {
            return hex(color);
        }
        int open = color.indexOf('(');
        if (open > 0 && color.endsWith(")")) {
            return function(color.substring(0, open), color.substring(open + 1, color.length() - 1));
        }
        return color.equals("transparent")
                ? Optional.of(TRANSPARENT)
                : CssColorNames.color(color).map(srgb -> new CssColor(srgb, 1));
    }

    private static Optional<CssColor> hex(String color) {
        int digits = color.length() - 1;
        if (digits != 4 && digits != 8) {
            return Srgb.parse(color).map(srgb -> new CssColor(srgb, 1));
        }
        int whole = digits == 4 ? 15 : 255;
        String last = color.substring(1 + digits * 3 / 4);
        if (!last.matches("[0-9a-f]+")) {
            return Optional.empty();
        }
        double alpha = Integer.parseInt(last, 16) / (double) whole;
        return Srgb.parse(color.substring(0, 1 + digits * 3 / 4)).map(srgb -> new CssColor(srgb, alpha));
    }

    private static Optional<CssColor> function(String name, String arguments) {
        List<CssLength> parts = new ArrayList<>();
        CssScanner scanner = new CssScanner(arguments.replace('/', ','));
        while (scanner.hasMore()) {
            Optional<CssLength> part = CssLength.read(scanner);
            boolean none = part.isEmpty() && scanner.word().equals("none");
            if ((part.isEmpty() && !none) || parts.size() == 4) {
                return Optional.empty();
            }
            parts.add(part.orElse(new CssLength(0, "")));
        }
        if (parts.size() < 3) {
            return Optional.empty();
        }
        double alpha = parts.size() < 4 ? 1 : parts.get(3).user(CssLength.Basis.SHARE);
        OptionalDouble hue = CssAngle.degrees(parts.get(0));
        Optional<Srgb> srgb =
                switch (name) {
                    case "rgb", "rgba" -> rgb(parts);
                    case "hsl", "hsla" -> hue.isPresent() ? hsl(hue.getAsDouble(), parts) : Optional.empty();
                    case "hwb" -> hue.isPresent() ? hwb(hue.getAsDouble(), parts) : Optional.empty();
                    default -> Optional.empty();
                };
        return Double.isNaN(alpha)
                ? Optional.empty()
                : srgb.map(color -> new CssColor(color, Math.max(0, Math.min(1, alpha))));
    }

    private static Optional<Srgb> rgb(List<CssLength> parts) {
        double[] levels = new double[3];
        for (int k = 0; k < 3; k++) {
            CssLength part = parts.get(k);
            if (!part.unit().isEmpty() && !part.isPercentage()) {
                return Optional.empty();
            }
            levels[k] = part.isPercentage() ? part.value() / 100 : part.value() / 255;
        }
        return Optional.of(srgb(levels));
    }

    /** The sample code of CSS Color 4, 7.1. */
    private static Optional<Srgb> hsl(double hue, List<CssLength> parts) {
        double saturation = Math.max(0, Math.min(1, parts.get(1).value() / 100));
        double lightness = Math.max(0, Math.min(1, parts.get(2).value() / 100));
        return Optional.of(srgb(hue(hue, saturation, lightness)));
    }

    private static double[] hue(double hue, double saturation, double lightness) {
        double turned = (hue % 360 + 360) % 360;
        double reach = saturation * Math.min(lightness, 1 - lightness);
        double[] levels = new double[3];
        int[] offsets = {0, 8, 4};
        for (int k = 0; k < 3; k++) {
            double step = (offsets[k] + turned / 30) % 12;
            levels[k] = lightness - reach * Math.max(-1, Math.min(Math.min(step - 3, 9 - step), 1));
        }
        return levels;
    }

    /** The sample code of CSS Color 4, 8.1. */
    private static Optional<Srgb> hwb(double hue, List<CssLength> parts) {
        double white = Math.max(0, parts.get(1).value() / 100);
        double black = Math.max(0, parts.get(2).value() / 100);
        double[] levels = hue(hue, 1, 0.5);
        for (int k = 0; k < 3; k++) {
            levels[k] = white + black >= 1 ? white / (white + black) : levels[k] * (1 - white - black) + white;
        }
        return Optional.of(srgb(levels));
    }

    private static Srgb srgb(double[] levels) {
        int[] rounded = new int[3];
        for (int k = 0; k < 3; k++) {
            rounded[k] = (int) Math.round(255 * Math.max(0, Math.min(1, levels[k])));
        }
        return new Srgb(rounded[0], rounded[1], rounded[2]);
    }

    /** Whether nothing of it is seen. */
    public boolean isUnseen() {
        return alpha == 0;
    }

    /** Whether nothing is seen through it. */
    public boolean isSolid() {
        return alpha >= 1;
    }
}
