package org.adumbrate.registration;

import java.util.Locale;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetSize;

/**
 * What the size of a pass alone says: whether its ratio is the sheet's, as nearly as whole pixels allow, and if not, what may
 * lie behind it.
 *
 * @param fit how the two ratios compare
 * @param message one line in plain words, with the numbers
 */
public record RatioCheck(Comparison fit, String message) {
    /** Pixels that a side may be off before rounding no longer explains it: once for each side that was rounded. */
    private static final double ROUNDED_OFF = 1.5;

    /** How the ratio of a pass compares with the sheet's. */
    public enum Comparison {
        /** The nearest whole pixels to the sheet's ratio. */
        SAME,
        /** A row or column too many or too few: rounded the other way. */
        ROUNDED,
        /** Relatively wider than the sheet. */
        WIDER,
        /** Relatively taller than the sheet. */
        TALLER
    }

    /** Compares a pass with its sheet. */
    public static RatioCheck of(PixelSize pass, SheetSize sheet) {
        double rows = pass.width() / sheet.ratio();
        double columns = pass.height() * sheet.ratio();
        boolean nearest = pass.height() == Math.round(rows) || pass.width() == Math.round(columns);
        boolean near = Math.abs(pass.height() - rows) < ROUNDED_OFF || Math.abs(pass.width() - columns) < ROUNDED_OFF;
        Comparison fit = nearest
                ? Comparison.SAME
                : near ? Comparison.ROUNDED : pass.height() < rows ? Comparison.WIDER : Comparison.TALLER;
        return new RatioCheck(fit, message(fit, pass, sheet, rows, columns));
    }

    /** True if the pass can fill the sheet as it is. */
    public boolean fills() {
        return fit == Comparison.SAME || fit == Comparison.ROUNDED;
    }

    private static String message(Comparison fit, PixelSize pass, SheetSize sheet, double rows, double columns) {
        String ratios = String.format(
                Locale.ROOT, "%s has ratio %.4f, the sheet of %s has %.4f", pass, pass.ratio(), sheet, sheet.ratio());
        return switch (fit) {
            case SAME -> ratios + ": the same, to the nearest pixel";
            case ROUNDED ->
                String.format(Locale.ROOT, "%s: the same but for rounding (%.1f rows would fit exactly)", ratios, rows);
            case WIDER ->
                String.format(
                        Locale.ROOT,
                        "%s: %.1f rows are missing, so it was cropped above or below, has bars at the sides, or was stretched"
                                + " by %.1f %% in width",
                        ratios,
                        rows - pass.height(),
                        100 * (pass.width() / columns - 1));
            case TALLER ->
                String.format(
                        Locale.ROOT,
                        "%s: %.1f columns are missing, so it was cropped at the sides, has bars above and below, or was"
                                + " stretched by %.1f %% in height",
                        ratios,
                        columns - pass.width(),
                        100 * (pass.height() / rows - 1));
        };
    }
}
