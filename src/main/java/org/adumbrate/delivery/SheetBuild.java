package org.adumbrate.delivery;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Frame;
import org.adumbrate.prepare.PreparedSheet;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.prepare.lines.LineFiles;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.prepare.memory.StageClock;
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
     * @param report makes the report, if one is wanted
     * @throws Refusal if a pass does not belong to the sheet, a page does not fit it, an item is not known, or files
     *     clash
     * @throws IOException if an input cannot be used or an output cannot be written
     */
    public static BuildResult run(
            Path file, Set<String> only, OptionalDouble dpi, StageClock.Listener listener, ClosingReport.Maker report)
            throws IOException, Refusal {
        return run(file, only, dpi, Optional.empty(), listener, Memory.none(), report);
    }

    /**
     * Runs a build that makes nothing anew that was kept from earlier ones; what it delivers is the same as if it did.
     *
     * @param file the sheet file
     * @param only the items to deliver, by the sheet file's words; all if empty
     * @param dpi the underlay's resolution; the sheet file's if absent
     * @param window the part of the sheet that is delivered alone, as {@code NAME-window}; the whole if absent
     * @param memory knows what earlier builds made, and will know what this one makes
     * @param report makes the report, if one is wanted
     * @throws Refusal if a pass does not belong to the sheet, a page does not fit it, an item is not known, or files
     *     clash
     * @throws IOException if an input cannot be used or an output cannot be written
     */
    public static BuildResult run(
            Path file,
            Set<String> only,
            OptionalDouble dpi,
            Optional<Frame> window,
            StageClock.Listener listener,
            Memory memory,
            ClosingReport.Maker report)
            throws IOException, Refusal {
        try (Run run = memory.begin()) {
            return run(file, only, dpi, window, listener, run, report);
        }
    }

    /**
     * As above, in a run that somebody else ends.
     *
     * @throws org.adumbrate.prepare.memory.Superseded if the run is superseded; what was delivered by then is whole, and the rest
     *     is as it was
     */
    public static BuildResult run(
            Path file,
            Set<String> only,
            OptionalDouble dpi,
            Optional<Frame> window,
            StageClock.Listener listener,
            Run run,
            ClosingReport.Maker report)
            throws IOException, Refusal {
        return build(
                file, only, dpi, window.map(frame -> new Detail(frame, dpi)), new StageClock(listener), run, report);
    }

    private static BuildResult build(
            Path file,
            Set<String> only,
            OptionalDouble dpi,
            Optional<Detail> detail,
            StageClock clock,
            Run run,
            ClosingReport.Maker report)
            throws IOException, Refusal {
        SheetFile asked = clock.run("sheet file", () -> SheetFileReader.read(file));
        Deliveries deliveries = Deliveries.of(asked, only);
        SheetClaims.building(asked, deliveries, detail.isPresent()).check();
        run.outputsIn(asked.sheet().deliver().files().get(0).toAbsolutePath().getParent());
        if (detail.isPresent()) {
            detail.get().check(deliveries, LineFiles.read(asked.sheet(), run).sheet());
        }
        PreparedSheet sheet = PreparedSheet.of(asked, run, clock).orRaise();
        double resolution = dpi.orElse(asked.sheet().resolution().dpi());
        Delivery delivery = Delivery.of(sheet, resolution, clock, run);
        List<Output> outputs = new ArrayList<>(
                detail.isPresent() ? delivery.deliver(deliveries, detail.get()) : delivery.deliver(deliveries));
        List<Finding> findings = new ArrayList<>(sheet.findings(resolution));
        detail.flatMap(part -> part.cut(sheet.size())).ifPresent(findings::add);
        if (deliveries.report().isPresent()) {
            ClosingReport closing = report.of(sheet, resolution, run);
            outputs.add(
                    clock.run("report", () -> closing.write(deliveries.report().get(), outputs, findings)));
        }
        return new BuildResult(outputs, sheet.placements(), findings, clock.seconds(), run.account());
    }
}
