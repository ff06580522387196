package org.adumbrate.build;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.adumbrate.drawing.Layer;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.perspective.VanishingPoints;
import org.adumbrate.perspective.View;
import org.adumbrate.registration.LinePattern;
import org.adumbrate.report.page.Perspective;
import org.adumbrate.report.page.Picture;
import org.adumbrate.report.page.Remark;
import org.adumbrate.report.page.Report;
import org.adumbrate.report.page.Sunlight;
import org.adumbrate.report.page.WrittenFile;
import org.adumbrate.sheetfile.Degrees;
import org.adumbrate.sheetfile.Sun;
import org.adumbrate.sheetfile.reading.SheetFile;

/**
 * Gathers what the report of a sheet shows.
 *
 * @param asked the sheet file
 * @param size the sheet's size
 * @param dpi the resolution that it is built at
 * @param passes the printed passes, placed
 * @param drawing what is drawn
 * @param layers the same in drawing order
 * @param lines what the passes were placed by
 */
record SheetReport(
        SheetFile asked,
        SheetSize size,
        double dpi,
        PassSet passes,
        SheetDrawing drawing,
        List<Layer> layers,
        Optional<LinePattern> lines) {

    /**
     * Writes the report.
     *
     * @param outputs what was written before
     * @param findings what was found
     */
    Output write(Path file, List<Output> outputs, List<Finding> findings) throws IOException {
        SheetPictures pictures = new SheetPictures(size);
        Picture sheet = pictures.sheet(passes, layers);
        Report report = new Report(
                title(),
                size,
                dpi,
                sheet,
                pictures.drawing(layers),
                new PassSheets(pictures, lines, this::name)
                        .of(passes, drawing.scene().depth()),
                perspective(),
                sun(),
                new Legend(asked.sheet()).of(layers),
                findings.stream().map(this::remark).toList(),
                outputs.stream().map(this::written).toList());
        double shown = dpi * sheet.size().width() / size.pixelsAt(dpi).width();
        return new Output(file, "report", sheet.size(), shown, report.write(file));
    }

    private String title() {
        return asked.file().getFileName().toString().replaceFirst("(?i)(\\.sheet)?\\.ya?ml$", "");
    }

    /** A file as seen from the sheet file, so that the report says the same wherever the folder lies. */
    private String name(Path file) {
        Path folder = asked.file().toAbsolutePath().normalize().getParent();
        Path whole = file.toAbsolutePath().normalize();
        return whole.startsWith(folder) ? folder.relativize(whole).toString().replace('\\', '/') : whole.toString();
    }

    private Remark remark(Finding finding) {
        Remark.Weight weight =
                finding.severity() == Finding.Severity.WARNING ? Remark.Weight.WARNING : Remark.Weight.NOTE;
        Path folder = asked.file().getParent();
        String text = folder == null
                ? finding.text()
                : finding.text().replace(folder + folder.getFileSystem().getSeparator(), "");
        return new Remark(weight, text);
    }

    private WrittenFile written(Output output) {
        return new WrittenFile(name(output.file()), output.kind(), output.size(), output.dpi(), output.bytes());
    }

    private Optional<Perspective> perspective() {
        SheetCamera camera = drawing.scene().camera();
        return camera.best().isEmpty() && camera.heights().isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Perspective(camera.best(), camera.focalSupposed(), camera.heights(), camera.elevations()));
    }

    private Optional<Sunlight> sun() throws IOException {
        Optional<View> view = drawing.scene().camera().best();
        if (view.isEmpty() || asked.sheet().sun().isEmpty()) {
            return Optional.empty();
        }
        try {
            Sun stated = asked.sheet().sun().get();
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
        return new ShownShadow(drawing.scene(), size, view, points, passes.prepared())
                .best()
                .map(figure -> new Sunlight.Upright(
                        "the figure '" + figure.figure().outline().name() + "' on the floor '" + figure.floor() + "'",
                        figure.figure().spot().foot(),
                        figure.figure().head()));
    }
}
