package org.adumbrate.delivery;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.Frame;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.prepare.lines.LineFiles;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.prepare.passes.SheetRequests;
import org.adumbrate.raster.RasterReader;
import org.adumbrate.raster.decode.RasterFiles;
import org.adumbrate.sheetfile.Outline;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.SheetRegion;
import org.adumbrate.sheetfile.reading.SheetFile;
import org.adumbrate.sheetfile.reading.SheetFileReader;

/**
 * What a build would read and write.
 *
 * @param size the sheet
 * @param reads the files it would read
 * @param writes the files it would write
 */
public record BuildPlan(SheetSize size, List<Read> reads, List<Write> writes) {
    /**
     * A file that is read.
     *
     * @param file where
     * @param bytes its length
     * @param raster its size, if it is a raster
     */
    public record Read(Path file, long bytes, Optional<PixelSize> raster) {}

    /**
     * A file that is written.
     *
     * @param file where
     * @param kind what it is, in the sheet file's word
     * @param size its raster's size
     * @param dpi its raster's resolution
     * @param replaces true if a file stands there, which is replaced
     */
    public record Write(Path file, String kind, PixelSize size, double dpi, boolean replaces) {}

    /**
     * Looks at a sheet file, reads its line sheets and the heads of its rasters, and writes nothing.
     *
     * @param file the sheet file
     * @param only the items to deliver, by the sheet file's words; all if empty
     * @param dpi the underlay's resolution; the sheet file's if absent
     * @param window the part of the sheet that would be delivered alone; the whole if absent
     * @throws Refusal if a page does not fit the sheet, an item is not known, or files clash
     * @throws IOException if an input cannot be used, or an output could not be written
     */
    public static BuildPlan of(Path file, Set<String> only, OptionalDouble dpi, Optional<Frame> window)
            throws IOException, Refusal {
        SheetFile asked = SheetFileReader.read(file);
        Deliveries deliveries = Deliveries.of(asked, only);
        SheetClaims.building(asked, deliveries, window.isPresent()).check();
        Sheet sheet = asked.sheet();
        SheetSize size;
        try (Run run = Memory.none().begin()) {
            size = LineFiles.read(sheet, run).sheet();
        }
        List<Read> reads = new ArrayList<>();
        reads.add(read(file));
        for (Path lines : LineFiles.files(sheet)) {
            reads.add(read(lines));
        }
        for (Path raster : rasters(sheet, size)) {
            try (RasterReader reader = RasterFiles.open(raster)) {
                reads.add(new Read(
                        raster, Files.size(raster), Optional.of(reader.info().size())));
            }
        }
        for (Path outline : outlines(sheet)) {
            reads.add(read(outline));
        }
        boolean passes = !SheetRequests.of(sheet.passes(), size).isEmpty();
        double resolution = dpi.orElse(sheet.resolution().dpi());
        if (window.isPresent()) {
            Detail detail = new Detail(window.get(), dpi);
            detail.check(deliveries, size);
            return new BuildPlan(size, reads, writes(deliveries, size, resolution, detail));
        }
        return new BuildPlan(size, reads, writes(deliveries, size, resolution, passes));
    }

    private static List<Write> writes(Deliveries wanted, SheetSize sheet, double dpi, Detail detail) {
        List<Write> writes = new ArrayList<>();
        wanted.preview().ifPresent(preview -> {
            double at = detail.previewDpi(preview, sheet);
            Canvas canvas = detail.on(Canvas.whole(sheet, at)).orElseThrow();
            writes.add(write(Detail.file(preview.file()), "preview-window", canvas.size(), at));
        });
        wanted.flat().ifPresent(flat -> {
            Canvas canvas = detail.on(Canvas.whole(sheet, dpi)).orElseThrow();
            writes.add(write(Detail.file(flat.file()), "flat-window", canvas.size(), dpi));
        });
        return writes;
    }

    private static Read read(Path file) throws IOException {
        return new Read(file, Files.size(file), Optional.empty());
    }

    private static Set<Path> rasters(Sheet sheet, SheetSize size) {
        Set<Path> rasters = new LinkedHashSet<>();
        SheetRequests.of(sheet.passes(), size).forEach(request -> rasters.add(request.file()));
        sheet.passes().depth().ifPresent(depth -> rasters.add(depth.file()));
        sheet.regions().values().forEach(region -> {
            if (region instanceof SheetRegion.ByColor shown) {
                rasters.add(shown.raster());
            }
        });
        return rasters;
    }

    private static Set<Path> outlines(Sheet sheet) {
        List<Outline> outlines = new ArrayList<>();
        sheet.figures().forEach(figure -> outlines.add(figure.outline()));
        sheet.planting().values().forEach(plants -> outlines.addAll(plants.outlines()));
        sheet.birds().values().forEach(birds -> outlines.addAll(birds.outlines()));
        Set<Path> files = new LinkedHashSet<>();
        outlines.forEach(outline -> {
            if (outline instanceof Outline.Drawn drawn) {
                files.add(drawn.file());
            }
        });
        return files;
    }

    private static List<Write> writes(Deliveries wanted, SheetSize sheet, double dpi, boolean passes) {
        PixelSize size = sheet.pixelsAt(dpi);
        List<Write> writes = new ArrayList<>();
        wanted.figureShadow().ifPresent(file -> writes.add(write(file, "figure-shadow", size, dpi)));
        wanted.preview().ifPresent(preview -> {
            double screen = Delivery.previewDpi(preview, sheet);
            writes.add(write(preview.file(), "preview", sheet.pixelsAt(screen), screen));
        });
        wanted.underlay()
                .filter(underlay -> passes)
                .ifPresent(underlay -> writes.add(write(underlay.file(), "underlay", size, dpi)));
        wanted.drawing().ifPresent(file -> writes.add(write(file, "drawing", size, dpi)));
        wanted.flat().ifPresent(flat -> writes.add(write(flat.file(), "flat", size, dpi)));
        wanted.svg().ifPresent(svg -> {
            if (passes) {
                Delivery.ownPicture(wanted).ifPresent(picture -> writes.add(write(picture, "svg-underlay", size, dpi)));
            }
            writes.add(write(svg.file(), "svg", size, dpi));
        });
        wanted.report().ifPresent(file -> writes.add(write(file, "report", size, dpi)));
        return writes;
    }

    private static Write write(Path file, String kind, PixelSize size, double dpi) {
        return new Write(file, kind, size, dpi, Files.exists(file));
    }
}
