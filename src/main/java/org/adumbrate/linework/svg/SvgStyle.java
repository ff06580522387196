package org.adumbrate.linework.svg;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.linework.clip.FillRule;
import org.adumbrate.linework.svg.css.CssCalc;
import org.adumbrate.linework.svg.css.CssColor;
import org.adumbrate.linework.svg.css.CssLength;
import org.adumbrate.linework.svg.css.CssVariables;

/** The style of one element: what it inherits, and what is declared for it alone; immutable. */
final class SvgStyle {
    private static final String FONT_SIZE = "font-size";

    /** What shapes are painted with that markers and symbols are drawn for; no document can set such properties. */
    private static final String CONTEXT_FILL = "-context-fill";

    private static final String CONTEXT_STROKE = "-context-stroke";

    /** The style of a document before anything is declared. */
    static final SvgStyle INITIAL = new SvgStyle(Map.of(), Map.of(), CssLength.Basis.MEDIUM, CssLength.Basis.MEDIUM);

    private final Map<String, String> inherited;
    private final Map<String, String> own;
    private final double font;
    private final double rootFont;

    private SvgStyle(Map<String, String> inherited, Map<String, String> own, double font, double rootFont) {
        this.inherited = inherited;
        this.own = own;
        this.font = font;
        this.rootFont = rootFont;
    }

    /** The style of an element within one of this style, for which something is declared. */
    SvgStyle with(Map<String, String> declared) {
        if (declared.isEmpty()) {
            return own.isEmpty() ? this : new SvgStyle(inherited, Map.of(), font, rootFont);
        }
        Map<String, String> passedOn = new HashMap<>(inherited);
        Map<String, String> alone = new HashMap<>();
        boolean variables = putCustom(declared, passedOn);
        double size = declared.containsKey(FONT_SIZE)
                ? fontSize(variables ? replaced(declared.get(FONT_SIZE), passedOn) : declared.get(FONT_SIZE))
                : font;
        declared.forEach((property, written) -> {
            if (!property.startsWith("--")) {
                String value = CssVariables.isUsedIn(written) ? replaced(written, passedOn) : written;
                put(property, value.contains("calc(") ? calculated(value, size) : value, passedOn, alone);
            }
        });
        SvgLengths.fix(declared.keySet(), passedOn, new CssLength.Basis(0, size, rootFont));
        return new SvgStyle(passedOn, alone, size, rootFont);
    }

    /** The same for the outermost element, whose font {@code rem} is counted in. */
    SvgStyle asRoot() {
        return new SvgStyle(inherited, own, font, font);
    }

    /** The same for what is drawn in place of a shape, or as its marker. */
    SvgStyle inContextOf(SvgStyle shape) {
        Map<String, String> passedOn = new HashMap<>(inherited);
        passedOn.put(CONTEXT_FILL, shape.contextual("fill", "black"));
        passedOn.put(CONTEXT_STROKE, shape.contextual("stroke", "none"));
        return new SvgStyle(passedOn, own, font, rootFont);
    }

    /** A paint as it stands, with whatever it says of its surroundings put in its place. */
    private String contextual(String property, String initial) {
        String written = get(property, initial);
        return switch (written.strip().toLowerCase(Locale.ROOT)) {
            case "currentcolor" -> get("color", "black");
            case "context-fill" -> get(CONTEXT_FILL, "none");
            case "context-stroke" -> get(CONTEXT_STROKE, "none");
            default -> written;
        };
    }

    private static boolean putCustom(Map<String, String> declared, Map<String, String> passedOn) {
        boolean any = false;
        for (Map.Entry<String, String> entry : declared.entrySet()) {
            if (entry.getKey().startsWith("--")) {
                passedOn.put(entry.getKey(), entry.getValue());
                any = true;
            } else {
                any |= CssVariables.isUsedIn(entry.getValue());
            }
        }
        return any;
    }

    /** A value without variables; {@code unset} if it cannot be had (CSS Variables 1, 3.1). */
    private static String replaced(String written, Map<String, String> custom) {
        return CssVariables.replaced(written, custom).orElse("unset");
    }

    private String calculated(String value, double size) {
        return CssCalc.reduced(value, new CssLength.Basis(0, size, rootFont)).orElse("unset");
    }

    private double fontSize(String written) {
        String word = written.strip().toLowerCase(Locale.ROOT);
        return word.equals("initial") ? CssLength.Basis.MEDIUM : SvgFontSize.px(word, font, rootFont);
    }

    private void put(String property, String value, Map<String, String> passedOn, Map<String, String> alone) {
        boolean inherits = SvgProperties.isInherited(property);
        String word = value.strip().toLowerCase(Locale.ROOT);
        if (!SvgProperties.isForAll(word)) {
            if (SvgProperties.isSound(property, value)) {
                (inherits ? passedOn : alone).put(property, value);
            } else if (inherits) {
                passedOn.remove(property);
            }
        } else if (inherits && word.equals("initial")) {
            passedOn.remove(property);
        } else if (!inherits && word.equals("inherit") && own.containsKey(property)) {
            alone.put(property, own.get(property));
        }
    }

    boolean isDisplayed() {
        return isBoxed() && share(own("opacity", "1")) != 0;
    }

    /** Whether it takes part in what is drawn, seen or not. */
    boolean isBoxed() {
        return !own("display", "inline").equals("none");
    }

    boolean isVisible() {
        return word("visibility", "visible").equals("visible");
    }

    /** Whether it is painted apart and what lies behind is seen through it, in part or everywhere, masks not counted. */
    boolean isSeenThrough() {
        return !own.isEmpty() && (share(own("opacity", "1")) < 1 || isFiltered() || !blend().equals("normal"));
    }

    /** Whether nothing but its own paints says how it looks. */
    boolean isPlain() {
        return own.isEmpty() || !(isSeenThrough() || own.containsKey("clip-path") || own.containsKey("mask"));
    }

    /** Whether a filter changes what it looks like. */
    boolean isFiltered() {
        return !own("filter", "none").equals("none");
    }

    /** How it mixes with what it is painted over (Compositing and Blending 1, 8). */
    String blend() {
        return own("mix-blend-mode", "normal");
    }

    boolean isFilled() {
        return fill().kind() != PaintValue.Kind.NONE;
    }

    /** What areas are painted with; none if that cannot be seen. */
    PaintValue fill() {
        return share(get("fill-opacity", "1")) <= 0 ? PaintValue.NONE : paint("fill", "black");
    }

    /** Whether nothing is seen through what areas are painted with, as far as this style alone tells. */
    boolean isFillSolid() {
        return share(get("fill-opacity", "1")) >= 1;
    }

    /** Whether nothing is seen through the stroke, as far as this style alone tells. */
    boolean isStrokeSolid() {
        return share(get("stroke-opacity", "1")) >= 1;
    }

    /** Whether all of it is faint. */
    boolean isFaint() {
        return share(own("opacity", "1")) < 1;
    }

    /** What the stroke is painted with; none if it cannot be seen. */
    PaintValue stroke() {
        boolean unseen = share(get("stroke-opacity", "1")) <= 0 || SvgLengths.strokeWidth(this, 1) <= 0;
        return unseen ? PaintValue.NONE : paint("stroke", "none");
    }

    private PaintValue paint(String property, String initial) {
        return PaintValue.parse(contextual(property, initial))
                .map(this::withCurrentColor)
                .orElse(PaintValue.NONE);
    }

    private PaintValue withCurrentColor(PaintValue paint) {
        if (paint.kind() == PaintValue.Kind.CURRENT) {
            return PaintValue.of(color());
        }
        return paint.fallback()
                .map(fallback -> new PaintValue(
                        paint.kind(), paint.color(), paint.server(), Optional.of(withCurrentColor(fallback))))
                .orElse(paint);
    }

    private CssColor color() {
        return CssColor.parse(get("color", "black")).orElse(CssColor.BLACK);
    }

    /** The colour of a stop of a gradient, with how much of it is seen. */
    CssColor stopColor() {
        String written = own("stop-color", "black");
        CssColor color = written.equals("currentcolor")
                ? color()
                : CssColor.parse(written).orElse(CssColor.BLACK);
        return new CssColor(color.srgb(), color.alpha() * Math.min(1, share(own("stop-opacity", "1"))));
    }

    FillRule fillRule() {
        return rule("fill-rule");
    }

    FillRule clipRule() {
        return rule("clip-rule");
    }

    private FillRule rule(String property) {
        return word(property, "nonzero").equals("evenodd") ? FillRule.EVEN_ODD : FillRule.NON_ZERO;
    }

    /** In which order area, stroke and markers are painted. */
    SvgPaintOrder paintOrder() {
        String order = inherited.get("paint-order");
        return order == null ? SvgPaintOrder.USUAL : SvgPaintOrder.parse(order);
    }

    /** The same without one of its two paints, {@code fill} or {@code stroke}. */
    SvgStyle without(String paint) {
        Map<String, String> passedOn = new HashMap<>(inherited);
        passedOn.put(paint, "none");
        return new SvgStyle(passedOn, own, font, rootFont);
    }

    boolean scalesStroke() {
        return !own("vector-effect", "none").contains("non-scaling-stroke");
    }

    boolean clipsOverflow() {
        String overflow = own("overflow", "hidden");
        return !overflow.equals("visible") && !overflow.equals("auto");
    }

    /** What an inherited property is set to, or its initial value. */
    String get(String property, String initial) {
        return inherited.getOrDefault(property, initial);
    }

    /** The same in lower case. */
    String word(String property, String initial) {
        return get(property, initial).strip().toLowerCase(Locale.ROOT);
    }

    /** What a property that is not inherited is set to, as it is written. */
    Optional<String> stated(String property) {
        return Optional.ofNullable(own.get(property));
    }

    private String own(String property, String initial) {
        return own.getOrDefault(property, initial).strip().toLowerCase(Locale.ROOT);
    }

    /** What lengths are relative to. */
    CssLength.Basis basis(double whole) {
        return new CssLength.Basis(whole, font, rootFont);
    }

    /** A number or a percentage; 1 if it is neither. */
    private static double share(String text) {
        return CssLength.parse(text)
                .map(length -> length.user(CssLength.Basis.SHARE))
                .orElse(1.0);
    }
}
