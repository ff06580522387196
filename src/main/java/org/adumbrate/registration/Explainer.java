package org.adumbrate.registration;

import java.util.Locale;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;

/** Says in trade words what a placement means. */
final class Explainer {
    /** Sides of the sheet may be this far off the sides of the picture before they count as elsewhere, in pixels. */
    private static final double NEAR = 0.35;

    /** A view that was not rounded to whole rows is centred: half a row may be missing on either side. */
    private static final double HALF_ROW = 0.5;

    /** Scales that differ by less than this, in pixels across the picture, differ by rounding. */
    private static final double STRETCH = 2;

    /** The pass shows something beyond the sheet if it reaches beyond it by more than this, in pixels. */
    private static final double BEYOND = 2;

    private final PixelSize pass;
    private final SheetSize sheet;
    private final PixelRect inside;
    private final boolean plainOutside;
    private final double near;
    private final double left;
    private final double top;
    private final double right;
    private final double bottom;
    private final double stretch;

    /**
     * @param map from the sheet to pixels of the pass
     * @param inside the part of the pass between its bars, in its pixels
     * @param plainOutside whether the pass is of one tone wherever it reaches beyond the sheet
     * @param sigma standard deviation of the placement, in pixels
     */
    Explainer(
            Affine<SheetPoint, RasterPoint> map,
            SheetSize sheet,
            PixelSize pass,
            PixelRect inside,
            boolean plainOutside,
            double sigma) {
        this.pass = pass;
        this.sheet = sheet;
        this.inside = inside;
        this.plainOutside = plainOutside;
        near = Math.max(NEAR, 3 * sigma);
        left = map.mapX(0, 0);
        top = map.mapY(0, 0);
        right = map.mapX(sheet.widthMm(), sheet.heightMm());
        bottom = map.mapY(sheet.widthMm(), sheet.heightMm());
        stretch = map.xx() / map.yy();
    }

    Explanation explanation() {
        boolean stretched = Math.abs(stretch - 1) * Math.min(pass.width(), pass.height()) > STRETCH;
        if (cutBars() ? fills(inside) : barsOfTheBackground()) {
            return stretched ? Explanation.MIXED : Explanation.BARS;
        }
        RatioCheck ratio = RatioCheck.of(pass, sheet);
        if (fills(whole())) {
            return switch (ratio.fit()) {
                case SAME -> Explanation.SAME_RATIO;
                case ROUNDED -> Explanation.ROUNDED;
                default -> Explanation.STRETCHED;
            };
        }
        if (stretched || cutBars()) {
            return Explanation.MIXED;
        }
        if (!ratio.fills()) {
            return Explanation.CROPPED;
        }
        boolean sameScale = Math.abs(right - left - pass.width()) < 2 * near + 1;
        return sameScale ? Explanation.SHIFTED : Explanation.ZOOMED;
    }

    private PixelRect whole() {
        return new PixelRect(0, 0, pass.width(), pass.height());
    }

    private boolean cutBars() {
        return !inside.equals(whole());
    }

    /** Bars of the background's own tone are not seen as such: they are what the pass shows beyond the sheet. */
    private boolean barsOfTheBackground() {
        boolean within = left > -near && right < pass.width() + near && top > -near && bottom < pass.height() + near;
        boolean beyondX = Math.max(left, pass.width() - right) > BEYOND;
        boolean beyondY = Math.max(top, pass.height() - bottom) > BEYOND;
        boolean allRound = beyondX && beyondY && !RatioCheck.of(pass, sheet).fills();
        boolean oneWay = beyondX ? fillsY() && !beyondY : fillsX() && beyondY;
        return plainOutside && within && (oneWay || allRound);
    }

    private boolean fillsX() {
        return Math.abs(left) < near && Math.abs(right - pass.width()) < near;
    }

    private boolean fillsY() {
        return Math.abs(top) < near && Math.abs(bottom - pass.height()) < near;
    }

    /** True if the sheet's sides are the sides of the rectangle. */
    private boolean fills(PixelRect r) {
        double loose = near + HALF_ROW;
        return Math.abs(left - r.left()) < loose
                && Math.abs(right - r.right()) < loose
                && Math.abs(top - r.top()) < loose
                && Math.abs(bottom - r.bottom()) < loose
                && Math.abs((left + right) - (r.left() + r.right())) < 2 * near
                && Math.abs((top + bottom) - (r.top() + r.bottom())) < 2 * near;
    }

    /** What the explanation means in numbers. */
    String message() {
        double perMm = Math.sqrt((right - left) * (bottom - top) / (sheet.widthMm() * sheet.heightMm()));
        String resolution = String.format(Locale.ROOT, "%.1f pixels an inch", perMm * 25.4);
        return switch (explanation()) {
            case SAME_RATIO -> "fills the sheet at " + resolution;
            case ROUNDED -> "fills the sheet at " + resolution + " but for a row or column of rounding";
            case BARS ->
                String.format(
                        Locale.ROOT,
                        "fills the sheet at %s between bars of %s pixels left, %s top, %s right, %s bottom",
                        resolution,
                        pixels(left),
                        pixels(top),
                        pixels(pass.width() - right),
                        pixels(pass.height() - bottom));
            case CROPPED -> "is a crop at " + resolution + ": " + sides();
            case STRETCHED ->
                String.format(
                        Locale.ROOT,
                        "fills the sheet, stretched by %.2f %% in width against height",
                        100 * (stretch - 1));
            case SHIFTED ->
                String.format(
                        Locale.ROOT,
                        "has the sheet's ratio and scale, but lies %.2f pixels right and %.2f down of it",
                        -(left + right - pass.width()) / 2,
                        -(top + bottom - pass.height()) / 2);
            case ZOOMED ->
                String.format(
                        Locale.ROOT,
                        "has the sheet's ratio, but shows the view %.2f times as large",
                        (right - left) / pass.width());
            default ->
                String.format(
                        Locale.ROOT,
                        "differs in more than one way (stretched by %.2f %% in width against height; %s)",
                        100 * (stretch - 1),
                        sides());
        };
    }

    private static String pixels(double value) {
        return String.format(Locale.ROOT, "%d", Math.max(0, Math.round(value)));
    }

    /** How far each side of the pass lies inside the sheet or beyond it. */
    private String sides() {
        return side("left", -left) + ", " + side("top", -top) + ", " + side("right", right - pass.width()) + ", "
                + side("bottom", bottom - pass.height());
    }

    private static String side(String name, double missing) {
        return String.format(
                Locale.ROOT, "%s %.1f pixels %s", name, Math.abs(missing), missing > 0 ? "cut off" : "beyond the page");
    }
}
