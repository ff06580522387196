package org.adumbrate.linework;

import java.util.Locale;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;

/**
 * How a page of lines goes onto the sheet when its size is not the sheet's.
 *
 * <p>A page of the same ratio is scaled to the sheet whatever the wish, each axis by its own factor so that frame meets
 * frame. Ratios count as the same when they differ by at most 0.2 %, which covers what rounding to whole millimetres makes
 * among the ISO sizes A0 to A4 (0.14 %) and distorts a circle by less than an eye can tell; or when at the sheet's edge the
 * page, scaled evenly, is out by at most 0.5 mm, which covers rounding on smaller sheets.
 */
public enum PageFit {
    /** The ratios must be the same. */
    SAME_RATIO,
    /** The whole page, scaled evenly and centred; a page of another ratio leaves the sheet empty on two sides. */
    FIT,
    /** The sheet filled, the page scaled evenly and centred; a page of another ratio loses something on two sides. */
    CROP;

    static final double SAME_RATIO_SHARE = 0.002;
    static final double SAME_EDGE_MM = 0.5;

    /**
     * The map from the page onto the sheet.
     *
     * @throws Refusal if the ratios differ and this is {@link #SAME_RATIO}
     */
    public Affine<PagePoint, SheetPoint> onto(SheetSize page, SheetSize sheet) throws Refusal {
        double sx = sheet.widthMm() / page.widthMm();
        double sy = sheet.heightMm() / page.heightMm();
        if (sameRatio(page, sheet)) {
            return Affine.scaling(Space.PAGE, Space.SHEET, sx, sy);
        }
        return switch (this) {
            case SAME_RATIO -> throw new Refusal(explanation(page, sheet));
            case FIT -> centred(page, sheet, Math.min(sx, sy));
            case CROP -> centred(page, sheet, Math.max(sx, sy));
        };
    }

    private static boolean sameRatio(SheetSize page, SheetSize sheet) {
        double sx = sheet.widthMm() / page.widthMm();
        double sy = sheet.heightMm() / page.heightMm();
        double edge = Math.min(
                Math.abs(sheet.heightMm() - sx * page.heightMm()), Math.abs(sheet.widthMm() - sy * page.widthMm()));
        return Math.abs(sx / sy - 1) <= SAME_RATIO_SHARE || edge <= SAME_EDGE_MM;
    }

    private static Affine<PagePoint, SheetPoint> centred(SheetSize page, SheetSize sheet, double scale) {
        return Affine.scalingThenShift(
                Space.PAGE,
                Space.SHEET,
                scale,
                scale,
                (sheet.widthMm() - scale * page.widthMm()) / 2,
                (sheet.heightMm() - scale * page.heightMm()) / 2);
    }

    private static String explanation(SheetSize page, SheetSize sheet) {
        boolean turned =
                sameRatio(new SheetSize(/* widthMm= */ page.heightMm(), /* heightMm= */ page.widthMm()), sheet);
        String remedy = turned
                ? "the page lies across: turn it by a quarter, or turn the sheet's size"
                : "say fit to have the whole page on the sheet, or crop to have the sheet filled";
        return String.format(
                Locale.ROOT,
                "the lines' page is %s (%.4f : 1) and the sheet is %s (%.4f : 1), so one cannot be scaled to the other; %s",
                page,
                page.ratio(),
                sheet,
                sheet.ratio(),
                remedy);
    }
}
