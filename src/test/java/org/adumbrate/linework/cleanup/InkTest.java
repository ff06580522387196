package org.adumbrate.linework.cleanup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.Stroke;
import org.adumbrate.linework.read.LineSheets;
import org.junit.jupiter.api.Test;

/** The ink of the demo before and after, counted in dots of 600 to the inch drawn by Java's own renderer. */
class InkTest {
    private static final double DOTS_PER_MM = 600 / 25.4;
    private static final double PEN_MM = 0.18;
    private static final Affine<PagePoint, SheetPoint> AS_IT_IS = Affine.identity(Space.PAGE, Space.SHEET);

    @Test
    void cleaningTakesAndAddsHardlyAnyInk() throws InputFault {
        LineSheet sheet = LineSheets.read(Path.of("passes", "kiln-yard", "lines.pdf"));
        Map<Srgb, List<VectorPath<SheetPoint>>> byColor = new TreeMap<>();
        for (Stroke stroke : sheet.strokes()) {
            byColor.computeIfAbsent(stroke.color(), color -> new ArrayList<>())
                    .add(stroke.path().transform(AS_IT_IS));
        }
        double before = 0;
        double after = 0;
        for (List<VectorPath<SheetPoint>> lines : byColor.values()) {
            List<VectorPath<SheetPoint>> cleaned =
                    CleanUp.run(lines, CleanUpSettings.STANDARD).paths();
            assertThat(cleaned.size()).isLessThan(lines.size());
            double one = dots(lines, sheet.page());
            double other = dots(cleaned, sheet.page());
            assertThat(other).isCloseTo(one, within(0.02 * one));
            before += one;
            after += other;
        }
        assertThat(after).isCloseTo(before, within(0.01 * before));
    }

    private static long dots(List<VectorPath<SheetPoint>> lines, SheetSize page) {
        BufferedImage image = new BufferedImage(
                (int) (page.widthMm() * DOTS_PER_MM),
                (int) (page.heightMm() * DOTS_PER_MM),
                BufferedImage.TYPE_BYTE_BINARY);
        Graphics2D graphics = image.createGraphics();
        graphics.scale(DOTS_PER_MM, DOTS_PER_MM);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.setStroke(new BasicStroke((float) PEN_MM, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        for (VectorPath<SheetPoint> line : lines) {
            graphics.draw(shape(line));
        }
        graphics.dispose();
        long dots = 0;
        for (byte eight : ((DataBufferByte) image.getRaster().getDataBuffer()).getData()) {
            dots += Integer.bitCount(eight & 0xff);
        }
        return dots;
    }

    private static Path2D shape(VectorPath<SheetPoint> line) {
        Path2D.Double shape = new Path2D.Double();
        line.visit(new VectorPath.Visitor() {
            @Override
            public void moveTo(double x, double y) {
                shape.moveTo(x, y);
            }

            @Override
            public void lineTo(double x, double y) {
                shape.lineTo(x, y);
            }

            @Override
            public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
                shape.curveTo(x1, y1, x2, y2, x, y);
            }

            @Override
            public void close() {
                shape.closePath();
            }
        });
        return shape;
    }
}
