package org.adumbrate.linework;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How much of a sheet's lines its file holds in another form.
 *
 * @param shapes how many filled shapes are taken as lines
 * @param wide how many of these are wider than 1 mm, so that they may as well be areas
 * @param widestMm how wide the widest of these is, in mm of the page; 0 if there is none
 * @param areas how many filled shapes of constant width are not taken as lines, being short or wide for a line
 * @param dashes how many strokes are the dashes of dashed lines
 * @param dashed how many dashed lines these make
 */
public record Recovered(int shapes, int wide, double widestMm, int areas, int dashes, int dashed) {
    /** Nothing: the file holds lines as lines. */
    public static final Recovered NOTHING = new Recovered(0, 0, 0, 0, 0, 0);

    /** The same with dashes put together. */
    public Recovered withDashes(int strokes, int lines) {
        return new Recovered(shapes, wide, widestMm, areas, strokes, lines);
    }

    /** For people, such as {@code 312 filled shapes are taken as lines}; a clause each. */
    public List<String> told() {
        List<String> clauses = new ArrayList<>();
        if (shapes > 0) {
            clauses.add(
                    counted(shapes, "filled shape") + (shapes == 1 ? " is taken as a line" : " are taken as lines"));
        }
        if (wide > 0) {
            clauses.add(String.format(
                    Locale.ROOT,
                    "%d of them %s wider than 1 mm (%.1f mm at most) and may be %s",
                    wide,
                    wide == 1 ? "is" : "are",
                    widestMm,
                    wide == 1 ? "an area" : "areas"));
        }
        if (areas > 0) {
            clauses.add(counted(areas, "filled shape") + " of constant width "
                    + (areas == 1 ? "is left as an area" : "are left as areas") + ", being short or wide for a line");
        }
        if (dashed > 0) {
            clauses.add(counted(dashes, "stroke") + " are the dashes of " + counted(dashed, "dashed line"));
        }
        return clauses;
    }

    private static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }
}
