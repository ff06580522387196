package org.adumbrate.linework.svg.css;

import java.util.Locale;
import java.util.Optional;
import org.htmlunit.cssparser.dom.Property;
import org.htmlunit.cssparser.parser.media.MediaQuery;

/**
 * What media queries are asked of (Media Queries 4, 4 to 6): a page in colour that is looked at and not touched.
 *
 * @param width in pixels of CSS
 * @param height in pixels of CSS
 */
public record CssPage(double width, double height) {
    private static final double DPI = 96;

    /** Where a query holds. */
    CssMedia media(MediaQuery query) {
        boolean features = true;
        for (Property feature : query.getProperties()) {
            String value = feature.getValue() == null ? "" : feature.getValue().getCssText();
            features &= holds(feature.getName().toLowerCase(Locale.ROOT), value.toLowerCase(Locale.ROOT));
        }
        String type = query.getMedia() == null ? "all" : query.getMedia().toLowerCase(Locale.ROOT);
        boolean all = type.isEmpty() || type.equals("all");
        boolean screen = features && (all || type.equals("screen"));
        boolean print = features && (all || type.equals("print"));
        return query.isNot() ? new CssMedia(!screen, !print) : new CssMedia(screen, print);
    }

    private boolean holds(String feature, String value) {
        String name = feature.replaceFirst("^(min-|max-)?(device-)?", "");
        return switch (name) {
            case "width" -> compares(feature, width, pixels(value));
            case "height" -> compares(feature, height, pixels(value));
            case "aspect-ratio" -> compares(feature, width / height, ratio(value));
            case "resolution" -> compares(feature, DPI, dotsPerInch(value));
            case "color" -> compares(feature, 8, number(value));
            case "monochrome", "color-index", "grid" -> compares(feature, 0, number(value));
            case "orientation" -> value.equals(height >= width ? "portrait" : "landscape");
            case "color-gamut" -> value.isEmpty() || value.equals("srgb");
            case "prefers-color-scheme" -> value.isEmpty() || value.equals("light");
            case "prefers-contrast", "prefers-reduced-motion", "prefers-reduced-data", "forced-colors" ->
                value.equals(name.equals("forced-colors") ? "none" : "no-preference");
            case "hover", "any-hover", "pointer", "any-pointer", "update", "scripting" -> value.equals("none");
            default -> false;
        };
    }

    /** A feature without a value asks whether it is there at all (2.4.2). */
    private static boolean compares(String feature, double has, Optional<Double> asked) {
        if (asked.isEmpty()) {
            return !feature.startsWith("m") && has != 0;
        }
        if (feature.startsWith("min-")) {
            return has >= asked.get();
        }
        return feature.startsWith("max-") ? has <= asked.get() : has == asked.get();
    }

    private static Optional<Double> pixels(String value) {
        return CssLength.parse(value).map(length -> length.user(CssLength.Basis.NONE));
    }

    private static Optional<Double> number(String value) {
        return CssLength.parse(value).filter(length -> length.unit().isEmpty()).map(CssLength::value);
    }

    private static Optional<Double> ratio(String value) {
        CssScanner scanner = new CssScanner(value);
        double across = scanner.number();
        boolean isFraction = scanner.hasMore() && scanner.symbol() == '/';
        double down = isFraction ? scanner.number() : 1;
        return Double.isNaN(across / down) ? Optional.empty() : Optional.of(across / down);
    }

    private static Optional<Double> dotsPerInch(String value) {
        return CssLength.parse(value).flatMap(length -> switch (length.unit()) {
            case "dpi" -> Optional.of(length.value());
            case "dpcm" -> Optional.of(length.value() * 2.54);
            case "dppx", "x" -> Optional.of(length.value() * DPI);
            default -> Optional.empty();
        });
    }
}
