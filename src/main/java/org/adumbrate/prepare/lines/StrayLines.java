package org.adumbrate.prepare.lines;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.adumbrate.drawing.Layer;
import org.adumbrate.drawing.Mark;
import org.adumbrate.drawing.Pen;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.sort.ColorSort;
import org.adumbrate.linework.sort.ColorTally;
import org.adumbrate.prepare.finding.Finding;

/** Collects the lines of colours that nobody asked for. Shades of one colour are one layer, named by the shade drawn most. */
final class StrayLines {
    /** The line sheets asked for them. */
    private static final String KEY = "lines";

    private static final double LEAST_WIDTH_MM = 0.05;

    private final Map<Srgb, Shade> shades = new HashMap<>();

    private static final class Shade {
        private final List<VectorPath<SheetPoint>> paths = new ArrayList<>();
        private double widthMm = LEAST_WIDTH_MM;
        private double lengthMm;
    }

    /** @param widthMm as the file has it, in mm of the sheet */
    void add(Srgb color, double widthMm, VectorPath<SheetPoint> path) {
        Shade shade = shades.computeIfAbsent(color, c -> new Shade());
        shade.paths.add(path);
        shade.widthMm = Math.max(shade.widthMm, widthMm);
        shade.lengthMm += path.length();
    }

    /** A layer for each colour, with every shade drawn as the file has it. */
    List<Layer> layers() {
        List<Layer> layers = new ArrayList<>();
        families()
                .forEach((head, family) -> layers.add(Layer.of(
                        "lines-" + head.toString().substring(1),
                        family.stream().map(this::asDrawn).toList())));
        return layers;
    }

    private Mark asDrawn(Srgb color) {
        Shade shade = shades.get(color);
        return new Mark.Lines(KEY, Pen.round(shade.widthMm, color), shade.paths);
    }

    /** What there is to say of each colour. */
    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        families()
                .forEach((head, family) ->
                        findings.add(new Finding(Finding.Severity.WARNING, "pens", told(head, family))));
        return findings;
    }

    private String told(Srgb head, List<Srgb> family) {
        int others = family.size() - 1;
        String shaded = others == 0 ? "" : others == 1 ? " and a shade of it" : " and " + others + " shades of it";
        int strokes = family.stream()
                .mapToInt(color -> shades.get(color).paths.size())
                .sum();
        double lengthMm =
                family.stream().mapToDouble(color -> shades.get(color).lengthMm).sum();
        return String.format(
                Locale.ROOT,
                "pens: none for %s%s, the colour of %d %s, %.0f mm in all; they are drawn in their own colour and width;"
                        + " add a pen with color: \"%s\"",
                head,
                shaded,
                strokes,
                strokes == 1 ? "stroke" : "strokes",
                lengthMm,
                head);
    }

    /** By the shade drawn most, which comes first in its family. */
    private Map<Srgb, List<Srgb>> families() {
        List<ColorTally> tallies = new ArrayList<>();
        shades.forEach((color, shade) -> tallies.add(new ColorTally(color, shade.paths.size(), shade.lengthMm)));
        tallies.sort(ColorTally.LONGEST_FIRST);
        Map<Srgb, List<Srgb>> families = new TreeMap<>();
        ColorSort.families(tallies).forEach((color, head) -> families.computeIfAbsent(head, h -> new ArrayList<>())
                .add(color));
        return families;
    }
}
