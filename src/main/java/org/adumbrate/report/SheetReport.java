package org.adumbrate.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.adumbrate.delivery.ClosingReport;
import org.adumbrate.delivery.Output;
import org.adumbrate.fault.Refusal;
import org.adumbrate.perspective.VanishingPoints;
import org.adumbrate.perspective.View;
import org.adumbrate.prepare.PreparedSheet;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.prepare.scene.SheetCamera;
import org.adumbrate.prepare.scene.SheetScene;
import org.adumbrate.prepare.scene.SheetSun;
import org.adumbrate.registration.LinePattern;
import org.adumbrate.report.page.Perspective;
import org.adumbrate.report.page.Picture;
import org.adumbrate.report.page.Remark;
import org.adumbrate.report.page.Report;
import org.adumbrate.report.page.Sunlight;
import org.adumbrate.report.page.WrittenFile;
import org.adumbrate.sheetfile.Degrees;
import org.adumbrate.sheetfile.Sun;

/**
 * Gathers what the report of a sheet shows.
 *
 * @param prepared the sheet
 * @param dpi the resolution that it is built at
 * @param run knows what was made of it
 */
public record SheetReport(PreparedSheet prepared, double dpi, Run run) implements ClosingReport {
    @Override
    public Output write(Path file, List<Output> outputs, List<Finding> findings) throws IOException {
        SheetPictures pictures = new SheetPictures(prepared.size());
        Picture sheet = pictures.sheet(prepared.passes(), prepared.layers());
        Report report = new Report(
                title(),
                prepared.size(),
                dpi,
                sheet,
                pictures.drawing(prepared.layers()),
                new PassSheets(pictures, lines(), this::name).of(prepared.passes(), scene().depth()),
                perspective(),
                sun(),
                new Legend(prepared.asked().sheet()).of(prepared.layers()),
                findings.stream().map(this::remark).toList(),
                outputs.stream().map(this::written).toList());
        double shown =
                dpi * sheet.size().width() / prepared.size().pixelsAt(dpi).width();
        return new Output(file, "report", sheet.size(), shown, report.write(file));
    }

    private SheetScene scene() {
        return prepared.drawing().orElseThrow().scene();
    }

    /** What the passes were placed by, if there are any. */
    private Optional<LinePattern> lines() throws IOException {
        return prepared.placements().isEmpty()
                ? Optional.empty()
                : Optional.of(prepared.files().pattern(run));
    }

    private String title() {
        return prepared.asked().file().getFileName().toString().replaceFirst("(?i)(\\.sheet)?\\.ya?ml$", "");
    }

    /** A file as seen from the sheet file, so that the report says the same wherever the folder lies. */
    private String name(Path file) {
        Path folder = prepared.asked().file().toAbsolutePath().normalize().getParent();
        Path whole = file.toAbsolutePath().normalize();
        return whole.startsWith(folder) ? folder.relativize(whole).toString().replace('\\', '/') : whole.toString();
    }

    private Remark remark(Finding finding) {
        Remark.Weight weight =
                finding.severity() == Finding.Severity.WARNING ? Remark.Weight.WARNING : Remark.Weight.NOTE;
        Path folder = prepared.asked().file().getParent();
        String text = folder == null
                ? finding.text()
                : finding.text().replace(folder + folder.getFileSystem().getSeparator(), "");
        return new Remark(weight, text);
    }

    private WrittenFile written(Output output) {
        return new WrittenFile(name(output.file()), output.kind(), output.size(), output.dpi(), output.bytes());
    }

    private Optional<Perspective> perspective() {
        SheetCamera camera = scene().camera();
        return camera.best().isEmpty() && camera.heights().isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Perspective(camera.best(), camera.focalSupposed(), camera.heights(), camera.elevations()));
    }

    private Optional<Sunlight> sun() throws IOException {
        Optional<View> view = scene().camera().best();
        if (view.isEmpty() || prepared.asked().sheet().sun().isEmpty()) {
            return Optional.empty();
        }
        try {
            Sun stated = prepared.asked().sheet().sun().get();
            SheetSun sun = SheetSun.of(stated, view.get());
            VanishingPoints points = VanishingPoints.of(view.get(), sun.direction());
            return Optional.of(new Sunlight(
                    sun.direction(), north(stated), source(stated), view.get(), upright(view.get(), points)));
        } catch (Refusal nobodyAsked) {
            // a sun that is down matters only to figures, and then the build has refused it
            return Optional.empty();
        }
    }

    private static double north(Sun sun) {
        if (sun instanceof Sun.ByAngles angles) {
            return angles.north().degrees();
        }
        return sun instanceof Sun.ByTime time
                ? time.north().degrees()
                : ((Sun.BySample) sun).north().map(Degrees::degrees).orElse(0.0);
    }

    private static String source(Sun sun) {
        if (sun instanceof Sun.ByTime time) {
            return String.format(
                    Locale.ROOT,
                    "place and time: %.4f, %.4f at %s",
                    time.place().latitude().degrees(),
                    time.place().longitude().degrees(),
                    time.at());
        }
        return sun instanceof Sun.ByAngles ? "its angles, as the sheet file states them" : "shadows on the drawing";
    }

    private Optional<Sunlight.Upright> upright(View view, VanishingPoints points) throws IOException {
        return new ShownShadow(
                        scene(),
                        prepared.size(),
                        view,
                        points,
                        prepared.passes().prepared())
                .best()
                .map(figure -> new Sunlight.Upright(
                        "the figure '" + figure.figure().outline().name() + "' on the floor '" + figure.floor() + "'",
                        figure.figure().spot().foot(),
                        figure.figure().head()));
    }
}
