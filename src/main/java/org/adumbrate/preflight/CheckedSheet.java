package org.adumbrate.preflight;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.adumbrate.drawing.Layer;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.prepare.PreparedSheet;
import org.adumbrate.prepare.SheetDrawing;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.prepare.finding.Trouble;
import org.adumbrate.prepare.lines.KnownDepth;
import org.adumbrate.prepare.lines.KnownRegion;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.prepare.memory.StageClock;
import org.adumbrate.prepare.picture.HeldUnderlay;
import org.adumbrate.prepare.scene.StandingItem;
import org.adumbrate.sheetfile.Camera;
import org.adumbrate.sheetfile.Degrees;
import org.adumbrate.sheetfile.complaint.Complaint;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.reading.SheetFile;
import org.adumbrate.sheetfile.reading.SheetFileReader;

/**
 * A sheet made ready for delivery and not delivered: what will be printed, to be looked at before it is.
 *
 * @param asked the sheet file
 * @param size the sheet's size
 * @param dpi the resolution that it is printed at
 * @param passes the printed passes and where they lie, without those that are refused
 * @param layers what is drawn, in drawing order; nothing if something about it is refused
 * @param strokes how many strokes each pen draws, hidden ones too
 * @param floors where floors are seen by the floor's name, of those that say it
 * @param figures the figures, in the order of the sheet file
 * @param picture the underlay, if passes are printed
 * @param findings what the build finds
 * @param refusals why it would refuse
 */
record CheckedSheet(
        SheetFile asked,
        SheetSize size,
        double dpi,
        List<CheckedPass> passes,
        List<Layer> layers,
        Map<String, Integer> strokes,
        Map<String, KnownRegion> floors,
        List<CheckedFigure> figures,
        Optional<TonePicture> picture,
        List<Finding> findings,
        List<Complaint> refusals) {

    /** Coarse enough to be made at once, fine enough for the shade of a corner: a pixel is half a millimetre. */
    private static final double LOOK_DPI = 50;

    private static final long MOST_PIXELS = 4_000_000;

    /** Copies the collections. */
    public CheckedSheet {
        passes = List.copyOf(passes);
        layers = List.copyOf(layers);
        strokes = Map.copyOf(strokes);
        floors = Map.copyOf(floors);
        figures = List.copyOf(figures);
        findings = List.copyOf(findings);
        refusals = List.copyOf(refusals);
    }

    /**
     * Makes a sheet ready.
     *
     * @param file the sheet file
     * @param dpi the resolution; the sheet file's if absent
     * @throws Refusal if a page does not fit the sheet
     * @throws IOException if the sheet file cannot be followed or an input cannot be used
     */
    static CheckedSheet of(Path file, OptionalDouble dpi) throws IOException, Refusal {
        SheetFile asked = SheetFileReader.read(file);
        try (Run run = Memory.none().begin()) {
            PreparedSheet sheet = PreparedSheet.of(asked, run, new StageClock(StageClock.Listener.SILENT));
            return of(sheet, dpi.orElse(asked.sheet().resolution().dpi()), run);
        }
    }

    /**
     * What is checked of a prepared sheet.
     *
     * @param dpi the resolution that it is printed at
     * @param run knows the light of its passes that earlier looks held, and ends the work where it is superseded
     * @throws IOException if an input cannot be used
     */
    static CheckedSheet of(PreparedSheet sheet, double dpi, Run run) throws IOException {
        return new CheckedSheet(
                sheet.asked(),
                sheet.size(),
                dpi,
                sheet.passes().prepared().stream()
                        .map(pass -> new CheckedPass(pass.request().key(), pass.file(), pass.placement()))
                        .toList(),
                sheet.layers(),
                strokes(sheet),
                sheet.drawing().map(drawing -> drawing.regions().floors()).orElse(Map.of()),
                sheet.drawing().map(drawing -> figures(sheet, drawing)).orElse(List.of()),
                sheet.passes().isEmpty() ? Optional.empty() : Optional.of(picture(sheet, run)),
                sheet.remarks(),
                refusals(sheet));
    }

    private static Map<String, Integer> strokes(PreparedSheet sheet) {
        Map<String, Integer> strokes = new HashMap<>();
        sheet.sorted().byName().forEach((name, drawn) -> strokes.put(name, drawn.size()));
        return strokes;
    }

    private static List<Complaint> refusals(PreparedSheet sheet) throws IOException {
        List<Complaint> refusals = new ArrayList<>();
        for (Trouble trouble : sheet.troubles()) {
            if (trouble.cause() instanceof SheetFileFault fault) {
                refusals.addAll(fault.complaints());
            } else if (trouble.cause() instanceof IOException fault) {
                throw fault;
            } else {
                refusals.add(
                        sheet.asked().complaint(trouble.key(), trouble.cause().getMessage()));
            }
        }
        return refusals;
    }

    private static TonePicture picture(PreparedSheet sheet, Run run) throws IOException {
        double scale =
                Math.sqrt(MOST_PIXELS / (sheet.size().widthMm() * sheet.size().heightMm()));
        PixelSize size = sheet.size().pixelsAt(Math.min(LOOK_DPI, scale * Length.MM_PER_INCH));
        HeldUnderlay underlay = HeldUnderlay.of(sheet, Canvas.whole(sheet.size(), size), run);
        TonePicture picture = TonePicture.blank(sheet.size(), size, underlay.channels());
        underlay.blend(List.of(picture.sink()), 16);
        return picture;
    }

    private static List<CheckedFigure> figures(PreparedSheet sheet, SheetDrawing drawing) {
        double turn = sheet.asked()
                .sheet()
                .camera()
                .map(Camera::turn)
                .map(Degrees::radians)
                .orElse(0.0);
        return drawing.scene().entourage().figures().stream()
                .map(item -> figure(item, turn, drawing.scene().map()))
                .toList();
    }

    private static CheckedFigure figure(StandingItem item, double turn, Optional<KnownDepth> depth) {
        SheetPoint foot = item.figure().spot().foot();
        double stature = item.figure().stance().statureM();
        ModelPoint stands = item.figure().spot().model().orElseThrow();
        return new CheckedFigure(
                item.key(),
                item.figure().outline().name(),
                item.floor(),
                foot,
                stature,
                stature * item.figure().spot().mmPerMetre(),
                stands.x() * Math.sin(turn) + stands.y() * Math.cos(turn),
                depth.isPresent() ? OptionalDouble.of(depth.get().map().depthAt(foot)) : OptionalDouble.empty());
    }
}
