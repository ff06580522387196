package org.adumbrate.linework.svg.css;

import java.util.Locale;
import java.util.Optional;
import org.adumbrate.geometry.Length;

/**
 * A length with its unit (CSS Values and Units Level 4, 6 and 7), a percentage or a plain number.
 *
 * @param value the number
 * @param unit the unit in lower case; empty for user units
 */
public record CssLength(double value, String unit) {
    /** Pixels of CSS in an inch; the unit of an SVG without a viewBox. */
    public static final double PX_PER_INCH = 96;

    /** Millimetres in a pixel of CSS. */
    public static final double MM_PER_PX = Length.MM_PER_INCH / PX_PER_INCH;

    /**
     * What lengths are relative to, in pixels.
     *
     * @param whole what 100 % stands for
     * @param font the size of the font
     * @param rootFont that of the outermost element
     */
    public record Basis(double whole, double font, double rootFont) {
        /** The size of the font of whoever does not state one, {@code medium}. */
        public static final double MEDIUM = 16;

        /** Nothing that a length could be in percent of, and a font of the usual size. */
        public static final Basis NONE = new Basis(0, MEDIUM, MEDIUM);

        /** Shares: 100 % is 1. */
        public static final Basis SHARE = new Basis(1, MEDIUM, MEDIUM);
    }

    /** Reads a length; empty if it is none. */
    public static Optional<CssLength> parse(String text) {
        CssScanner scanner = new CssScanner(text);
        return read(scanner).filter(length -> !scanner.hasMore());
    }

    /** Reads the next length of several; empty if none follows. */
    public static Optional<CssLength> read(CssScanner scanner) {
        CssLength length = new CssLength(scanner.number(), scanner.word().toLowerCase(Locale.ROOT));
        boolean known = length.isAngleOrResolution() || !Double.isNaN(length.user(Basis.NONE));
        return known && !Double.isNaN(length.value) ? Optional.of(length) : Optional.empty();
    }

    /** True if it depends on something outside itself. */
    public boolean isPercentage() {
        return unit.equals("%");
    }

    /** In user units, which count as pixels; not a number if it is no length. */
    public double user(Basis basis) {
        return value * px(basis);
    }

    /** In mm; a length without a unit counts as pixels. */
    public double mm() {
        return unit.equals("mm") ? value : value * px(Basis.NONE) * MM_PER_PX;
    }

    private boolean isAngleOrResolution() {
        return switch (unit) {
            case "deg", "grad", "rad", "turn", "dpi", "dpcm", "dppx", "x" -> true;
            default -> false;
        };
    }

    private double px(Basis basis) {
        return switch (unit) {
            case "", "px" -> 1;
            case "mm" -> PX_PER_INCH / Length.MM_PER_INCH;
            case "cm" -> 10 * PX_PER_INCH / Length.MM_PER_INCH;
            case "q" -> PX_PER_INCH / Length.MM_PER_INCH / 4;
            case "in" -> PX_PER_INCH;
            case "pt" -> PX_PER_INCH / 72;
            case "pc" -> PX_PER_INCH / 6;
            // an ideograph is a square of the font's size where the font does not say (CSS Values 4, 6.1.1)
            case "em", "ic" -> basis.font;
            case "rem" -> basis.rootFont;
            case "ex", "ch" -> basis.font / 2;
            case "%" -> basis.whole / 100;
            default -> Double.NaN;
        };
    }
}
