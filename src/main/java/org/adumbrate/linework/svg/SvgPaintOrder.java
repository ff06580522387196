package org.adumbrate.linework.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.StringTokenizer;

/**
 * In which order the parts of a shape are painted (SVG 2, 13.8).
 *
 * @param strokeFirst whether the stroke is painted before the area, which then covers its inner half
 * @param marks how many of the two are painted before the markers: 0 to 2
 */
record SvgPaintOrder(boolean strokeFirst, int marks) {
    private static final List<String> NORMAL = List.of("fill", "stroke", "markers");

    /** The area, the stroke, the markers. */
    static final SvgPaintOrder USUAL = new SvgPaintOrder(/* strokeFirst= */ false, 2);

    /** Reads the property's value; what it leaves out follows in the usual order, and a word that makes no sense voids all of it. */
    static SvgPaintOrder parse(String value) {
        List<String> order = new ArrayList<>();
        StringTokenizer words = new StringTokenizer(value.toLowerCase(Locale.ROOT));
        while (words.hasMoreTokens()) {
            String word = words.nextToken();
            if (!NORMAL.contains(word) || order.contains(word)) {
                return USUAL;
            }
            order.add(word);
        }
        NORMAL.stream().filter(word -> !order.contains(word)).forEach(order::add);
        return new SvgPaintOrder(order.indexOf("stroke") < order.indexOf("fill"), order.indexOf("markers"));
    }
}
