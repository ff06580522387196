package org.adumbrate.prepare.lines;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.drawing.Layer;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.Stroke;
import org.adumbrate.linework.sort.ColorSort;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.Veil;

/**
 * The strokes of a sheet sorted by colour.
 *
 * @param byName the paths of each pen and of the veils that no pen draws the lines of, by that name
 * @param cut the paths of the cut's outline
 * @param heights the height lines
 * @param strays strokes of colours that nobody asked for, a layer for each colour and its shades, drawn as the file has them
 * @param findings colours that have no pen
 */
public record SortedLines(
        Map<String, LineSet> byName, LineSet cut, LineSet heights, List<Layer> strays, List<Finding> findings) {

    /** What a colour stands for. */
    private record Place(Kind kind, String name) {}

    private enum Kind {
        PEN,
        VEIL,
        CUT,
        HEIGHTS
    }

    /** By the files and the colours asked for, not by how these are drawn. */
    public static SortedLines of(Sheet sheet, LineFiles files, Run run) throws IOException {
        List<Object> from = new ArrayList<>(files.content());
        sheet.heights()
                .ifPresent(heights ->
                        from.add(List.of("heights", heights.color(), heights.lines(), run.digest(heights.lines()))));
        sheet.pens().forEach((name, pen) -> from.add(List.of("pen", name, pen.color())));
        sheet.cut().ifPresent(cut -> from.add(List.of("cut", cut.color())));
        sheet.veils().forEach((name, veil) -> {
            if (veil instanceof Veil.ByLines shown) {
                from.add(List.of("veil", name, shown.color(), shown.lines()));
                shown.lines().ifPresent(file -> from.add(run.digest(file)));
            }
        });
        return run.of(Part.SORTED_LINES, SortedLines.class, from, () -> sort(sheet, files));
    }

    private static SortedLines sort(Sheet sheet, LineFiles files) {
        Collector collector = new Collector(sheet);
        files.base().forEach(collector::addAll);
        sheet.veils().forEach((name, veil) -> {
            if (veil instanceof Veil.ByLines shown && files.veils().containsKey(name)) {
                collector.addColor(files.veils().get(name), shown.color());
            }
        });
        files.heights()
                .ifPresent(laid ->
                        collector.addColor(laid, sheet.heights().orElseThrow().color()));
        return collector.sorted();
    }

    private static final class Collector {
        private final boolean wantsPens;
        private final ColorSort<Place> colors;
        private final Map<String, String> penOfVeil = new HashMap<>();
        private final Map<Place, List<VectorPath<SheetPoint>>> sorted = new LinkedHashMap<>();
        private final StrayLines strays = new StrayLines();

        Collector(Sheet sheet) {
            Map<Place, Srgb> wanted = new LinkedHashMap<>();
            sheet.heights().ifPresent(heights -> wanted.put(new Place(Kind.HEIGHTS, ""), heights.color()));
            sheet.pens().forEach((name, pen) -> wanted.put(new Place(Kind.PEN, name), pen.color()));
            sheet.cut().ifPresent(cut -> wanted.put(new Place(Kind.CUT, ""), cut.color()));
            sheet.veils().forEach((name, veil) -> {
                if (veil instanceof Veil.ByLines shown) {
                    wanted.put(new Place(Kind.VEIL, name), shown.color());
                    VeilLines.pen(sheet, shown).ifPresent(pen -> penOfVeil.put(name, pen));
                }
            });
            this.colors = ColorSort.by(wanted);
            this.wantsPens = !sheet.pens().isEmpty();
        }

        void addAll(LaidLines laid) {
            for (Stroke stroke : laid.lines().strokes()) {
                VectorPath<SheetPoint> path = stroke.path().transform(laid.toSheet());
                Optional<Place> place = colors.of(stroke.color());
                if (place.isPresent()) {
                    add(place.get(), path);
                } else {
                    double widthMm = stroke.widthMm() * laid.toSheet().meanScale();
                    strays.add(stroke.color(), widthMm, path);
                }
            }
        }

        /** The lines of one colour only: what else the file shows, another file shows too. */
        void addColor(LaidLines laid, Srgb color) {
            for (Stroke stroke : laid.lines().strokes()) {
                if (stroke.color().distanceTo(color) <= ColorSort.TOLERANCE) {
                    colors.of(stroke.color())
                            .ifPresent(place -> add(place, stroke.path().transform(laid.toSheet())));
                }
            }
        }

        /** Lines of a veil may be a level nearer to its colour than to that of the pen that draws them. */
        private void add(Place place, VectorPath<SheetPoint> path) {
            boolean drawn = place.kind() == Kind.VEIL && penOfVeil.containsKey(place.name());
            Place by = drawn ? new Place(Kind.PEN, penOfVeil.get(place.name())) : place;
            sorted.computeIfAbsent(by, p -> new ArrayList<>()).add(path);
        }

        SortedLines sorted() {
            Map<String, List<VectorPath<SheetPoint>>> byName = new LinkedHashMap<>();
            sorted.forEach((place, paths) -> {
                if (place.kind() == Kind.PEN || place.kind() == Kind.VEIL) {
                    byName.computeIfAbsent(place.name(), name -> new ArrayList<>())
                            .addAll(paths);
                }
            });
            Map<String, LineSet> sets = new LinkedHashMap<>();
            byName.forEach((name, paths) -> sets.put(name, LineSet.of(paths)));
            return new SortedLines(
                    sets,
                    LineSet.of(sorted.getOrDefault(new Place(Kind.CUT, ""), List.of())),
                    LineSet.of(sorted.getOrDefault(new Place(Kind.HEIGHTS, ""), List.of())),
                    strays.layers(),
                    wantsPens ? strays.findings() : List.of());
        }
    }
}
