package org.adumbrate.linework.svg;

import java.util.Map;
import org.adumbrate.linework.svg.css.CssLength;

/** The size of the font, which {@code em} is counted in (CSS Fonts 4, 2.5). */
final class SvgFontSize {
    private static final double STEP = 1.2;

    private static final Map<String, Double> WORDS = Map.of(
            "xx-small", 0.6,
            "x-small", 0.75,
            "small", 8 / 9.0,
            "medium", 1.0,
            "large", STEP,
            "x-large", 1.5,
            "xx-large", 2.0,
            "xxx-large", 3.0);

    private SvgFontSize() {}

    static boolean isWord(String word) {
        return WORDS.containsKey(word) || word.equals("larger") || word.equals("smaller");
    }

    /**
     * In pixels.
     *
     * @param word as it is set, in lower case
     * @param outer the size of what is around, in pixels
     * @param root that of the outermost element
     */
    static double px(String word, double outer, double root) {
        if (WORDS.containsKey(word)) {
            return WORDS.get(word) * CssLength.Basis.MEDIUM;
        }
        return switch (word) {
            case "larger" -> outer * STEP;
            case "smaller" -> outer / STEP;
            default ->
                CssLength.parse(word)
                        .map(length -> length.user(new CssLength.Basis(outer, outer, root)))
                        .filter(size -> size >= 0)
                        .orElse(outer);
        };
    }
}
