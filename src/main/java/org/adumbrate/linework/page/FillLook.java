package org.adumbrate.linework.page;

import java.util.Optional;
import org.adumbrate.geometry.Srgb;

/**
 * How a filled path looks that may be a line.
 *
 * @param color the one colour that it is filled with
 * @param outline how its outline is stroked, if it is
 * @param layer the name of the innermost layer or group, if it has one
 * @param faint whether what lies behind is seen through it, which is worth telling should it be a line
 */
public record FillLook(Srgb color, Optional<StrokeStyle> outline, Optional<String> layer, boolean faint) {
    /** Whether it may be a line: white covers what lies behind, and an outline that shows is an area's. */
    boolean mayBeLine() {
        return !AreaPaint.isWhite(color)
                && outline.stream()
                        .allMatch(style ->
                                style.color().equals(color) && style.dash().isNone());
    }

    /** By how much the outline widens it, in mm. */
    double outlineMm() {
        return outline.map(StrokeStyle::widthMm).orElse(0.0);
    }
}
