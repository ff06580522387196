package org.adumbrate.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.Srgb;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The flat drawing against the PDF of the same layers as PDFBox, a renderer for any PDF, shows it, and against the SVG. What
 * a sheet makes of its kinds of layers is compared in {@code org.adumbrate.golden.WholeSheetTest}.
 */
class AgreementTest {
    private static final double MOST = 2;

    @TempDir
    Path folder;

    @Test
    void theWholeLooksTheSame() throws IOException {
        assertThat(difference(Sketches.everything())).isLessThan(MOST / 2);
    }

    /** Each layer alone, so that none can be missing and hide it behind much paper. */
    @Test
    void noLayerIsMissing() throws IOException {
        for (Layer layer : Sketches.everything()) {
            BufferedImage rendered = rendered(List.of(layer));
            BufferedImage paper = flat(rendered, List.of());
            assertThat(Flat.mostDifference(rendered, paper) > 0)
                    .as(layer.name())
                    .isEqualTo(layer.shown() && !layer.name().equals("trees-fill"));
            assertThat(difference(List.of(layer))).as(layer.name()).isLessThan(MOST / 2);
        }
    }

    /** White at 60 % over black: the veil that shows nothing on paper. */
    @Test
    void aVeilLightensWhatIsUnderIt() throws IOException {
        Layer ground = Layer.of("ground", List.of(new Mark.Area(Srgb.BLACK, 1, Sketches.rectangle(0, 0, 101.6, 63.5))));
        List<Layer> veiled = List.of(ground, Sketches.everything().get(1));
        assertThat(Flat.meanDifference(rendered(veiled), rendered(List.of(ground))))
                .isGreaterThan(10);
        assertThat(difference(veiled)).isLessThan(MOST / 2);
    }

    /** Translucent figures that overlap cover once and not twice, though each is a group of its own. */
    @Test
    void figuresThatFadeTogetherCoverOnceWhereTheyOverlap() throws IOException {
        Srgb grey = new Srgb(40, 40, 40);
        List<Layer> layers = List.of(Layer.of(
                "figures",
                List.of(
                        new Mark.Area("figures[0]", grey, 0.5, Sketches.disc(40, 30, 15)),
                        new Mark.Area("figures[1]", grey, 0.5, Sketches.disc(50, 30, 15)))));
        // a third of each lies under the other: covered twice it would be 54 levels darker on a tenth of the sheet
        assertThat(difference(layers)).isLessThan(0.2);
    }

    /** The larger of PDF's and SVG's. */
    private double difference(List<Layer> layers) throws IOException {
        BufferedImage rendered = rendered(layers);
        BufferedImage flat = flat(rendered, layers);
        return Math.max(
                Flat.meanDifference(rendered, flat), Flat.meanDifference(svg(layers, rendered.getWidth()), flat));
    }

    private BufferedImage svg(List<Layer> layers, int width) throws IOException {
        Path file = folder.resolve("drawing.svg");
        SvgDrawing.write(file, Sketches.SHEET, Optional.empty(), layers);
        return SvgPicture.of(file).drawn(width / Sketches.SHEET.widthMm());
    }

    private static BufferedImage flat(BufferedImage like, List<Layer> layers) throws IOException {
        return Flat.image(Sketches.SHEET, new PixelSize(like.getWidth(), like.getHeight()), layers);
    }

    private BufferedImage rendered(List<Layer> layers) throws IOException {
        Path file = folder.resolve("drawing.pdf");
        try (PdfDrawing drawing = PdfDrawing.begin(file, Sketches.SHEET)) {
            drawing.layers(layers);
            drawing.finish();
        }
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            PDFRenderer renderer = new PDFRenderer(document);
            RenderingHints hints =
                    new RenderingHints(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            hints.put(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            renderer.setRenderingHints(hints);
            return renderer.renderImageWithDPI(0, 240, ImageType.RGB);
        }
    }
}
