package org.adumbrate.preflight;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.adumbrate.drawing.Layer;
import org.adumbrate.drawing.Mark;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.preflight.Observation.Severity;
import org.adumbrate.preflight.Observations.Advice;

/** Whether something is drawn where printers do not print, for a sheet has no bleed. */
final class MarginRule implements Rule {
    /** What most printers leave bare along the edges, in mm; common practice. */
    private static final double UNPRINTED_MM = 5;

    private static final double TINTED = 0.97;

    @Override
    public void look(CheckedSheet sheet, Observations found) {
        Optional<Extent> nearest = sheet.layers().stream()
                .filter(Layer::shown)
                .flatMap(layer -> layer.marks().stream())
                .filter(Mark.Lines.class::isInstance)
                .flatMap(mark -> ((Mark.Lines) mark).paths().stream())
                .flatMap(path -> path.extent().stream())
                .min(Comparator.comparingDouble(extent -> gap(extent, sheet)));
        double gap = nearest.map(extent -> gap(extent, sheet)).orElse(Double.POSITIVE_INFINITY);
        boolean toned = sheet.picture().filter(MarginRule::isTonedAtTheEdge).isPresent();
        if (gap < UNPRINTED_MM || toned) {
            boolean isLine = gap < UNPRINTED_MM;
            String what = isLine
                    ? String.format(Locale.ROOT, "lines come within %.1f mm of the edge of the sheet", Math.max(0, gap))
                    : "tones run to the edge of the sheet";
            found.add(
                    Severity.NOTE,
                    "size",
                    isLine ? List.of(corner(nearest.orElseThrow(), sheet)) : List.of(),
                    what + ", and it has no bleed",
                    new Advice(
                            "most printers leave some 5 mm along the edges bare, and a trimmed edge wanders by 1 to 3 mm",
                            "print on a larger paper and trim, or leave a margin in the view"));
        }
    }

    private static double gap(Extent extent, CheckedSheet sheet) {
        return Math.min(
                Math.min(extent.left(), extent.top()),
                Math.min(sheet.size().widthMm() - extent.right(), sheet.size().heightMm() - extent.bottom()));
    }

    private static SheetPoint corner(Extent extent, CheckedSheet sheet) {
        double right = sheet.size().widthMm() - extent.right();
        double bottom = sheet.size().heightMm() - extent.bottom();
        double x = extent.left() <= right ? extent.left() : extent.right();
        double y = extent.top() <= bottom ? extent.top() : extent.bottom();
        return new SheetPoint(x, y);
    }

    private static boolean isTonedAtTheEdge(TonePicture picture) {
        int right = picture.size().width() - 1;
        int bottom = picture.size().height() - 1;
        int toned = 0;
        for (int x = 0; x <= right; x++) {
            toned += picture.luminance(x, 0) < TINTED ? 1 : 0;
            toned += picture.luminance(x, bottom) < TINTED ? 1 : 0;
        }
        for (int y = 0; y <= bottom; y++) {
            toned += picture.luminance(0, y) < TINTED ? 1 : 0;
            toned += picture.luminance(right, y) < TINTED ? 1 : 0;
        }
        return toned > 0.01 * 2 * (right + bottom);
    }
}
