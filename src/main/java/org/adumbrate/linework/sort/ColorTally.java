package org.adumbrate.linework.sort;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.Stroke;

/**
 * How much a sheet draws in one colour.
 *
 * @param color the stroke colour
 * @param strokes the number of stroked paths
 * @param lengthMm their visible length all told, in mm of the page
 */
public record ColorTally(Srgb color, int strokes, double lengthMm) {
    /** The colour that most is drawn in goes first; of equal ones the order is always the same. */
    public static final Comparator<ColorTally> LONGEST_FIRST =
            Comparator.comparingDouble(ColorTally::lengthMm).reversed().thenComparing(ColorTally::color);

    /** What a sheet holds, colour by colour, the longest first. */
    public static List<ColorTally> of(LineSheet sheet) {
        Map<Srgb, ColorTally> tallies = new HashMap<>();
        for (Stroke stroke : sheet.strokes()) {
            ColorTally one = new ColorTally(stroke.color(), 1, stroke.path().length());
            tallies.merge(stroke.color(), one, ColorTally::plus);
        }
        return tallies.values().stream().sorted(LONGEST_FIRST).toList();
    }

    /** Both together, under this one's colour. */
    public ColorTally plus(ColorTally other) {
        return new ColorTally(color, strokes + other.strokes, lengthMm + other.lengthMm);
    }
}
