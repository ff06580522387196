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
}
