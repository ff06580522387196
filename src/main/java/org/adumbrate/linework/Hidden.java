package org.adumbrate.linework;

/**
 * How much of the strokes of a file lies hidden behind areas that are painted over them.
 *
 * @param strokes how many are hidden whole
 * @param cut how many more are hidden in part
 * @param lengthMm the length that is hidden, in mm of the page
 */
public record Hidden(int strokes, int cut, double lengthMm) {
    /** Nothing is hidden. */
    public static final Hidden NOTHING = new Hidden(0, 0, 0);

    /** Whether nothing is hidden. */
    public boolean isNothing() {
        return strokes == 0 && cut == 0;
    }

    /** For people, such as {@code 312 strokes and parts of 40 more}. */
    public String told() {
        String whole = strokes == 1 ? "1 stroke" : strokes + " strokes";
        String parts = cut == 1 ? "a part of 1" : "parts of " + cut;
        if (cut == 0) {
            return whole;
        }
        return strokes == 0 ? parts + (cut == 1 ? " stroke" : " strokes") : whole + " and " + parts + " more";
    }
}
