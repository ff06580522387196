package org.adumbrate.delivery;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javax.imageio.ImageIO;
import org.adumbrate.drawing.Layer;
import org.adumbrate.drawing.Mark;
import org.adumbrate.drawing.Pen;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.prepare.memory.StageClock;
import org.adumbrate.prepare.passes.PassRequest;
import org.adumbrate.prepare.passes.PassSet;
import org.adumbrate.sheetfile.Deliver;
import org.adumbrate.underlay.PassLook;
import org.adumbrate.underlay.PassRole;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every kind of picture of one sheet, reopened and set beside the others. */
class DeliveryTest {
    private static final SheetSize SHEET = new SheetSize(2 * 25.4, 1.5 * 25.4);
    private static final int DPI = 200;

    @TempDir
    private Path folder;

    @Test
    void flatDrawingPreviewAndPdfShowTheSame() throws IOException, Refusal {
        List<Output> outputs = deliver(List.of(shadow()), layers(Srgb.BLACK), picture("flat.png", 8));
        assertThat(outputs.stream().map(Output::kind)).containsExactly("preview", "underlay", "drawing", "flat");
        BufferedImage flat = ImageIO.read(folder.resolve("flat.png").toFile());
        assertThat(flat.getWidth()).isEqualTo(400);
        assertThat(flat.getHeight()).isEqualTo(300);
        assertThat(flat.getRaster().getNumBands()).isEqualTo(1);
        BufferedImage preview = ImageIO.read(folder.resolve("preview.png").toFile());
        assertThat(difference(flat, preview)).isZero();
        assertThat(difference(flat, rendered(folder.resolve("drawing.pdf")))).isLessThan(2);
        BufferedImage underlay = ImageIO.read(folder.resolve("underlay.png").toFile());
        assertThat(difference(flat, underlay)).isGreaterThan(10);
    }

    @Test
    void aColouredInkMakesTheFlatDrawingColouredAndLeavesTheUnderlayGrey() throws IOException, Refusal {
        deliver(List.of(shadow()), layers(new Srgb(200, 0, 0)), picture("flat.png", 8));
        BufferedImage flat = ImageIO.read(folder.resolve("flat.png").toFile());
        assertThat(flat.getRaster().getNumBands()).isEqualTo(3);
        assertThat(difference(flat, rendered(folder.resolve("drawing.pdf")))).isLessThan(2);
        assertThat(ImageIO.read(folder.resolve("underlay.png").toFile())
                        .getRaster()
                        .getNumBands())
                .isEqualTo(1);
    }

    @Test
    void aFlatDrawingMayHaveSixteenBits() throws IOException, Refusal {
        deliver(List.of(shadow()), layers(Srgb.BLACK), picture("flat.png", 16));
        BufferedImage flat = ImageIO.read(folder.resolve("flat.png").toFile());
        assertThat(flat.getRaster().getDataBuffer().getDataType()).isEqualTo(DataBuffer.TYPE_USHORT);
    }

    @Test
    void withoutPassesLayersLieOnPaper() throws IOException, Refusal {
        List<Output> outputs = deliver(List.of(), layers(Srgb.BLACK), picture("flat.png", 8));
        assertThat(outputs.stream().map(Output::kind)).containsExactly("preview", "drawing", "flat");
        BufferedImage flat = ImageIO.read(folder.resolve("flat.png").toFile());
        assertThat(flat.getRaster().getSample(399, 299, 0)).isEqualTo(255);
        assertThat(difference(flat, rendered(folder.resolve("drawing.pdf")))).isLessThan(2);
    }

    private List<Output> deliver(List<PassRequest> requests, List<Layer> layers, PictureRequest flat)
            throws IOException, Refusal {
        Deliveries wanted = new Deliveries(
                requests.isEmpty() ? Optional.empty() : Optional.of(picture("underlay.png", 8)),
                Optional.empty(),
                Optional.of(folder.resolve("drawing.pdf")),
                Optional.empty(),
                Optional.of(new Deliver.Preview(folder.resolve("preview.png"), 400)),
                Optional.of(flat),
                Optional.empty());
        try (Run run = Memory.none().begin()) {
            PassSet passes = PassSet.of(SHEET, requests, Optional.empty(), false, true, run)
                    .orRaise();
            return new Delivery(SHEET, passes, layers, List.of(), DPI, new StageClock(StageClock.Listener.SILENT), run)
                    .deliver(wanted);
        }
    }

    private PictureRequest picture(String name, int bits) {
        return new PictureRequest(folder.resolve(name), bits, OptionalInt.empty(), true, OptionalInt.empty());
    }

    /** A slope from dark to light. */
    private PassRequest shadow() throws IOException {
        BufferedImage image = new BufferedImage(100, 75, BufferedImage.TYPE_BYTE_GRAY);
        for (int y = 0; y < 75; y++) {
            for (int x = 0; x < 100; x++) {
                image.getRaster().setSample(x, y, 0, 60 + 2 * x - y);
            }
        }
        Path file = folder.resolve("shadow.png");
        ImageIO.write(image, "png", file.toFile());
        return new PassRequest(PassRole.SHADOW, file, PassLook.plain(0.8), false, Optional.empty());
    }

    private static List<Layer> layers(Srgb ink) {
        VectorPath.Builder<SheetPoint> line = VectorPath.in(Space.SHEET);
        line.moveTo(3, 3);
        line.curveTo(20, 0, 30, 35, 48, 20);
        line.lineTo(5, 30);
        Region<SheetPoint> veil = Region.rectangle(Space.SHEET, 10, 5, 40, 30).grown(2);
        return List.of(
                Layer.of("veil-fill", List.of(new Mark.Area(Srgb.WHITE, 0.4, veil))),
                Layer.of("veil", List.of(new Mark.Lines(Pen.round(0.5, ink), List.of(line.build())))));
    }

    private static BufferedImage rendered(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            PDFRenderer renderer = new PDFRenderer(document);
            RenderingHints hints =
                    new RenderingHints(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            hints.put(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            renderer.setRenderingHints(hints);
            return renderer.renderImageWithDPI(0, DPI, ImageType.RGB);
        }
    }

    /** The mean difference of a sample, in levels; grey counts as a colour. */
    private static double difference(BufferedImage a, BufferedImage b) {
        assertThat(b.getWidth()).isEqualTo(a.getWidth());
        assertThat(b.getHeight()).isEqualTo(a.getHeight());
        long sum = 0;
        for (int y = 0; y < a.getHeight(); y++) {
            for (int x = 0; x < a.getWidth(); x++) {
                for (int c = 0; c < 3; c++) {
                    sum += Math.abs(sample(a, x, y, c) - sample(b, x, y, c));
                }
            }
        }
        return sum / 3.0 / a.getWidth() / a.getHeight();
    }

    /** The sample as it is stored, past any profile. */
    private static int sample(BufferedImage image, int x, int y, int channel) {
        return image.getRaster().getSample(x, y, image.getRaster().getNumBands() == 1 ? 0 : channel);
    }
}
