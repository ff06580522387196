package org.adumbrate.delivery;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.adumbrate.drawing.FlatDrawing;
import org.adumbrate.drawing.Layer;
import org.adumbrate.drawing.PdfDrawing;
import org.adumbrate.drawing.SvgDrawing;
import org.adumbrate.drawing.UnderlayPicture;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.prepare.PreparedSheet;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.prepare.memory.StageClock;
import org.adumbrate.prepare.passes.PassSet;
import org.adumbrate.raster.LightSink;
import org.adumbrate.raster.encode.PictureFormat;
import org.adumbrate.raster.encode.StripEncoder;
import org.adumbrate.raster.encode.Transfer;
import org.adumbrate.sheetfile.Deliver;
import org.adumbrate.underlay.Blend;
import org.adumbrate.underlay.PassLook;
import org.adumbrate.underlay.ShownPass;
import org.adumbrate.underlay.Underlay;

/** Makes the items of a sheet: the underlay is blended once, and each of its strips goes to every item that shows it. */
final class Delivery {
    /** A preview is small and often sent about: some effort at its compression is well spent. */
    private static final int PREVIEW_LEVEL = 6;

    private final SheetSize sheet;
    private final PassSet passes;
    private final List<Layer> layers;
    private final List<Object> underlay;
    private final double dpi;
    private final StageClock stages;
    private final Run run;

    /**
     * Prepares to deliver a sheet.
     *
     * @param underlay by what the underlay is known
     * @param dpi the resolution of what is printed
     * @param run knows pictures of the same underlay
     */
    Delivery(
            SheetSize sheet,
            PassSet passes,
            List<Layer> layers,
            List<Object> underlay,
            double dpi,
            StageClock stages,
            Run run) {
        this.sheet = sheet;
        this.passes = passes;
        this.layers = layers;
        this.underlay = underlay;
        this.dpi = dpi;
        this.stages = stages;
        this.run = run;
    }

    /** Prepares to deliver a sheet that is ready. */
    static Delivery of(PreparedSheet sheet, double dpi, StageClock stages, Run run) {
        return new Delivery(sheet.size(), sheet.passes(), sheet.layers(), sheet.underlayContent(), dpi, stages, run);
    }

    /** Makes them all, the quick look first. */
    List<Output> deliver(Deliveries wanted) throws IOException {
        List<Output> outputs = new ArrayList<>();
        if (wanted.figureShadow().isPresent()) {
            outputs.add(stages.run(
                    "figure-shadow", () -> figureShadow(wanted.figureShadow().get())));
        }
        if (wanted.preview().isPresent()) {
            outputs.add(stages.run("preview", () -> preview(wanted.preview().get())));
        }
        outputs.addAll(stages.run("underlay", () -> withUnderlay(wanted)));
        if (wanted.svg().isPresent()) {
            outputs.add(stages.run("svg", () -> svg(wanted.svg().get(), wanted)));
        }
        return outputs;
    }

    /** As a measure, not as a picture: shares of light in proportion, in 16 bits. */
    private Output figureShadow(Path file) throws IOException {
        PixelSize size = sheet.pixelsAt(dpi);
        Canvas canvas = Canvas.whole(sheet, size);
        PictureFormat format =
                new PictureFormat(canvas.window(), 1, 16, dpi, PictureFormat.DEFAULT_LEVEL, false, Transfer.LINEAR);
        int rows = format.stripRows();
        try (StripEncoder picture = Pictures.begin(file, format, rows)) {
            List<ShownPass> light = passes.figureLight()
                    .map(cast ->
                            List.of(PassSet.covering(canvas, cast.on(canvas)).as(PassLook.plain(1))))
                    .orElse(List.of());
            Underlay.render(
                    new Blend(canvas, light, 1, 0),
                    List.of(picture),
                    rows,
                    Runtime.getRuntime().availableProcessors(),
                    share -> stages.at("figure-shadow", share));
            return new Output(file, "figure-shadow", size, dpi, picture.finish());
        }
    }

    private List<Output> withUnderlay(Deliveries wanted) throws IOException {
        List<Output> outputs = new ArrayList<>();
        if (passes.isEmpty() && wanted.drawing().isPresent()) {
            outputs.add(linesAlone(wanted.drawing().get()));
        }
        PictureRequest request = wanted.underlay().orElseGet(() -> PictureRequest.plain(Path.of("underlay.tif")));
        PictureFormat format = Pictures.format(request, sheet.pixelsAt(dpi), dpi, passes.channels());
        int rows = wanted.flat().isPresent() ? FlatDrawing.STRIP_ROWS : format.stripRows();
        List<Item> items = new ArrayList<>();
        ItemStrips strips = new ItemStrips(underlay, run);
        try {
            if (!passes.isEmpty()) {
                beginUnderlays(wanted, format, rows, items, strips);
            }
            if (wanted.flat().isPresent()) {
                Item flat = flat(wanted.flat().get(), format, rows);
                items.add(flat);
                strips.add(flat.sink());
            }
            if (!strips.wanting().isEmpty()) {
                passes.blend(
                        Canvas.whole(sheet, format.size()),
                        format.channels(),
                        strips.wanting(),
                        rows,
                        share -> stages.at("underlay", share));
                strips.keep();
            }
            for (Item item : items) {
                outputs.add(item.finish());
            }
            return outputs;
        } finally {
            for (Item item : items) {
                item.close();
            }
        }
    }

    private void beginUnderlays(Deliveries wanted, PictureFormat format, int rows, List<Item> items, ItemStrips strips)
            throws IOException {
        PictureFormat eight =
                new PictureFormat(format.size(), format.channels(), 8, dpi, format.level(), format.dithered());
        if (wanted.underlay().isPresent()) {
            Path file = wanted.underlay().get().file();
            Item item = Item.picture("underlay", file, format, Pictures.begin(file, format, rows));
            items.add(item);
            strips.add(Pictures.packing(file), format, rows, item.sink());
        }
        if (wanted.drawing().isPresent()) {
            Item item = Item.drawing(wanted.drawing().get(), eight, sheet, layers);
            items.add(item);
            strips.add("pdf", eight, rows, item.sink());
        }
        if (wanted.svg().isPresent() && ownPicture(wanted).isPresent()) {
            Path file = ownPicture(wanted).get();
            Item item = Item.picture("svg-underlay", file, eight, Pictures.begin(file, eight, rows));
            items.add(item);
            strips.add(Pictures.packing(file), eight, rows, item.sink());
        }
    }

    /** @param underlay what the strips of the underlay are */
    private Item flat(PictureRequest request, PictureFormat underlay, int rows) throws IOException {
        int channels = FlatDrawing.channels(underlay.channels(), layers);
        PictureFormat format = Pictures.format(request, underlay.size(), dpi, channels);
        StripEncoder picture = Pictures.begin(request.file(), format, rows);
        LightSink drawing = new FlatDrawing(
                Canvas.whole(sheet, format.size()), underlay.channels(), layers, format.channels(), picture);
        return Item.picture("flat", request.file(), format, drawing, picture);
    }

    private Output linesAlone(Path file) throws IOException {
        try (PdfDrawing drawing = PdfDrawing.begin(file, sheet)) {
            drawing.layers(layers);
            drawing.finish();
        }
        return new Output(file, "drawing", sheet.pixelsAt(dpi), dpi, Files.size(file));
    }

    /** The picture that an SVG shows, if none that it could show is delivered anyway. */
    static Optional<Path> ownPicture(Deliveries wanted) {
        if (wanted.underlay().filter(Delivery::isPng).isPresent()) {
            return Optional.empty();
        }
        Path svg = wanted.svg().orElseThrow().file();
        String name = svg.getFileName().toString().replaceFirst("(?i)\\.svg$", "") + "-underlay.png";
        return Optional.of(svg.resolveSibling(name));
    }

    private static boolean isPng(PictureRequest request) {
        return request.bits() == 8
                && request.file().toString().toLowerCase(Locale.ROOT).endsWith(".png");
    }

    private Output svg(Deliver.Svg svg, Deliveries wanted) throws IOException {
        Optional<UnderlayPicture> picture = Optional.empty();
        if (!passes.isEmpty()) {
            Path png = ownPicture(wanted)
                    .orElseGet(() -> wanted.underlay().orElseThrow().file());
            picture = Optional.of(new UnderlayPicture(png, svg.embedUnderlay()));
        }
        SvgDrawing.write(svg.file(), sheet, picture, layers);
        return new Output(svg.file(), "svg", sheet.pixelsAt(dpi), dpi, Files.size(svg.file()));
    }

    private Output preview(Deliver.Preview preview) throws IOException {
        double own = previewDpi(preview, sheet);
        return drawn("preview", preview.file(), Canvas.whole(sheet, own), previewFormat(own));
    }

    /** The resolution of a preview. */
    static double previewDpi(Deliver.Preview preview, SheetSize sheet) {
        return preview.width() * Length.MM_PER_INCH / sheet.widthMm();
    }

    private PictureFormat previewFormat(double at) {
        int channels = FlatDrawing.channels(passes.channels(), layers);
        return new PictureFormat(sheet.pixelsAt(at), channels, 8, at, PREVIEW_LEVEL, true);
    }

    /** Makes a window of the pictures that are wanted, without making the rest. */
    List<Output> deliver(Deliveries wanted, Detail detail) throws IOException {
        List<Output> outputs = new ArrayList<>();
        if (wanted.preview().isPresent()) {
            Path file = wanted.preview().get().file();
            double at = detail.previewDpi(wanted.preview().get(), sheet);
            Canvas canvas = detail.on(Canvas.whole(sheet, at)).orElseThrow();
            PictureFormat format = previewFormat(at).in(canvas.window());
            outputs.add(stages.run("preview", () -> drawn("preview-window", Detail.file(file), canvas, format)));
        }
        if (wanted.flat().isPresent()) {
            PictureRequest request = wanted.flat().get();
            Canvas canvas = detail.on(Canvas.whole(sheet, dpi)).orElseThrow();
            int channels = FlatDrawing.channels(passes.channels(), layers);
            PictureFormat format =
                    Pictures.format(request, canvas.whole(), dpi, channels).in(canvas.window());
            outputs.add(stages.run("flat", () -> drawn("flat-window", Detail.file(request.file()), canvas, format)));
        }
        return outputs;
    }

    private Output drawn(String kind, Path file, Canvas canvas, PictureFormat format) throws IOException {
        int rows = FlatDrawing.STRIP_ROWS;
        int channels = passes.channels();
        try (StripEncoder picture = Pictures.begin(file, format, rows)) {
            LightSink drawing = new FlatDrawing(canvas, channels, layers, format.channels(), picture);
            passes.blend(canvas, channels, List.of(drawing), rows, share -> stages.at(kind, share));
            return new Output(file, kind, format.size(), format.dpi(), picture.finish());
        }
    }
}
