package org.adumbrate.delivery;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.PageFit;
import org.adumbrate.linework.read.LineSheets;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.prepare.lines.LaidLines;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.prepare.memory.StageClock;
import org.adumbrate.prepare.passes.PassRequest;
import org.adumbrate.prepare.passes.PassSet;
import org.adumbrate.raster.encode.PictureFormat;
import org.adumbrate.raster.encode.StripEncoder;

/** Merges passes into one underlay without a sheet file. */
public final class Merge {
    private Merge() {}

    /**
     * Runs a merge.
     *
     * @throws Refusal if a pass does not belong to the sheet, or an output is an input
     * @throws IOException if an input cannot be used or the output cannot be written
     */
    public static BuildResult run(MergeRequest request, StageClock.Listener listener) throws IOException, Refusal {
        try (Run run = Memory.none().begin()) {
            return run(request, listener, run);
        }
    }

    private static BuildResult run(MergeRequest request, StageClock.Listener listener, Run run)
            throws IOException, Refusal {
        StageClock stages = new StageClock(listener);
        request.claims().check();
        Optional<LaidLines> lines = Optional.empty();
        if (request.lines().isPresent()) {
            LineSheet read =
                    stages.run("lines", () -> LineSheets.read(request.lines().get()));
            lines = Optional.of(LaidLines.of(read, request.size().orElse(read.page()), PageFit.SAME_RATIO));
        }
        SheetSize sheet = lines.map(LaidLines::sheet).or(request::size).orElseThrow();
        boolean held = lines.isPresent() || request.passes().stream().anyMatch(PassRequest::measuresWhite);
        StageClock.Timer timer = stages.begin("registration");
        PassSet passes = PassSet.of(sheet, request.passes(), lines.map(laid -> laid.placing(run)), false, held, run)
                .orRaise();
        timer.end();
        Output output = stages.run("underlay", () -> write(passes, sheet, request, stages));
        List<Finding> findings = new ArrayList<>(passes.findings());
        findings.addAll(passes.softAt(request.dpi()));
        List<Finding> unkeyed = findings.stream().map(Finding::unkeyed).toList();
        return new BuildResult(List.of(output), passes.placements(), unkeyed, stages.seconds(), Map.of());
    }

    private static Output write(PassSet passes, SheetSize sheet, MergeRequest request, StageClock stages)
            throws IOException {
        PixelSize canvas = sheet.pixelsAt(request.dpi());
        PictureFormat format = Pictures.format(request.picture(), canvas, request.dpi(), passes.channels());
        Path file = request.picture().file();
        int stripRows = format.stripRows();
        try (StripEncoder encoder = Pictures.begin(file, format, stripRows)) {
            passes.blend(
                    Canvas.whole(sheet, canvas),
                    format.channels(),
                    List.of(encoder),
                    stripRows,
                    share -> stages.at("underlay", share));
            return new Output(file, "underlay", canvas, request.dpi(), encoder.finish());
        }
    }
}
