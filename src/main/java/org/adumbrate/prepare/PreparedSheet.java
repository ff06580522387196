package org.adumbrate.prepare;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.drawing.DrawingOrder;
import org.adumbrate.drawing.Layer;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.prepare.finding.Trouble;
import org.adumbrate.prepare.lines.CutDrawing;
import org.adumbrate.prepare.lines.LayerOrder;
import org.adumbrate.prepare.lines.LineFiles;
import org.adumbrate.prepare.lines.PenDrawing;
import org.adumbrate.prepare.lines.SortedLines;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.prepare.memory.SideTask;
import org.adumbrate.prepare.memory.StageClock;
import org.adumbrate.prepare.passes.PassPlacement;
import org.adumbrate.prepare.passes.PassRequest;
import org.adumbrate.prepare.passes.PassSet;
import org.adumbrate.prepare.passes.SheetRequests;
import org.adumbrate.prepare.scene.SheetScene;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.reading.SheetFile;

/**
 * One sheet made ready: its lines read and sorted, its passes placed, its camera fitted, everything drawn. Build, preflight,
 * report and the page are views of it. What cannot be made ready is a trouble beside what can. Never changed: an edit of
 * the sheet file gives another one, in which everything that the edit does not touch is the same object.
 *
 * @param asked the sheet file
 * @param files its line sheets
 * @param sorted their strokes by colour
 * @param passes the printed passes, joined by the light past figures
 * @param drawing all that is drawn over them; nothing where people cannot be placed, and then pens and cut are drawn alone
 * @param layers what is drawn, in drawing order
 * @param remarks what should be known of it at any resolution
 * @param troubles what cannot be shown, and why
 */
public record PreparedSheet(
        SheetFile asked,
        LineFiles files,
        SortedLines sorted,
        PassSet passes,
        Optional<SheetDrawing> drawing,
        List<Layer> layers,
        List<Finding> remarks,
        List<Trouble> troubles) {

    /** Copies the lists. */
    public PreparedSheet {
        layers = List.copyOf(layers);
        remarks = List.copyOf(remarks);
        troubles = List.copyOf(troubles);
    }

    /**
     * Makes a sheet ready.
     *
     * @param run knows what has not changed
     * @param clock times the stages
     * @throws Refusal if a page does not fit the sheet
     * @throws IOException if a line sheet cannot be used, or the drawing order is not one
     */
    public static PreparedSheet of(SheetFile asked, Run run, StageClock clock) throws IOException, Refusal {
        Sheet sheet = asked.sheet();
        StageClock.Timer timer = clock.begin("lines");
        LineFiles files = LineFiles.read(sheet, run);
        SortedLines sorted = SortedLines.of(sheet, files, run);
        DrawingOrder order = LayerOrder.of(asked, sorted.strays(), sheet.order());
        timer.end();
        timer = clock.begin("registration and drawing");
        SideTask<Drawn> drawn = SideTask.begin("drawing", () -> Drawn.of(asked, files, sorted, run));
        List<PassRequest> requests = SheetRequests.of(sheet.passes(), files.sheet());
        PassSet passes = PassSet.of(
                files.sheet(),
                requests,
                requests.isEmpty() ? Optional.empty() : Optional.of(files.placing(run)),
                SheetScene.castsShadows(sheet),
                true,
                run);
        Drawn drawing = drawn.result();
        timer.end();
        List<Trouble> troubles = new ArrayList<>(passes.troubles());
        drawing.trouble().ifPresent(troubles::add);
        List<Finding> remarks = new ArrayList<>(files.findings());
        remarks.addAll(sorted.findings());
        remarks.addAll(drawing.findings());
        remarks.addAll(passes.findings());
        return new PreparedSheet(
                asked,
                files,
                sorted,
                passes.with(drawing.whole().flatMap(all -> all.scene().light())),
                drawing.whole(),
                order.sort(drawing.layers()),
                remarks,
                troubles);
    }

    /**
     * The lines of a sheet in their pens and the cut, made ready long before the rest: without passes, and with nobody in it. It is something
     * to look at meanwhile, and says of no trouble but those of the lines.
     *
     * @param run knows what has not changed
     * @throws Refusal if a page does not fit the sheet
     * @throws IOException if a line sheet cannot be used, or the drawing order is not one
     */
    public static PreparedSheet linesAlone(SheetFile asked, Run run) throws IOException, Refusal {
        Sheet sheet = asked.sheet();
        LineFiles files = LineFiles.read(sheet, run);
        SortedLines sorted = SortedLines.of(sheet, files, run);
        DrawingOrder order = LayerOrder.of(asked, sorted.strays(), sheet.order());
        PassSet none = new PassSet(List.of(), List.of(), Optional.empty());
        List<Layer> layers =
                Drawn.linesAlone(sheet, files, sorted, Optional.empty(), run).layers();
        return new PreparedSheet(
                asked, files, sorted, none, Optional.empty(), order.sort(layers), List.of(), List.of());
    }

    /**
     * The size of a sheet, as stated or that of its first line sheet, known long before the rest.
     *
     * @param run knows what has not changed
     * @throws Refusal if a page does not fit the sheet
     * @throws IOException if a line sheet cannot be used
     */
    public static SheetSize size(SheetFile asked, Run run) throws IOException, Refusal {
        Sheet sheet = asked.sheet();
        return sheet.size().isPresent()
                ? sheet.size().get()
                : LineFiles.read(sheet, run).sheet();
    }

    /** The sheet's size. */
    public SheetSize size() {
        return files.sheet();
    }

    /** By what the underlay is known, whatever it is packed as. */
    public List<Object> underlayContent() {
        return List.of(size(), asked.sheet().passes(), passes.content());
    }

    /** Where passes lie, the depth pass last. */
    public List<PassPlacement> placements() {
        List<PassPlacement> placements = new ArrayList<>(passes.placements());
        drawing.flatMap(all -> all.scene().depth())
                .ifPresent(depth -> placements.add(new PassPlacement(depth.file(), depth.placement())));
        return placements;
    }

    /** What should be known before it is printed at a resolution. */
    public List<Finding> findings(double dpi) {
        List<Finding> findings = new ArrayList<>(remarks);
        findings.addAll(passes.softAt(dpi));
        return findings;
    }

    /** The same, for whoever wants all of it or nothing: the first trouble is thrown. */
    public PreparedSheet orRaise() throws IOException, Refusal {
        if (!troubles.isEmpty()) {
            Trouble first = troubles.get(0);
            if (first.cause() instanceof Refusal refusal && !refusal.key().isEmpty()) {
                // what the sheet file states: said where it stands, as a complaint is
                throw new Refusal(
                        refusal.key(),
                        asked.complaint(refusal.key(), refusal.getMessage()).toString());
            }
            first.raise();
        }
        return this;
    }

    /** What is drawn over the underlay, or what is left of it where people cannot be placed. */
    private record Drawn(
            Optional<SheetDrawing> whole, List<Layer> layers, List<Finding> findings, Optional<Trouble> trouble) {
        static Drawn of(SheetFile asked, LineFiles files, SortedLines sorted, Run run) throws IOException {
            try {
                SheetDrawing drawing = SheetDrawing.of(asked, files, sorted, run);
                return new Drawn(Optional.of(drawing), drawing.layers(), drawing.findings(), Optional.empty());
            } catch (InterruptedIOException ended) {
                throw ended;
            } catch (IOException | Refusal reason) {
                return linesAlone(
                        asked.sheet(),
                        files,
                        sorted,
                        Optional.of(new Trouble(key(asked.sheet(), reason), reason)),
                        run);
            }
        }

        private static String key(Sheet sheet, Exception reason) {
            if (reason instanceof Refusal refusal && !refusal.key().isEmpty()) {
                return refusal.key();
            }
            return sheet.figures().isEmpty() ? "passes.depth" : "figures";
        }

        static Drawn linesAlone(Sheet sheet, LineFiles files, SortedLines sorted, Optional<Trouble> trouble, Run run)
                throws IOException {
            PenDrawing pens = PenDrawing.of(sheet, sorted, Optional.empty(), run);
            List<Layer> layers = new ArrayList<>(sorted.strays());
            layers.addAll(pens.layers());
            List<Finding> findings = new ArrayList<>(pens.findings());
            if (sheet.cut().isPresent()) {
                CutDrawing cut = CutDrawing.of(sheet.cut().get(), sorted, files.sheet(), run);
                layers.addAll(cut.layers());
                findings.addAll(cut.findings());
            }
            return new Drawn(Optional.empty(), layers, findings, trouble);
        }
    }
}
