package org.adumbrate.build;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.Callable;
import org.adumbrate.drawing.DrawingOrder;
import org.adumbrate.drawing.Layer;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.LineSheets;
import org.adumbrate.linework.PageFit;
import org.adumbrate.registration.LinePattern;
import org.adumbrate.sheetfile.LineFile;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.SheetFile;
import org.adumbrate.sheetfile.SheetFileReader;

/** Builds everything that a sheet file asks to have delivered. */
public final class SheetBuild {
    private SheetBuild() {}

    /**
     * Runs a build.
     *
     * @param file the sheet file
     * @param only the items to deliver, by the sheet file's words; all if empty
     * @param dpi the underlay's resolution; the sheet file's if absent
     * @throws Refusal if a pass does not belong to the sheet, a page does not fit it, or an item is not known
     * @throws IOException if an input cannot be used or an output cannot be written
     */
    public static BuildResult run(Path file, Set<String> only, OptionalDouble dpi, Stages.Listener listener)
            throws IOException, Refusal {
        Stages stages = new Stages(listener);
        SheetFile asked = stages.run("sheet file", () -> SheetFileReader.read(file));
        Deliveries deliveries = Deliveries.of(asked, only);
        Sheet sheet = asked.sheet();
        Stages.Timer timer = stages.begin("lines");
        List<LineSheet> read = read(sheet.lines());
        SheetSize size = sheet.size().orElse(read.get(0).page());
        List<LaidLines> lines = lay(sheet.lines(), read, size);
        SortedLines sorted = SortedLines.of(sheet, lines);
        DrawingOrder order = LayerOrder.of(asked, sorted.strays(), List.of());
        timer.end();
        List<PassRequest> requests = SheetRequests.of(sheet.passes(), size);
        LinePattern pattern = pattern(lines);
        try (PassSet passes = PassSet.open(size, requests)) {
            passes.hold();
            timer = stages.begin("figures");
            SheetScene people = SheetScene.of(asked, size, lines, pattern);
            people.light().ifPresent(passes::join);
            timer.end();
            timer = stages.begin("registration");
            passes.prepare(requests.isEmpty() ? Optional.empty() : Optional.of(pattern));
            timer.end();
            double resolution = dpi.orElse(sheet.resolution().dpi());
            List<Layer> layers = new ArrayList<>(sorted.all());
            layers.addAll(people.entourage().layers());
            Delivery delivery = new Delivery(size, resolution, passes, order.sort(layers), stages);
            List<Output> outputs = delivery.deliver(deliveries);
            List<Finding> findings = new ArrayList<>(Unfinished.of(asked));
            findings.addAll(sorted.findings());
            findings.addAll(people.findings());
            findings.addAll(passes.findings(resolution));
            List<PassPlacement> placements = new ArrayList<>(passes.placements());
            people.depth().ifPresent(depth -> placements.add(new PassPlacement(depth.file(), depth.placement())));
            return new BuildResult(outputs, placements, findings, stages.seconds());
        }
    }

    private static List<LineSheet> read(List<LineFile> files) throws IOException {
        List<Callable<LineSheet>> tasks = new ArrayList<>();
        for (LineFile file : files) {
            tasks.add(() -> LineSheets.read(file.file()));
        }
        return InParallel.all(tasks);
    }

    private static List<LaidLines> lay(List<LineFile> files, List<LineSheet> read, SheetSize size) throws Refusal {
        List<LaidLines> lines = new ArrayList<>();
        for (int k = 0; k < files.size(); k++) {
            PageFit fit =
                    switch (files.get(k).fit()) {
                        case SCALE -> PageFit.SAME_RATIO;
                        case FIT -> PageFit.FIT;
                        case CROP -> PageFit.CROP;
                    };
            lines.add(LaidLines.of(read.get(k), size, fit));
        }
        return lines;
    }

    private static LinePattern pattern(List<LaidLines> lines) {
        List<VectorPath<SheetPoint>> paths = new ArrayList<>();
        lines.forEach(laid -> paths.addAll(laid.paths()));
        return LinePattern.of(paths);
    }
}
