package org.adumbrate.linework;

import java.util.Optional;
import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.LineJoin;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;

/**
 * One stroked path of a line sheet, as the file draws it: every transform applied, whatever a clip hides cut away.
 *
 * @param path where it runs, in mm of the page; curves kept as curves
 * @param color its stroke colour, in whatever colour space it was given, as sRGB
 * @param widthMm its width in mm of the page; 0 for a hairline
 * @param dash its dashes
 * @param cap how it ends
 * @param join how its pieces meet
 * @param layer the name of the innermost layer or group that the file puts it in, if it has one
 */
public record Stroke(
        VectorPath<PagePoint> path,
        Srgb color,
        double widthMm,
        Dash dash,
        LineCap cap,
        LineJoin join,
        Optional<String> layer) {
    /** The same along another path. */
    public Stroke along(VectorPath<PagePoint> other) {
        return new Stroke(other, color, widthMm, dash, cap, join, layer);
    }

    /** The same in another colour. */
    public Stroke in(Srgb other) {
        return new Stroke(path, other, widthMm, dash, cap, join, layer);
    }

    /** The same with other dashes. */
    public Stroke dashed(Dash other) {
        return new Stroke(path, color, widthMm, other, cap, join, layer);
    }
}
