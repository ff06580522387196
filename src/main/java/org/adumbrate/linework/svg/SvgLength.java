package org.adumbrate.linework.svg;

import java.util.Locale;
import java.util.Optional;
import org.adumbrate.geometry.Length;

/**
 * A length with its unit (CSS Values and Units Level 3, 5 and 6).
 *
 * @param value the number
 * @param unit the unit in lower case; empty for user units
 */
record SvgLength(double value, String unit) {
    /** Pixels of CSS in an inch; the unit of an SVG without a viewBox. */
    static final double PX_PER_INCH = 96;

    /** Millimetres in a pixel of CSS. */
    static final double MM_PER_PX = Length.MM_PER_INCH / PX_PER_INCH;

    private static final double FONT_SIZE_PX = 16;

    /** Reads a length; empty if it is none. */
    static Optional<SvgLength> parse(String text) {
        SvgScanner scanner = new SvgScanner(text);
        return read(scanner).filter(length -> !scanner.hasMore());
    }

    /** Reads the next length of several; empty if none follows. */
    static Optional<SvgLength> read(SvgScanner scanner) {
        SvgLength length = new SvgLength(scanner.number(), scanner.word().toLowerCase(Locale.ROOT));
        return Double.isNaN(length.user(0)) ? Optional.empty() : Optional.of(length);
    }

    /** True if it depends on something outside itself. */
    boolean isPercentage() {
        return unit.equals("%");
    }

    /** In user units, which count as pixels. */
    double user(double wholePercentage) {
        return value * px(unit, wholePercentage);
    }

    /** In mm; a length without a unit counts as pixels. */
    double mm() {
        return unit.equals("mm") ? value : value * px(unit, 0) * MM_PER_PX;
    }

    private static double px(String unit, double wholePercentage) {
        return switch (unit) {
            case "", "px" -> 1;
            case "mm" -> PX_PER_INCH / Length.MM_PER_INCH;
            case "cm" -> 10 * PX_PER_INCH / Length.MM_PER_INCH;
            case "q" -> PX_PER_INCH / Length.MM_PER_INCH / 4;
            case "in" -> PX_PER_INCH;
            case "pt" -> PX_PER_INCH / 72;
            case "pc" -> PX_PER_INCH / 6;
            case "em", "rem" -> FONT_SIZE_PX;
            case "ex" -> FONT_SIZE_PX / 2;
            case "%" -> wholePercentage / 100;
            default -> Double.NaN;
        };
    }
}
