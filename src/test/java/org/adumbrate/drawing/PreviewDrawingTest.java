package org.adumbrate.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PreviewDrawingTest {
    private static final SheetSize SHEET = new SheetSize(100, 60);

    @TempDir
    Path folder;

    /** Against the PDF of the same drawing, as PDFBox renders it. */
    @Test
    void thePreviewLooksAsThePdfDoes() throws IOException {
        BufferedImage rendered = rendered(Sketches.groups());
        BufferedImage preview = paper(rendered.getWidth(), rendered.getHeight());
        assertThat(meanDifference(rendered, preview)).isGreaterThan(10);
        PreviewDrawing.draw(preview, Sketches.SHEET, Sketches.groups());
        assertThat(meanDifference(rendered, preview)).isLessThan(1);
    }

    @Test
    void theOrderIsThatOfTheGroups() {
        LineGroup red = new LineGroup("red", Pen.round(10, new Srgb(255, 0, 0)), List.of(line(0, 30, 100, 30)));
        LineGroup blue = new LineGroup("blue", Pen.round(10, new Srgb(0, 0, 255)), List.of(line(50, 0, 50, 60)));
        BufferedImage image = paper(100, 60);
        PreviewDrawing.draw(image, SHEET, List.of(red, blue));
        assertThat(image.getRGB(50, 30) & 0xffffff).isEqualTo(0x0000ff);
        PreviewDrawing.draw(image, SHEET, List.of(blue, red));
        assertThat(image.getRGB(50, 30) & 0xffffff).isEqualTo(0xff0000);
    }

    @Test
    void widthsAreTrueDownToAHairlineThatCanStillBeSeen() {
        // one pixel to the millimetre, so that the ink in a column is the width in mm
        assertThat(ink(3)).isBetween(2.95, 3.05);
        assertThat(ink(0.7)).isBetween(0.65, 0.75);
        assertThat(ink(0.13)).isBetween(0.45, 0.55);
    }

    /** How much ink a level line of a width leaves in one column of pixels: 1 for a black pixel. */
    private static double ink(double widthMm) {
        BufferedImage image = paper(100, 60);
        LineGroup group = new LineGroup("line", Pen.round(widthMm, Srgb.BLACK), List.of(line(0, 30.5, 100, 30.5)));
        PreviewDrawing.draw(image, SHEET, List.of(group));
        double ink = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            ink += 1 - (image.getRGB(50, y) & 0xff) / 255.0;
        }
        return ink;
    }

    private BufferedImage rendered(List<LineGroup> groups) throws IOException {
        Path file = folder.resolve("drawing.pdf");
        try (PdfDrawing drawing = PdfDrawing.begin(file, Sketches.SHEET)) {
            drawing.lines(groups);
            drawing.finish();
        }
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            PDFRenderer renderer = new PDFRenderer(document);
            RenderingHints hints =
                    new RenderingHints(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            hints.put(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            renderer.setRenderingHints(hints);
            return renderer.renderImageWithDPI(0, 240);
        }
    }

    private static VectorPath<SheetPoint> line(double x1, double y1, double x2, double y2) {
        VectorPath.Builder<SheetPoint> line = VectorPath.in(Space.SHEET);
        line.moveTo(x1, y1);
        line.lineTo(x2, y2);
        return line.build();
    }

    private static BufferedImage paper(int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, width, height);
        graphics.dispose();
        return image;
    }

    /** The mean difference of a colour component, in levels of 255. */
    private static double meanDifference(BufferedImage a, BufferedImage b) {
        assertThat(a.getWidth()).isEqualTo(b.getWidth());
        assertThat(a.getHeight()).isEqualTo(b.getHeight());
        double sum = 0;
        for (int y = 0; y < a.getHeight(); y++) {
            for (int x = 0; x < a.getWidth(); x++) {
                for (int shift = 0; shift <= 16; shift += 8) {
                    sum += Math.abs((a.getRGB(x, y) >> shift & 0xff) - (b.getRGB(x, y) >> shift & 0xff));
                }
            }
        }
        return sum / 3 / a.getWidth() / a.getHeight();
    }
}
