package org.adumbrate.proof.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.adumbrate.drawing.Layer;
import org.adumbrate.drawing.Mark;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.json.Json;
import org.adumbrate.prepare.PreparedSheet;

/** The colours of the line sheets for which there is no pen, the one with the longest lines first. */
public final class UnpennedJson {
    private UnpennedJson() {}

    private record Tally(String color, int strokes, double lengthMm) {}

    /** Those of a sheet; a colour and its shades are one. */
    public static List<Map<String, Object>> of(PreparedSheet sheet) {
        List<Tally> tallies = new ArrayList<>();
        for (Layer layer : sheet.sorted().strays()) {
            int strokes = 0;
            double length = 0;
            for (Mark mark : layer.marks()) {
                List<VectorPath<SheetPoint>> paths = ((Mark.Lines) mark).paths();
                strokes += paths.size();
                length += paths.stream().mapToDouble(VectorPath::length).sum();
            }
            // the layer is called lines-rrggbb after the shade drawn most
            tallies.add(new Tally("#" + layer.name().substring(layer.name().lastIndexOf('-') + 1), strokes, length));
        }
        return tallies.stream()
                .sorted((a, b) -> Double.compare(b.lengthMm(), a.lengthMm()))
                .map(tally -> Json.object(
                        "color", tally.color(),
                        "strokes", tally.strokes(),
                        "lengthMm", SheetPoints.rounded(tally.lengthMm())))
                .toList();
    }
}
