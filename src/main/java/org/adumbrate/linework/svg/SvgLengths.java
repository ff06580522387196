package org.adumbrate.linework.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.LineJoin;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.linework.page.StrokeStyle;
import org.adumbrate.linework.svg.css.CssLength;
import org.adumbrate.linework.svg.css.CssScanner;

/** How wide strokes are, and how they are broken (SVG 2, 13.5). */
final class SvgLengths {
    private static final Set<String> PROPERTIES = Set.of("stroke-width", "stroke-dasharray", "stroke-dashoffset");

    private SvgLengths() {}

    /** Counts lengths in pixels that were counted in the font's size: they are passed on, and the font may change. */
    static void fix(Set<String> declared, Map<String, String> values, CssLength.Basis basis) {
        for (String property : PROPERTIES) {
            String value = declared.contains(property) ? values.getOrDefault(property, "") : "";
            if (value.contains("m") || value.contains("x") || value.contains("h")) {
                values.put(property, fixed(value, basis));
            }
        }
    }

    private static String fixed(String value, CssLength.Basis basis) {
        CssScanner scanner = new CssScanner(value);
        StringBuilder text = new StringBuilder();
        while (scanner.hasMore()) {
            Optional<CssLength> length = CssLength.read(scanner);
            if (length.isEmpty()) {
                return value;
            }
            boolean percent = length.get().isPercentage();
            text.append(percent ? length.get().value() + "%" : length.get().user(basis) + "px")
                    .append(' ');
        }
        return text.toString();
    }

    /**
     * The width of a stroke, in user units.
     *
     * @param diagonal the length that 100 % stands for, in user units
     */
    static double strokeWidth(SvgStyle style, double diagonal) {
        return CssLength.parse(style.get("stroke-width", "1"))
                .map(width -> width.user(style.basis(diagonal)))
                .orElse(1.0);
    }

    /**
     * How a stroke looks.
     *
     * @param color its colour
     * @param mmPerUnit mm of the page in a user unit, or in a pixel if the stroke does not scale
     * @param diagonal the length that 100 % stands for, in user units
     */
    static StrokeStyle stroke(SvgStyle style, Srgb color, double mmPerUnit, double diagonal) {
        return new StrokeStyle(
                color,
                strokeWidth(style, diagonal) * mmPerUnit,
                dash(style, mmPerUnit, diagonal),
                cap(style),
                join(style));
    }

    private static Dash dash(SvgStyle style, double mmPerUnit, double diagonal) {
        List<Double> lengths = new ArrayList<>();
        double sum = 0;
        CssScanner scanner = new CssScanner(style.get("stroke-dasharray", "none"));
        while (scanner.hasMore()) {
            Optional<CssLength> length = CssLength.read(scanner);
            if (length.isEmpty() || length.get().value() < 0) {
                return Dash.NONE;
            }
            lengths.add(length.get().user(style.basis(diagonal)) * mmPerUnit);
            StrokeStyle.requireFewDashes(lengths.size());
            sum += length.get().value();
        }
        double phase = CssLength.parse(style.get("stroke-dashoffset", "0"))
                .map(offset -> offset.user(style.basis(diagonal)))
                .orElse(0.0);
        return sum > 0 ? new Dash(lengths, phase * mmPerUnit) : Dash.NONE;
    }

    private static LineCap cap(SvgStyle style) {
        return switch (style.word("stroke-linecap", "butt")) {
            case "round" -> LineCap.ROUND;
            case "square" -> LineCap.PROJECTING;
            default -> LineCap.BUTT;
        };
    }

    private static LineJoin join(SvgStyle style) {
        return switch (style.word("stroke-linejoin", "miter")) {
            case "round" -> LineJoin.ROUND;
            case "bevel" -> LineJoin.BEVEL;
            default -> LineJoin.MITER;
        };
    }
}
