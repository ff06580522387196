package org.adumbrate.golden;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.adumbrate.drawing.SvgPicture;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * PDF, SVG and preview of a sheet with every kind of layer, layer by layer: where leaving a layer out of one changes what is
 * seen, all three must look alike, and the other two must change in the same way.
 */
class WholeSheetTest {
    private static final double PX_PER_MM = 5;

    /** A pixel shows a layer if it changes by more than this, in levels, when the layer is left out. */
    private static final int SEEN = 24;

    /** So many pixels show each layer at least. */
    private static final int LEAST_SEEN = 200;

    /**
     * The most that drawings may differ in the mean of the pixels that show a layer, in levels; with the layer missing from
     * one of them it would be 30 and more. Curves, which are straightened for the preview, come to 6.
     */
    private static final double ALIKE = 8;

    private static final String HIDDEN = "heights";

    /** Every kind of thing that can be on a sheet; the pens have each role there is, the veils each way to say where. */
    private static final List<String> EVERYTHING = List.of(
            "underlay",
            "building",
            "paving",
            "neighbour",
            "pane-fill",
            "glass",
            "furniture",
            "ground",
            "hedge",
            "sign",
            "frame",
            "gable",
            "trees-fill",
            "trees",
            "screen-fill",
            "leaf-fill",
            "profile",
            "swifts",
            "figures",
            "border",
            "cut-backing",
            "cut-hatch",
            "cut-outline",
            HIDDEN);

    @TempDir
    private Path folder;

    @Test
    void everyKindOfLayerIsSeenAlikeInPdfSvgAndPreview() throws IOException {
        Path out = SmallSheets.in(folder)
                .build("whole", "--only", "underlay", "--only", "drawing", "--only", "svg", "--only", "preview");
        BufferedImage preview = ImageIO.read(out.resolve("preview.png").toFile());
        SvgPicture svg = SvgPicture.of(out.resolve("whole.svg"));
        assertThat(svg.layers()).containsExactlyInAnyOrderElementsOf(EVERYTHING);
        BufferedImage svgWhole = svg.drawn(PX_PER_MM);
        try (PDDocument document = Loader.loadPDF(out.resolve("whole.pdf").toFile())) {
            var groups = document.getDocumentCatalog().getOCProperties();
            BufferedImage pdfWhole = drawn(document);
            for (String layer : EVERYTHING) {
                boolean shown = !layer.equals(HIDDEN);
                assertThat(groups.isGroupEnabled(layer)).as(layer).isEqualTo(shown);
                groups.setGroupEnabled(layer, !shown);
                BufferedImage pdfOther = drawn(document);
                groups.setGroupEnabled(layer, shown);
                BufferedImage svgOther = shown ? svg.drawn(PX_PER_MM, layer) : svgWhole;
                int[] seen = IntStream.range(0, preview.getWidth() * preview.getHeight())
                        .filter(k -> off(pdfWhole, pdfOther, k) > SEEN || off(svgWhole, svgOther, k) > SEEN)
                        .toArray();
                assertThat(seen).as(layer).hasSizeGreaterThan(LEAST_SEEN);
                assertThat(mean(pdfWhole, preview, seen)).as(layer).isLessThan(ALIKE);
                assertThat(mean(svgWhole, preview, seen)).as(layer).isLessThan(ALIKE);
                if (shown) {
                    assertThat(mean(svgOther, pdfOther, seen)).as(layer).isLessThan(ALIKE);
                }
            }
        }
    }

    private static double mean(BufferedImage a, BufferedImage b, int[] pixels) {
        return IntStream.of(pixels).map(k -> off(a, b, k)).average().orElse(0);
    }

    /** The largest difference of a colour component at a pixel. */
    private static int off(BufferedImage a, BufferedImage b, int pixel) {
        int one = a.getRGB(pixel % a.getWidth(), pixel / a.getWidth());
        int other = b.getRGB(pixel % b.getWidth(), pixel / b.getWidth());
        return IntStream.of(0, 8, 16)
                .map(shift -> Math.abs((one >> shift & 0xff) - (other >> shift & 0xff)))
                .max()
                .orElseThrow();
    }

    private static BufferedImage drawn(PDDocument document) throws IOException {
        PDFRenderer renderer = new PDFRenderer(document);
        RenderingHints hints = new RenderingHints(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        hints.put(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        renderer.setRenderingHints(hints);
        return renderer.renderImage(0, (float) (PX_PER_MM * 25.4 / 72), ImageType.RGB);
    }
}
