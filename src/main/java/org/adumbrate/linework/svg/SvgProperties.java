package org.adumbrate.linework.svg;

import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.adumbrate.linework.svg.css.CssColor;
import org.adumbrate.linework.svg.css.CssLength;
import org.adumbrate.linework.svg.css.CssScanner;
import org.adumbrate.linework.svg.css.CssVariables;

/** The properties that matter to a line (SVG 2, 6.2 to 6.6), and what they can be set to. */
final class SvgProperties {
    private static final Set<String> INHERITED = Set.of(
            "clip-rule",
            "color",
            "fill",
            "fill-opacity",
            "fill-rule",
            "font-size",
            "marker-end",
            "marker-mid",
            "marker-start",
            "paint-order",
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
            "mask-type",
            "opacity",
            "overflow",
            "stop-color",
            "stop-opacity",
            "transform",
            "transform-origin",
            "vector-effect");

    /** Those that an attribute of the same name does not set, or that it sets in words of its own. */
    private static final Set<String> OF_CSS_ALONE =
            Set.of("cx", "cy", "d", "height", "mix-blend-mode", "r", "rx", "ry", "transform-box", "width", "x", "y");

    private static final Set<String> ATTRIBUTES = union(INHERITED, OWN);
    private static final Set<String> ALL = union(ATTRIBUTES, OF_CSS_ALONE);

    private SvgProperties() {}

    /** Whether an attribute of that name is a presentation attribute. */
    static boolean isAttribute(String name) {
        return ATTRIBUTES.contains(name);
    }

    /** Whether what is set holds for what is drawn within an element too. */
    static boolean isInherited(String property) {
        return INHERITED.contains(property);
    }

    /** Whether a property is of interest and can be set to a value; CSS ignores a declaration that it cannot read. */
    static boolean isSound(String property, String value) {
        if (property.startsWith("--")) {
            return true;
        }
        if (!ALL.contains(property) || value.isBlank()) {
            return false;
        }
        String word = value.strip().toLowerCase(Locale.ROOT);
        return isForAll(word)
                || CssVariables.isUsedIn(word)
                || word.contains("calc(")
                || isSoundFor(property, word, value);
    }

    /** Words that every property takes (CSS Cascade 4, 7.3). */
    static boolean isForAll(String word) {
        return switch (word) {
            case "inherit", "initial", "unset", "revert", "revert-layer" -> true;
            default -> false;
        };
    }

    private static boolean isSoundFor(String property, String word, String value) {
        return switch (property) {
            case "fill", "stroke" -> PaintValue.parse(value).isPresent();
            case "color", "stop-color" ->
                word.equals("currentcolor") || CssColor.parse(word).isPresent();
            case "stroke-width" -> isLength(word, 0);
            case "stroke-dashoffset" -> isLength(word, Double.NEGATIVE_INFINITY);
            case "stroke-dasharray" -> word.equals("none") || areLengths(word);
            case "font-size" -> isLength(word, 0) || SvgFontSize.isWord(word);
            case "opacity", "fill-opacity", "stroke-opacity", "stop-opacity" -> isShare(word);
            case "fill-rule", "clip-rule" -> word.equals("nonzero") || word.equals("evenodd");
            case "stroke-linecap" -> Set.of("butt", "round", "square").contains(word);
            case "stroke-linejoin" ->
                Set.of("miter", "round", "bevel", "miter-clip", "arcs").contains(word);
            case "visibility" -> Set.of("visible", "hidden", "collapse").contains(word);
            case "transform" -> SvgTransform.parse(value, CssLength.Basis.NONE).isPresent();
            default -> true;
        };
    }

    private static boolean isLength(String word, double least) {
        return CssLength.parse(word)
                .filter(length -> length.value() >= least && !Double.isNaN(length.user(CssLength.Basis.SHARE)))
                .isPresent();
    }

    private static boolean areLengths(String word) {
        CssScanner scanner = new CssScanner(word);
        boolean sound = scanner.hasMore();
        while (sound && scanner.hasMore()) {
            Optional<CssLength> length = CssLength.read(scanner);
            sound = length.isPresent() && length.get().value() >= 0;
        }
        return sound;
    }

    private static boolean isShare(String word) {
        return CssLength.parse(word)
                .filter(share -> share.unit().isEmpty() || share.isPercentage())
                .isPresent();
    }

    private static Set<String> union(Set<String> a, Set<String> b) {
        Set<String> all = new HashSet<>(a);
        all.addAll(b);
        return Set.copyOf(all);
    }
}
