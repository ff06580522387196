package org.adumbrate.build;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.adumbrate.drawing.DrawingOrder;
import org.adumbrate.drawing.Layer;
import org.adumbrate.drawing.Mark;
import org.adumbrate.drawing.Pen;
import org.adumbrate.figure.depth.DepthMap;
import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.cleanup.CleanUp;
import org.adumbrate.linework.cleanup.CleanUpCounts;
import org.adumbrate.linework.cleanup.CleanUpSettings;
import org.adumbrate.linework.cleanup.Cleaned;
import org.adumbrate.linework.profile.DepthSpan;
import org.adumbrate.linework.profile.DepthWeight;
import org.adumbrate.linework.profile.Fade;
import org.adumbrate.sheetfile.CleanUpLimits;
import org.adumbrate.sheetfile.PenRole;
import org.adumbrate.sheetfile.PenStyle;
import org.adumbrate.sheetfile.Percent;
import org.adumbrate.sheetfile.Sheet;

/**
 * The lines of the pens as they are drawn, cleaned for the size that they are printed at.
 *
 * @param layers one for each pen that draws, one for each veil whose lines no pen draws, and a hidden one of height lines
 * @param paths the cleaned lines by the pen's name
 * @param findings what was cleaned
 */
record PenDrawing(List<Layer> layers, Map<String, List<VectorPath<SheetPoint>>> paths, List<Finding> findings) {
    /** Height lines are there to be looked at when they are switched on. */
    private static final double HEIGHTS_MM = 0.18;

    /** Depth is looked up so far around a line, in mm. */
    private static final double REACH_MM = 0.35;

    /**
     * @param depth how far everything is, for pens that fade with it
     * @param stages knows lines that were cleaned before
     */
    static PenDrawing of(Sheet sheet, SortedLines sorted, Optional<DepthMap> depth, SheetStages stages)
            throws IOException {
        CleanUpSettings settings = settings(sheet.cleanUp());
        List<String> names = sorted.byName().keySet().stream()
                .filter(name -> !isHidden(sheet, name))
                .toList();
        List<Callable<Cleaned>> tasks = new ArrayList<>();
        names.forEach(name -> tasks.add(() ->
                stages.cleaned(name, settings, () -> CleanUp.run(sorted.byName().get(name), settings))));
        List<Cleaned> cleaned = InParallel.all(tasks);
        List<Layer> layers = new ArrayList<>();
        Map<String, List<VectorPath<SheetPoint>>> paths = new LinkedHashMap<>();
        CleanUpCounts counts = CleanUpCounts.NONE;
        for (int k = 0; k < names.size(); k++) {
            paths.put(names.get(k), cleaned.get(k).paths());
            counts = counts.plus(cleaned.get(k).counts());
        }
        Optional<DepthSpan> span = span(sheet, paths, depth, stages);
        for (String name : names) {
            Optional<Fade> fade = span.flatMap(known -> fade(sheet, name, known));
            layers.add(Layer.of(
                    name,
                    fade.isPresent()
                            ? faded(sheet, name, paths.get(name), depth.orElseThrow(), fade.get(), stages)
                            : List.of(new Mark.Lines(pen(sheet, name), paths.get(name)))));
        }
        if (!sorted.heights().isEmpty()) {
            Pen pen = Pen.round(HEIGHTS_MM, sheet.heights().orElseThrow().color());
            layers.add(Layer.of(DrawingOrder.HEIGHTS, List.of(new Mark.Lines(pen, sorted.heights())))
                    .hidden());
        }
        return new PenDrawing(layers, paths, told(counts));
    }

    /** From where to where the lines of all pens that fade reach, so that these fade alike. */
    private static Optional<DepthSpan> span(
            Sheet sheet, Map<String, List<VectorPath<SheetPoint>>> paths, Optional<DepthMap> depth, SheetStages stages)
            throws IOException {
        List<String> fading = paths.keySet().stream()
                .filter(name -> least(sheet, name).isPresent())
                .toList();
        if (depth.isEmpty() || fading.isEmpty()) {
            return Optional.empty();
        }
        List<VectorPath<SheetPoint>> all =
                fading.stream().flatMap(name -> paths.get(name).stream()).toList();
        return stages.span(
                fading,
                settings(sheet.cleanUp()),
                () -> DepthSpan.of(all, ProfileDrawing.field(depth.get()), REACH_MM));
    }

    private static Optional<Percent> least(Sheet sheet, String name) {
        return Optional.ofNullable(sheet.pens().get(name)).flatMap(PenStyle::fades);
    }

    private static Optional<Fade> fade(Sheet sheet, String name, DepthSpan span) {
        return least(sheet, name).map(least -> new Fade(span.nearM(), span.farM(), least.share(), REACH_MM));
    }

    private static List<Mark> faded(
            Sheet sheet, String name, List<VectorPath<SheetPoint>> paths, DepthMap depth, Fade fade, SheetStages stages)
            throws IOException {
        Pen pen = pen(sheet, name);
        return stages
                .faded(
                        name,
                        settings(sheet.cleanUp()),
                        fade,
                        () -> DepthWeight.of(paths, ProfileDrawing.field(depth), fade))
                .stream()
                .map(lines -> (Mark) new Mark.Lines(pen.scaled(lines.share()), lines.paths()))
                .toList();
    }

    /** What is cleaned, in mm. */
    static CleanUpSettings settings(CleanUpLimits asked) {
        return asked.on()
                ? new CleanUpSettings(
                        asked.duplicates().mm(),
                        asked.join().mm(),
                        asked.shortest().mm(),
                        asked.clutter().mm())
                : CleanUpSettings.OFF;
    }

    private static boolean isHidden(Sheet sheet, String name) {
        return sheet.pens().containsKey(name) && sheet.pens().get(name).hidden();
    }

    /** The pen of a name; lines of a veil that no pen draws are drawn as planting is. */
    private static Pen pen(Sheet sheet, String name) {
        PenStyle asked = sheet.pens().get(name);
        if (asked == null) {
            return Pen.round(PenRole.PLANTING.width().mm(), Srgb.BLACK);
        }
        Dash dash = new Dash(asked.dash().stream().map(Length::mm).toList(), 0);
        return new Pen(asked.weight().mm(), asked.ink(), dash, asked.cap().line(), asked.join());
    }

    private static List<Finding> told(CleanUpCounts counts) {
        return counts.equals(CleanUpCounts.NONE)
                ? List.of()
                : List.of(new Finding(
                        Finding.Severity.NOTE,
                        "clean-up: %d doubled pieces merged, %d pieces joined, %d specks dropped, %d crowded stretches thinned"
                                .formatted(counts.merged(), counts.joined(), counts.dropped(), counts.thinned())));
    }
}
