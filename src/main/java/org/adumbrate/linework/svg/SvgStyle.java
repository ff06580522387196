package org.adumbrate.linework.svg;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.LineJoin;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.linework.clip.FillRule;
import org.adumbrate.linework.page.StrokeStyle;

/** The style of one element: what it inherits, and what is declared for it alone; immutable. */
final class SvgStyle {
    private static final Set<String> INHERITED = Set.of(
            "clip-rule",
            "color",
            "fill",
            "fill-opacity",
            "fill-rule",
            "stroke",
            "stroke-dasharray",
            "stroke-dashoffset",
            "stroke-linecap",
            "stroke-linejoin",
            "stroke-opacity",
            "stroke-width",
            "visibility");
    private static final Set<String> OWN = Set.of(
            "clip-path",
            "display",
            "filter",
            "mask",
            "mix-blend-mode",
            "opacity",
            "overflow",
            "stop-color",
            "stop-opacity",
            "vector-effect");

    /** All properties that matter to a line. */
    static final Set<String> PROPERTIES = union(INHERITED, OWN);

    /** The style of a document before anything is declared. */
    static final SvgStyle INITIAL = new SvgStyle(Map.of(), Map.of());

    private final Map<String, String> inherited;
    private final Map<String, String> own;

    private SvgStyle(Map<String, String> inherited, Map<String, String> own) {
        this.inherited = inherited;
        this.own = own;
    }

    /** The style of an element within one of this style, for which something is declared. */
    SvgStyle with(Map<String, String> declared) {
        if (declared.isEmpty()) {
            return own.isEmpty() ? this : new SvgStyle(inherited, Map.of());
        }
        Map<String, String> passedOn = new HashMap<>(inherited);
        Map<String, String> alone = new HashMap<>();
        declared.forEach((property, value) -> {
            if (OWN.contains(property)) {
                alone.put(property, value);
            } else if (!value.equals("inherit") && isSound(property, value)) {
                passedOn.put(property, value);
            }
        });
        return new SvgStyle(passedOn, alone);
    }

    /** CSS ignores a declaration that it cannot read. */
    private static boolean isSound(String property, String value) {
        return switch (property) {
            case "fill", "stroke" -> PaintValue.parse(value).isPresent();
            case "color" -> PaintValue.color(value).isPresent();
            case "stroke-width", "stroke-dashoffset" -> SvgLength.parse(value).isPresent();
            default -> true;
        };
    }

    boolean isDisplayed() {
        return !own("display", "inline").equals("none") && number(own("opacity", "1")) != 0;
    }

    boolean isVisible() {
        return get("visibility", "visible").equals("visible");
    }

    /** Whether it is painted apart and what lies behind is seen through it, in part or everywhere. */
    boolean isSeenThrough() {
        return !own.isEmpty()
                && (number(own("opacity", "1")) < 1
                        || !own("mask", "none").equals("none")
                        || !own("filter", "none").equals("none")
                        || !own("mix-blend-mode", "normal").equals("normal"));
    }

    boolean isFilled() {
        return fill().kind() != PaintValue.Kind.NONE;
    }

    /** What areas are painted with; none if that cannot be seen. */
    PaintValue fill() {
        return number(get("fill-opacity", "1")) == 0 ? PaintValue.NONE : resolved(paint("fill", "black"));
    }

    /** Whether nothing is seen through what areas are painted with, as far as this style alone tells. */
    boolean isFillSolid() {
        return number(get("fill-opacity", "1")) >= 1;
    }

    /** The id of the gradient or pattern that areas are painted with. */
    Optional<String> fillServerId() {
        return reference(get("fill", "none"));
    }

    /** Whether nothing is seen through a stop of a gradient. */
    boolean isStopSolid() {
        return number(own("stop-opacity", "1")) >= 1 && PaintValue.isSolid(own("stop-color", "black"));
    }

    FillRule fillRule() {
        return rule("fill-rule");
    }

    /** What the stroke is painted with; none if it cannot be seen. */
    PaintValue stroke() {
        PaintValue paint = paint("stroke", "none");
        boolean unseen = number(get("stroke-opacity", "1")) == 0 || width(1) <= 0;
        if (unseen) {
            return PaintValue.NONE;
        }
        return resolved(paint);
    }

    private PaintValue resolved(PaintValue paint) {
        if (paint.kind() != PaintValue.Kind.CURRENT) {
            return paint;
        }
        String color = get("color", "black");
        return new PaintValue(
                PaintValue.Kind.COLOR, PaintValue.color(color).orElse(Srgb.BLACK), PaintValue.isSolid(color));
    }

    /**
     * How a stroke looks.
     *
     * @param color its colour
     * @param mmPerUnit mm of the page in a user unit, or in a pixel if the stroke does not scale
     * @param diagonal the length that 100 % stands for, in user units
     */
    StrokeStyle strokeStyle(Srgb color, double mmPerUnit, double diagonal) {
        return new StrokeStyle(color, width(diagonal) * mmPerUnit, dash(mmPerUnit, diagonal), cap(), join());
    }

    boolean scalesStroke() {
        return !own("vector-effect", "none").contains("non-scaling-stroke");
    }

    boolean clipsOverflow() {
        String overflow = own("overflow", "hidden");
        return !overflow.equals("visible") && !overflow.equals("auto");
    }

    FillRule clipRule() {
        return rule("clip-rule");
    }

    private FillRule rule(String property) {
        return get(property, "nonzero").equals("evenodd") ? FillRule.EVEN_ODD : FillRule.NON_ZERO;
    }

    /** The id of the clip path, without its hash sign. */
    Optional<String> clipPathId() {
        return reference(own.getOrDefault("clip-path", "none"));
    }

    /** The id that a value refers to, whatever else it says for the case that there is none of that id. */
    private static Optional<String> reference(String text) {
        String value = text.replaceAll("[\"'\\s]", "");
        int end = value.indexOf(')');
        return value.startsWith("url(#") && end > 0
                ? Optional.of(value.substring("url(#".length(), end))
                : Optional.empty();
    }

    private double width(double diagonal) {
        return SvgLength.parse(get("stroke-width", "1"))
                .map(w -> w.user(diagonal))
                .orElse(1.0);
    }

    private Dash dash(double mmPerUnit, double diagonal) {
        List<Double> lengths = new ArrayList<>();
        double sum = 0;
        SvgScanner scanner = new SvgScanner(get("stroke-dasharray", "none"));
        while (scanner.hasMore()) {
            Optional<SvgLength> length = SvgLength.read(scanner);
            if (length.isEmpty() || length.get().value() < 0) {
                return Dash.NONE;
            }
            lengths.add(length.get().user(diagonal) * mmPerUnit);
            StrokeStyle.requireFewDashes(lengths.size());
            sum += length.get().value();
        }
        double phase = SvgLength.parse(get("stroke-dashoffset", "0"))
                .map(offset -> offset.user(diagonal))
                .orElse(0.0);
        return sum > 0 ? new Dash(lengths, phase * mmPerUnit) : Dash.NONE;
    }

    private LineCap cap() {
        return switch (get("stroke-linecap", "butt")) {
            case "round" -> LineCap.ROUND;
            case "square" -> LineCap.PROJECTING;
            default -> LineCap.BUTT;
        };
    }

    private LineJoin join() {
        return switch (get("stroke-linejoin", "miter")) {
            case "round" -> LineJoin.ROUND;
            case "bevel" -> LineJoin.BEVEL;
            default -> LineJoin.MITER;
        };
    }

    private PaintValue paint(String property, String initial) {
        return PaintValue.parse(get(property, initial)).orElse(PaintValue.NONE);
    }

    private String get(String property, String initial) {
        return inherited.getOrDefault(property, initial);
    }

    private String own(String property, String initial) {
        return own.getOrDefault(property, initial).toLowerCase(Locale.ROOT);
    }

    /** A number or a percentage; 1 if it is neither. */
    private static double number(String text) {
        return SvgLength.parse(text).map(length -> length.user(1)).orElse(1.0);
    }

    private static Set<String> union(Set<String> a, Set<String> b) {
        Set<String> all = new HashSet<>(a);
        all.addAll(b);
        return Set.copyOf(all);
    }
}
