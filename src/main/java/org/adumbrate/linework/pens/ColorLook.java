package org.adumbrate.linework.pens;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.Stroke;
import org.adumbrate.linework.sort.ColorSort;

/**
 * What a colour looks like on the sheets that hold it.
 *
 * @param colors its shades, the most drawn first
 * @param sheets the sheets that hold it, the first of which it is judged by
 * @param layer the layer that most of its strokes are in, if they are in any
 * @param strokes how many there are
 * @param lengthMm how long they are together
 * @param uprightMm the length of pieces that stand upright
 * @param levelMm the length of pieces that lie level
 * @param uprights strokes that are one upright line
 */
record ColorLook(
        List<Srgb> colors,
        List<LineSheet> sheets,
        Optional<String> layer,
        int strokes,
        double lengthMm,
        double uprightMm,
        double levelMm,
        List<Upright> uprights) {

    /** Looks at the strokes of some colours. */
    static ColorLook of(LineSheet sheet, List<Srgb> colors) {
        Set<Srgb> wanted = new HashSet<>(colors);
        Map<String, Integer> layers = new HashMap<>();
        Directions directions = new Directions();
        int strokes = 0;
        for (Stroke stroke : sheet.strokes()) {
            if (wanted.contains(stroke.color())) {
                strokes++;
                stroke.layer().ifPresent(name -> layers.merge(name, 1, Integer::sum));
                directions.add(stroke.path());
            }
        }
        int half = strokes / 2;
        Optional<String> layer = layers.entrySet().stream()
                .filter(entry -> entry.getValue() > half)
                .max(Comparator.comparingInt(Map.Entry::getValue))
                .map(Map.Entry::getKey);
        return new ColorLook(
                colors,
                List.of(sheet),
                layer,
                strokes,
                directions.lengthMm(),
                directions.uprightMm(),
                directions.levelMm(),
                directions.uprights());
    }

    /** The same, found on one more sheet. */
    ColorLook alsoIn(LineSheet sheet, List<Srgb> shades) {
        List<LineSheet> all = new ArrayList<>(sheets);
        all.add(sheet);
        Set<Srgb> colorsOfAll = new LinkedHashSet<>(colors);
        colorsOfAll.addAll(shades);
        return new ColorLook(List.copyOf(colorsOfAll), all, layer, strokes, lengthMm, uprightMm, levelMm, uprights);
    }

    /** The shade that is drawn most. */
    Srgb color() {
        return colors.get(0);
    }

    /** True for a colour that may be this one, shifted by an exporter. */
    boolean isShade(Srgb color) {
        return color().distanceTo(color) <= ColorSort.TOLERANCE;
    }

    double meanMm() {
        return lengthMm / strokes;
    }

    double uprightShare() {
        return lengthMm == 0 ? 0 : uprightMm / lengthMm;
    }

    double levelShare() {
        return lengthMm == 0 ? 0 : levelMm / lengthMm;
    }

    /** The largest component, 0 to 255. */
    int brightness() {
        return Math.max(color().red(), Math.max(color().green(), color().blue()));
    }

    /** How colourful it is, 0 to 1: the span of its components by the largest. */
    double saturation() {
        int least = Math.min(color().red(), Math.min(color().green(), color().blue()));
        return brightness() == 0 ? 0 : (double) (brightness() - least) / brightness();
    }

    /** Its hue in degrees: red 0, green 120, blue 240. */
    double hue() {
        double y = Math.sqrt(3) * (color().green() - color().blue());
        double x = 2.0 * color().red() - color().green() - color().blue();
        return (Math.toDegrees(Math.atan2(y, x)) + 360) % 360;
    }
}
