package org.adumbrate.build;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.adumbrate.drawing.LineGroup;
import org.adumbrate.drawing.PdfDrawing;
import org.adumbrate.drawing.PreviewDrawing;
import org.adumbrate.drawing.SvgDrawing;
import org.adumbrate.drawing.UnderlayPicture;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.raster.encode.PictureFormat;
import org.adumbrate.raster.encode.PixelArray;
import org.adumbrate.raster.encode.PixelWriting;
import org.adumbrate.sheetfile.Deliver;

/** Makes the items of a sheet: the underlay is blended once, and each of its strips goes to every item that shows it. */
final class Delivery {
    private final SheetSize sheet;
    private final double dpi;
    private final PassSet passes;
    private final List<LineGroup> lines;
    private final Stages stages;

    Delivery(SheetSize sheet, double dpi, PassSet passes, List<LineGroup> lines, Stages stages) {
        this.sheet = sheet;
        this.dpi = dpi;
        this.passes = passes;
        this.lines = lines;
        this.stages = stages;
    }

    /** Makes them all, the quick look first. */
    List<Output> deliver(Deliveries wanted) throws IOException {
        List<Output> outputs = new ArrayList<>();
        if (wanted.preview().isPresent()) {
            outputs.add(stages.run("preview", () -> preview(wanted.preview().get())));
        }
        outputs.addAll(stages.run("underlay", () -> withUnderlay(wanted)));
        if (wanted.svg().isPresent()) {
            outputs.add(stages.run("svg", () -> svg(wanted.svg().get(), wanted)));
        }
        return outputs;
    }

    private List<Output> withUnderlay(Deliveries wanted) throws IOException {
        if (passes.isEmpty()) {
            return wanted.drawing().isPresent()
                    ? List.of(linesAlone(wanted.drawing().get()))
                    : List.of();
        }
        PictureRequest request = wanted.underlay().orElseGet(() -> PictureRequest.plain(Path.of("underlay.tif")));
        PictureFormat format = Pictures.format(request, sheet.pixelsAt(dpi), dpi, passes.channels());
        PictureFormat eight =
                new PictureFormat(format.size(), format.channels(), 8, dpi, format.level(), format.dithered());
        int rows = format.stripRows();
        List<Item> items = new ArrayList<>();
        try {
            if (wanted.underlay().isPresent()) {
                items.add(Item.picture("underlay", request.file(), format, rows));
            }
            if (wanted.drawing().isPresent()) {
                items.add(Item.drawing(wanted.drawing().get(), eight, sheet, lines));
            }
            if (wanted.svg().isPresent() && ownPicture(wanted).isPresent()) {
                items.add(Item.picture("svg-underlay", ownPicture(wanted).get(), eight, rows));
            }
            if (!items.isEmpty()) {
                passes.blend(
                        format.size(),
                        format.channels(),
                        items.stream().map(Item::encoder).toList(),
                        rows,
                        share -> stages.at("underlay", share));
            }
            List<Output> outputs = new ArrayList<>();
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

    private Output linesAlone(Path file) throws IOException {
        try (PdfDrawing drawing = PdfDrawing.begin(file, sheet)) {
            drawing.lines(lines);
            drawing.finish();
        }
        return new Output(file, "drawing", sheet.pixelsAt(dpi), dpi, Files.size(file));
    }

    /** The picture that an SVG shows, if none that it could show is delivered anyway. */
    private static Optional<Path> ownPicture(Deliveries wanted) {
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
        SvgDrawing.write(svg.file(), sheet, picture, lines);
        return new Output(svg.file(), "svg", sheet.pixelsAt(dpi), dpi, Files.size(svg.file()));
    }

    private Output preview(Deliver.Preview preview) throws IOException {
        double previewDpi = preview.width() * Length.MM_PER_INCH / sheet.widthMm();
        PixelSize size = sheet.pixelsAt(previewDpi);
        PixelArray array = new PixelArray(size, passes.isEmpty() ? 1 : passes.channels());
        BufferedImage image = new BufferedImage(size.width(), size.height(), BufferedImage.TYPE_INT_RGB);
        passes.blend(size, passes.isEmpty() ? 1 : passes.channels(), List.of(array), 32, share -> {});
        image.setRGB(0, 0, size.width(), size.height(), array.pixels(), 0, size.width());
        PreviewDrawing.draw(image, sheet, lines);
        int[] pixels = image.getRGB(0, 0, size.width(), size.height(), null, 0, size.width());
        long bytes = PixelWriting.png(preview.file(), size, previewDpi, pixels);
        return new Output(preview.file(), "preview", size, previewDpi, bytes);
    }
}
