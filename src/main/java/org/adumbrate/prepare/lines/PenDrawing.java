package org.adumbrate.prepare.lines;

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
import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.linework.cleanup.CleanUpCounts;
import org.adumbrate.linework.cleanup.CleanUpSettings;
import org.adumbrate.linework.profile.DepthSpan;
import org.adumbrate.linework.profile.DepthWeight;
import org.adumbrate.linework.profile.Fade;
import org.adumbrate.linework.profile.WeightedLines;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.prepare.memory.InParallel;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.sheetfile.CleanUpLimits;
import org.adumbrate.sheetfile.PenRole;
import org.adumbrate.sheetfile.PenStyle;
import org.adumbrate.sheetfile.Percent;
import org.adumbrate.sheetfile.Sheet;

/**
 * The lines of the pens as they are drawn, cleaned for the size that they are printed at.
 *
 * @param layers one for each pen that draws, one for each veil whose lines no pen draws, and a hidden one of height lines
 * @param lines the cleaned lines by the pen's name
 * @param findings what was cleaned
 */
public record PenDrawing(List<Layer> layers, Map<String, CleanLines> lines, List<Finding> findings) {
    /** Height lines are there to be looked at when they are switched on. */
    private static final double HEIGHTS_MM = 0.18;

    /** Depth is looked up so far around a line, in mm. */
    private static final double REACH_MM = 0.35;

    /**
     * The lines of all pens as they are drawn.
     *
     * @param depth how far everything is, for pens that fade with it
     */
    public static PenDrawing of(Sheet sheet, SortedLines sorted, Optional<KnownDepth> depth, Run run)
            throws IOException {
        CleanUpSettings settings = settings(sheet.cleanUp());
        List<String> names = sorted.byName().keySet().stream()
                .filter(name -> !isHidden(sheet, name))
                .toList();
        List<Callable<CleanLines>> tasks = new ArrayList<>();
        names.forEach(name -> tasks.add(() -> CleanLines.of(sorted.byName().get(name), settings, run)));
        List<CleanLines> cleaned = InParallel.all(tasks);
        Map<String, CleanLines> lines = new LinkedHashMap<>();
        CleanUpCounts counts = CleanUpCounts.NONE;
        for (int k = 0; k < names.size(); k++) {
            lines.put(names.get(k), cleaned.get(k));
            counts = counts.plus(cleaned.get(k).counts());
        }
        Optional<DepthSpan> span = span(sheet, lines, depth, run);
        List<Layer> layers = new ArrayList<>();
        for (String name : names) {
            Optional<Fade> fade = span.flatMap(known -> fade(sheet, name, known));
            layers.add(
                    fade.isPresent()
                            ? faded(sheet, name, lines.get(name), depth.orElseThrow(), fade.get(), run)
                            : plain(name, key(sheet, name), pen(sheet, name), lines.get(name), run));
        }
        if (!sorted.heights().isEmpty()) {
            Pen pen = Pen.round(HEIGHTS_MM, sheet.heights().orElseThrow().color());
            layers.add(Layer.of(
                            DrawingOrder.HEIGHTS,
                            List.of(new Mark.Lines(
                                    "heights", pen, sorted.heights().paths())))
                    .hidden());
        }
        return new PenDrawing(layers, lines, told(counts));
    }

    private static Layer plain(String name, String key, Pen pen, CleanLines lines, Run run) throws IOException {
        return run.of(
                Part.LAYERS,
                Layer.class,
                List.of(name, key, pen, lines.content()),
                () -> Layer.of(name, List.of(new Mark.Lines(key, pen, lines.paths()))));
    }

    /** From where to where the lines of all pens that fade reach, so that these fade alike. */
    private static Optional<DepthSpan> span(
            Sheet sheet, Map<String, CleanLines> lines, Optional<KnownDepth> depth, Run run) throws IOException {
        List<CleanLines> fading = lines.entrySet().stream()
                .filter(pen -> least(sheet, pen.getKey()).isPresent())
                .map(Map.Entry::getValue)
                .toList();
        if (depth.isEmpty() || fading.isEmpty()) {
            return Optional.empty();
        }
        return run.of(
                        Part.DEPTH_OF_PENS,
                        Reach.class,
                        List.of(
                                depth.get().content(),
                                fading.stream().map(CleanLines::content).toList()),
                        () -> new Reach(DepthSpan.of(
                                fading.stream()
                                        .flatMap(pen -> pen.paths().stream())
                                        .toList(),
                                depth.get().field(),
                                REACH_MM)))
                .span();
    }

    /** How far lines reach in depth, if that can be told. */
    private record Reach(Optional<DepthSpan> span) {}

    /** Lines by how far they fade. */
    private record FadedLines(List<WeightedLines> shares) {}

    private static Optional<Percent> least(Sheet sheet, String name) {
        return Optional.ofNullable(sheet.pens().get(name)).flatMap(PenStyle::fades);
    }

    private static Optional<Fade> fade(Sheet sheet, String name, DepthSpan span) {
        return least(sheet, name).map(least -> new Fade(span.nearM(), span.farM(), least.share(), REACH_MM));
    }

    private static Layer faded(Sheet sheet, String name, CleanLines lines, KnownDepth depth, Fade fade, Run run)
            throws IOException {
        Pen pen = pen(sheet, name);
        String key = key(sheet, name);
        List<Object> content = List.of(depth.content(), lines.content(), fade);
        return run.of(Part.LAYERS, Layer.class, List.of(name, key, pen, content), () -> {
            FadedLines faded = run.of(
                    Part.FADED_PENS,
                    FadedLines.class,
                    content,
                    () -> new FadedLines(DepthWeight.of(lines.paths(), depth.field(), fade)));
            return Layer.of(
                    name,
                    faded.shares().stream()
                            .map(weighted -> (Mark) new Mark.Lines(key, pen.scaled(weighted.share()), weighted.paths()))
                            .toList());
        });
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

    /** What asks for the lines of a name: a pen, or a veil whose lines no pen draws. */
    private static String key(Sheet sheet, String name) {
        return (sheet.pens().containsKey(name) ? "pens." : "veils.") + name;
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
                        "clean-up",
                        "clean-up: %d doubled pieces merged, %d pieces joined, %d specks dropped, %d crowded stretches thinned"
                                .formatted(counts.merged(), counts.joined(), counts.dropped(), counts.thinned())));
    }
}
