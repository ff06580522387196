package org.adumbrate.build;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.adumbrate.drawing.DrawingOrder;
import org.adumbrate.drawing.Layer;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Frame;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.registration.LinePattern;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.reading.SheetFile;
import org.adumbrate.sheetfile.reading.SheetFileReader;

/** Builds everything that a sheet file asks to have delivered. */
public final class SheetBuild {
    private SheetBuild() {}

    /**
     * Runs a build.
     *
     * @param file the sheet file
     * @param only the items to deliver, by the sheet file's words; all if empty
     * @param dpi the underlay's resolution; the sheet file's if absent
     * @throws Refusal if a pass does not belong to the sheet, a page does not fit it, an item is not known, or files
     *     clash
     * @throws IOException if an input cannot be used or an output cannot be written
     */
    public static BuildResult run(Path file, Set<String> only, OptionalDouble dpi, Stages.Listener listener)
            throws IOException, Refusal {
        return run(file, only, dpi, Optional.empty(), listener, Reuse.none());
    }

    /**
     * Runs a build that makes nothing anew that was kept from earlier ones; what it delivers is the same as if it did.
     *
     * @param file the sheet file
     * @param only the items to deliver, by the sheet file's words; all if empty
     * @param dpi the underlay's resolution; the sheet file's if absent
     * @param window the part of the sheet that is delivered alone, as {@code NAME-window}; the whole if absent
     * @param reuse what earlier builds made, and this one will have made
     * @throws Refusal if a pass does not belong to the sheet, a page does not fit it, an item is not known, or files
     *     clash
     * @throws IOException if an input cannot be used or an output cannot be written
     */
    public static BuildResult run(
            Path file,
            Set<String> only,
            OptionalDouble dpi,
            Optional<Frame> window,
            Stages.Listener listener,
            Reuse reuse)
            throws IOException, Refusal {
        reuse.begin();
        try {
            return build(file, only, dpi, window.map(frame -> new Detail(frame, dpi)), new Stages(listener), reuse);
        } finally {
            reuse.end();
        }
    }

    private static BuildResult build(
            Path file, Set<String> only, OptionalDouble dpi, Optional<Detail> detail, Stages stages, Reuse reuse)
            throws IOException, Refusal {
        SheetFile asked = stages.run("sheet file", () -> SheetFileReader.read(file));
        Deliveries deliveries = Deliveries.of(asked, only);
        SheetClaims.building(asked, deliveries, detail.isPresent()).check();
        Sheet sheet = asked.sheet();
        reuse.outputsIn(sheet.deliver().files().get(0).toAbsolutePath().getParent());
        Stages.Timer timer = stages.begin("lines");
        LineFiles files = LineFiles.read(sheet, reuse);
        SheetSize size = files.sheet();
        if (detail.isPresent()) {
            detail.get().check(deliveries, size);
        }
        SheetStages made = SheetStages.of(sheet, size, reuse);
        SortedLines sorted = made.sorted(() -> SortedLines.of(sheet, files));
        DrawingOrder order = LayerOrder.of(asked, sorted.strays(), sheet.order());
        timer.end();
        List<PassRequest> requests = SheetRequests.of(sheet.passes(), size);
        Optional<LinePattern> pattern =
                requests.isEmpty() && sheet.passes().depth().isEmpty()
                        ? Optional.empty()
                        : Optional.of(made.pattern(() -> pattern(files.base())));
        try (PassSet passes = PassSet.open(size, requests)) {
            passes.hold();
            timer = stages.begin("registration and drawing");
            Optional<LinePattern> places = requests.isEmpty() ? Optional.empty() : pattern;
            SideTask<SheetDrawing> drawn =
                    SideTask.begin("drawing", () -> SheetDrawing.of(asked, files, sorted, pattern, made));
            passes.prepare(places, SheetScene.castsShadows(sheet), made);
            SheetDrawing drawing = drawn.result();
            drawing.scene().light().ifPresent(passes::join);
            timer.end();
            double resolution = dpi.orElse(sheet.resolution().dpi());
            List<Layer> layers = order.sort(drawing.layers());
            Delivery delivery = new Delivery(size, resolution, passes, layers, stages, made);
            List<Output> outputs = new ArrayList<>(
                    detail.isPresent() ? delivery.deliver(deliveries, detail.get()) : delivery.deliver(deliveries));
            List<Finding> findings = new ArrayList<>(sorted.findings());
            findings.addAll(drawing.findings());
            findings.addAll(passes.findings(resolution));
            detail.flatMap(part -> part.cut(size)).ifPresent(findings::add);
            if (deliveries.report().isPresent()) {
                SheetReport report = new SheetReport(asked, size, resolution, passes, drawing, layers, pattern);
                outputs.add(stages.run(
                        "report", () -> report.write(deliveries.report().get(), outputs, findings)));
            }
            List<PassPlacement> placements = new ArrayList<>(passes.placements());
            drawing.scene()
                    .depth()
                    .ifPresent(depth -> placements.add(new PassPlacement(depth.file(), depth.placement())));
            return new BuildResult(outputs, placements, findings, stages.seconds(), reuse.account());
        }
    }

    private static LinePattern pattern(List<LaidLines> lines) {
        List<VectorPath<SheetPoint>> paths = new ArrayList<>();
        lines.forEach(laid -> paths.addAll(laid.paths()));
        return LinePattern.of(paths);
    }
}
