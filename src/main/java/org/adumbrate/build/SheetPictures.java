package org.adumbrate.build;

import java.awt.image.BufferedImage;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.drawing.FlatDrawing;
import org.adumbrate.drawing.Layer;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.raster.encode.PictureFormat;
import org.adumbrate.raster.encode.PixelWriting;
import org.adumbrate.raster.encode.PngEncoder;
import org.adumbrate.raster.encode.StripEncoder;
import org.adumbrate.report.Picture;
import org.adumbrate.underlay.Blend;
import org.adumbrate.underlay.PassLook;
import org.adumbrate.underlay.PlacedPass;
import org.adumbrate.underlay.Underlay;

/** Pictures of a sheet for a page on a screen, kept in a temporary folder until they are closed. */
final class SheetPictures implements Closeable {
    /** Pixels of the longer side: the sheet is enlarged on the page, what lies under lines is looked at as it is. */
    private static final int SHEET_PX = 2400;

    private static final int DRAWING_PX = 1600;
    private static final int PASS_PX = 1200;

    /** Some effort at their compression is well spent, as they are sent about; they are not dithered, for the same reason. */
    private static final int LEVEL = 9;

    private static final double SCREEN_DPI = 96;

    private final SheetSize sheet;
    private final Path folder;
    private final List<Path> files = new ArrayList<>();

    SheetPictures(SheetSize sheet) throws IOException {
        this.sheet = sheet;
        this.folder = Files.createTempDirectory("adumbrate-report");
    }

    /** The whole sheet. */
    Picture sheet(PassSet passes, List<Layer> layers) throws IOException {
        int under = passes.channels();
        PictureFormat format = format(SHEET_PX, FlatDrawing.channels(under, layers));
        Path file = next();
        try (StripEncoder flat = new FlatDrawing(sheet, under, layers, format, new PngEncoder(file, format))) {
            passes.blend(format.size(), under, List.of(flat), FlatDrawing.STRIP_ROWS, share -> {});
            flat.finish();
        }
        return new Picture(file, format.size());
    }

    /** The layers on bare paper. */
    Picture drawing(List<Layer> layers) throws IOException {
        PictureFormat format = format(DRAWING_PX, FlatDrawing.channels(1, layers));
        Path file = next();
        try (StripEncoder flat = new FlatDrawing(sheet, 1, layers, format, new PngEncoder(file, format))) {
            render(List.of(), format.size(), 1, flat, FlatDrawing.STRIP_ROWS);
        }
        return new Picture(file, format.size());
    }

    /** A pass alone, in full: its white settled, its mask left aside. */
    Picture pass(PreparedPass pass) throws IOException {
        PassLook look = new PassLook(
                1, pass.look().white(), pass.look().tone(), pass.look().tint(), Optional.empty());
        PictureFormat format = format(PASS_PX, pass.grey() && look.tint().isEmpty() ? 1 : 3);
        try (PassSource.Rows rows = pass.rows(sheet, format.size(), FlatDrawing.STRIP_ROWS, threads())) {
            return alone(pass.placed(rows, look), format);
        }
    }

    /** Figures' light. */
    Picture light(FigureLight light) throws IOException {
        PictureFormat format = format(PASS_PX, 1);
        return alone(PassSet.covering(sheet, format.size(), light.on(format.size())), format);
    }

    /** A grey pass that is in memory. */
    Picture grey(PlacedPass pass) throws IOException {
        return alone(pass, format(PASS_PX, 1));
    }

    /** Pixels as they are. */
    Picture pixels(BufferedImage image) throws IOException {
        PixelSize size = new PixelSize(image.getWidth(), image.getHeight());
        Path file = next();
        PixelWriting.png(
                file, size, SCREEN_DPI, image.getRGB(0, 0, size.width(), size.height(), null, 0, size.width()));
        return new Picture(file, size);
    }

    private Picture alone(PlacedPass pass, PictureFormat format) throws IOException {
        Path file = next();
        try (StripEncoder png = new PngEncoder(file, format)) {
            render(List.of(pass), format.size(), format.channels(), png, FlatDrawing.STRIP_ROWS);
        }
        return new Picture(file, format.size());
    }

    private void render(List<PlacedPass> passes, PixelSize canvas, int channels, StripEncoder encoder, int stripRows)
            throws IOException {
        Blend blend = new Blend(sheet, canvas, passes, channels, 0);
        Underlay.render(blend, List.of(encoder), stripRows, threads(), share -> {});
        encoder.finish();
    }

    private static int threads() {
        return Runtime.getRuntime().availableProcessors();
    }

    private PictureFormat format(int longSide, int channels) {
        double dpi = longSide * Length.MM_PER_INCH / Math.max(sheet.widthMm(), sheet.heightMm());
        return new PictureFormat(sheet.pixelsAt(dpi), channels, 8, dpi, LEVEL, false);
    }

    private Path next() {
        Path file = folder.resolve(files.size() + ".png");
        files.add(file);
        return file;
    }

    @Override
    public void close() throws IOException {
        for (Path file : files) {
            Files.deleteIfExists(file);
        }
        Files.deleteIfExists(folder);
    }
}
