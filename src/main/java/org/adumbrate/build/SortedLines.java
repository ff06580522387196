package org.adumbrate.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.adumbrate.drawing.DrawingOrder;
import org.adumbrate.drawing.Layer;
import org.adumbrate.drawing.Mark;
import org.adumbrate.drawing.Pen;
import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.Stroke;
import org.adumbrate.sheetfile.Cut;
import org.adumbrate.sheetfile.Sheet;

/**
 * The strokes of a sheet sorted by colour into the layers that are drawn: one for each pen, one for the cut's outline, and
 * one for each colour that nobody asked for, whose strokes are drawn as the file has them.
 *
 * @param strays those of colours that nobody asked for
 * @param asked the others
 * @param findings colours that have no pen
 */
record SortedLines(List<Layer> strays, List<Layer> asked, List<Finding> findings) {
    /** Exporters shift a colour by a level or two. */
    static final int TOLERANCE = 4;

    private static final double LEAST_WIDTH_MM = 0.05;

    /** Where strokes of a colour go: a name and a pen, or nowhere if they are hidden. */
    private record Place(String name, Srgb color, Optional<Pen> pen) {}

    static SortedLines of(Sheet sheet, List<LaidLines> lines) {
        List<Place> places = places(sheet);
        Map<String, List<VectorPath<SheetPoint>>> sorted = new LinkedHashMap<>();
        Map<Srgb, List<Stray>> strays = new TreeMap<>();
        for (LaidLines laid : lines) {
            for (Stroke stroke : laid.lines().strokes()) {
                VectorPath<SheetPoint> path = stroke.path().transform(laid.toSheet());
                Optional<Place> place = nearest(places, stroke.color());
                if (place.isPresent()) {
                    sorted.computeIfAbsent(place.get().name(), name -> new ArrayList<>())
                            .add(path);
                } else {
                    Stray stray = new Stray(stroke, laid.toSheet().meanScale(), path);
                    strays.computeIfAbsent(stroke.color(), color -> new ArrayList<>())
                            .add(stray);
                }
            }
        }
        List<Layer> strayLayers = new ArrayList<>();
        strays.forEach((color, strokes) -> strayLayers.add(asDrawn(color, strokes)));
        List<Layer> asked = new ArrayList<>();
        for (Place place : places) {
            if (place.pen().isPresent() && sorted.containsKey(place.name())) {
                asked.add(layer(place.name(), place.pen().get(), sorted.get(place.name())));
            }
        }
        return new SortedLines(strayLayers, asked, sheet.pens().isEmpty() ? List.of() : findings(strays));
    }

    /** All layers, in no order that matters. */
    List<Layer> all() {
        return Stream.concat(strays.stream(), asked.stream()).toList();
    }

    private static Layer layer(String name, Pen pen, List<VectorPath<SheetPoint>> paths) {
        return Layer.of(name, List.of(new Mark.Lines(pen, paths)));
    }

    private record Stray(Stroke stroke, double scale, VectorPath<SheetPoint> path) {}

    private static List<Place> places(Sheet sheet) {
        List<Place> places = new ArrayList<>();
        sheet.heights().ifPresent(heights -> places.add(new Place("height lines", heights.color(), Optional.empty())));
        sheet.pens().forEach((name, pen) -> places.add(new Place(name, pen.color(), penOf(pen))));
        sheet.cut().ifPresent(cut -> places.add(new Place(DrawingOrder.CUT_OUTLINE, cut.color(), outline(cut))));
        return places;
    }

    private static Optional<Pen> penOf(org.adumbrate.sheetfile.Pen pen) {
        if (pen.hidden()) {
            return Optional.empty();
        }
        Dash dash = new Dash(pen.dash().stream().map(Length::mm).toList(), 0);
        return Optional.of(new Pen(pen.weight().mm(), pen.ink(), dash, pen.cap().line(), pen.join()));
    }

    private static Optional<Pen> outline(Cut cut) {
        double width = cut.outline().mm();
        return width > 0 ? Optional.of(Pen.round(width, Srgb.BLACK)) : Optional.empty();
    }

    private static Optional<Place> nearest(List<Place> places, Srgb color) {
        Place best = null;
        for (Place place : places) {
            boolean nearer = best == null
                    || place.color().distanceTo(color) < best.color().distanceTo(color);
            if (nearer && place.color().distanceTo(color) <= TOLERANCE) {
                best = place;
            }
        }
        return Optional.ofNullable(best);
    }

    private static Layer asDrawn(Srgb color, List<Stray> strays) {
        double width = strays.stream()
                .mapToDouble(stray -> stray.stroke().widthMm() * stray.scale())
                .max()
                .orElse(0);
        return layer(
                "lines-" + color.toString().substring(1),
                Pen.round(Math.max(LEAST_WIDTH_MM, width), color),
                strays.stream().map(Stray::path).toList());
    }

    private static List<Finding> findings(Map<Srgb, List<Stray>> strays) {
        List<Finding> findings = new ArrayList<>();
        strays.forEach((color, strokes) -> findings.add(new Finding(
                Finding.Severity.WARNING,
                "pens: none for " + color + ", the colour of " + strokes.size()
                        + " strokes; they are drawn in their own colour and width; add a pen with color: \"" + color
                        + "\"")));
        return findings;
    }
}
