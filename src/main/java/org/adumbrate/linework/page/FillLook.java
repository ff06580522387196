package org.adumbrate.linework.page;

import java.util.Optional;
import org.adumbrate.geometry.Srgb;

/**
 * How a filled path looks that may be a line.
 *
 * @param color the one colour that it is filled with
 * @param outline how its outline is stroked, if it is
 * @param layer the name of the innermost layer or group, if it has one
 */
public record FillLook(Srgb color, Optional<StrokeStyle> outline, Optional<String> layer) {
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
