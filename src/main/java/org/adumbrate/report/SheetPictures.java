package org.adumbrate.report;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.adumbrate.drawing.FlatDrawing;
import org.adumbrate.drawing.Layer;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.prepare.passes.FigureLight;
import org.adumbrate.prepare.passes.PassPixels;
import org.adumbrate.prepare.passes.PassSet;
import org.adumbrate.prepare.passes.PreparedPass;
import org.adumbrate.raster.LightSink;
import org.adumbrate.raster.encode.PictureFormat;
import org.adumbrate.raster.encode.PixelWriting;
import org.adumbrate.raster.encode.PngEncoder;
import org.adumbrate.raster.encode.StripEncoder;
import org.adumbrate.report.page.Picture;
import org.adumbrate.underlay.Blend;
import org.adumbrate.underlay.PassLook;
import org.adumbrate.underlay.PlacedPass;
import org.adumbrate.underlay.ShownPass;
import org.adumbrate.underlay.Underlay;

/**
 * Pictures of a sheet for a page on a screen, as PNGs in memory: their sizes do not depend on the sheet, and a run that is
 * killed leaves nothing of them.
 */
final class SheetPictures {
    /** Pixels of the longer side: the sheet is enlarged on the page, what lies under lines is looked at as it is. */
    private static final int SHEET_PX = 2400;

    private static final int DRAWING_PX = 1600;
    private static final int PASS_PX = 1200;

    /** Some effort at their compression is well spent, as they are sent about; they are not dithered, for the same reason. */
    private static final int LEVEL = 9;

    private static final double SCREEN_DPI = 96;

    private final SheetSize sheet;

    SheetPictures(SheetSize sheet) {
        this.sheet = sheet;
    }

    /** The whole sheet. */
    Picture sheet(PassSet passes, List<Layer> layers) throws IOException {
        int under = passes.channels();
        PictureFormat format = format(SHEET_PX, FlatDrawing.channels(under, layers));
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        Canvas canvas = canvas(format);
        try (StripEncoder encoder = PngEncoder.into(png, format)) {
            LightSink flat = new FlatDrawing(canvas, under, layers, format.channels(), encoder);
            passes.blend(canvas, under, List.of(flat), FlatDrawing.STRIP_ROWS, share -> {});
            encoder.finish();
        }
        return picture(png, format.size());
    }

    /** The layers on bare paper. */
    Picture drawing(List<Layer> layers) throws IOException {
        PictureFormat format = format(DRAWING_PX, FlatDrawing.channels(1, layers));
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        Canvas canvas = canvas(format);
        try (StripEncoder encoder = PngEncoder.into(png, format)) {
            render(List.of(), canvas, 1, new FlatDrawing(canvas, 1, layers, format.channels(), encoder));
            encoder.finish();
        }
        return picture(png, format.size());
    }

    /** A pass alone, in full: its white settled, its mask left aside. */
    Picture pass(PreparedPass pass) throws IOException {
        PassLook look = new PassLook(
                1, pass.look().white(), pass.look().tone(), pass.look().tint(), Optional.empty());
        PictureFormat format = format(PASS_PX, pass.grey() && look.tint().isEmpty() ? 1 : 3);
        Canvas canvas = canvas(format);
        try (PassPixels.Rows rows = pass.rows(canvas, FlatDrawing.STRIP_ROWS, threads())) {
            return alone(pass.placed(rows).on(canvas).as(look), format);
        }
    }

    /** Figures' light. */
    Picture light(FigureLight light) throws IOException {
        PictureFormat format = format(PASS_PX, 1);
        Canvas canvas = canvas(format);
        return alone(PassSet.covering(canvas, light.on(canvas)).as(PassLook.plain(1)), format);
    }

    /** A grey pass that is in memory. */
    Picture grey(PlacedPass pass) throws IOException {
        PictureFormat format = format(PASS_PX, 1);
        return alone(pass.on(canvas(format)).as(PassLook.plain(1)), format);
    }

    /** Pixels as they are. */
    Picture pixels(BufferedImage image) throws IOException {
        PixelSize size = new PixelSize(image.getWidth(), image.getHeight());
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        PixelWriting.png(png, size, SCREEN_DPI, image.getRGB(0, 0, size.width(), size.height(), null, 0, size.width()));
        return picture(png, size);
    }

    private Picture alone(ShownPass pass, PictureFormat format) throws IOException {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        try (StripEncoder encoder = PngEncoder.into(png, format)) {
            render(List.of(pass), canvas(format), format.channels(), encoder);
            encoder.finish();
        }
        return picture(png, format.size());
    }

    private static void render(List<ShownPass> passes, Canvas canvas, int channels, LightSink sink) throws IOException {
        Blend blend = new Blend(canvas, passes, channels, 0);
        Underlay.render(blend, List.of(sink), FlatDrawing.STRIP_ROWS, threads(), share -> {});
    }

    private Canvas canvas(PictureFormat format) {
        return Canvas.whole(sheet, format.size());
    }

    private static int threads() {
        return Runtime.getRuntime().availableProcessors();
    }

    private PictureFormat format(int longSide, int channels) {
        double dpi = longSide * Length.MM_PER_INCH / Math.max(sheet.widthMm(), sheet.heightMm());
        return new PictureFormat(sheet.pixelsAt(dpi), channels, 8, dpi, LEVEL, false);
    }

    private static Picture picture(ByteArrayOutputStream png, PixelSize size) {
        byte[] bytes = png.toByteArray();
        return new Picture(() -> new ByteArrayInputStream(bytes), size);
    }
}
