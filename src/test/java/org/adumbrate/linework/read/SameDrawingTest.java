package org.adumbrate.linework.read;

import static org.adumbrate.linework.read.PathAssertions.assertPath;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.adumbrate.linework.LineSheet;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** One drawing written in many ways is read as the same: 200 x 100 mm, a line and a curve. */
class SameDrawingTest {
    private static final double TOLERANCE = 1e-3;
    private static final double POINT = 72 / 25.4;
    private static final double WIDTH = 200;
    private static final double HEIGHT = 100;

    private static Path folder;

    @BeforeContainer
    static void makeFolder() throws IOException {
        folder = PropertyFolder.make("drawings");
    }

    @AfterContainer
    static void removeFolder() throws IOException {
        PropertyFolder.remove(folder);
    }

    @Property(tries = 60, seed = "1")
    void turnedPagesOtherOriginsUnitsAndNestedFormsReadTheSame(@ForAll long seed) throws IOException {
        Random random = new Random(seed);
        double[] drawing = drawing(random);
        int turn = 90 * random.nextInt(4);
        double unit = 0.5 + random.nextDouble() * 3;
        double left = random.nextInt(2000) - 1000;
        double bottom = random.nextInt(2000) - 1000;
        boolean onItsSide = turn % 180 != 0;
        double width = (onItsSide ? HEIGHT : WIDTH) * POINT / unit;
        double height = (onItsSide ? WIDTH : HEIGHT) * POINT / unit;

        // mm of the page as seen, to the unturned page with y up, to user space
        AffineTransform toUser = AffineTransform.getTranslateInstance(left, bottom);
        toUser.scale(POINT / unit, POINT / unit);
        toUser.concatenate(unturned(turn));
        AffineTransform form = randomMap(random);
        AffineTransform inner = inverse(form);
        inner.concatenate(toUser);

        try (PdfSketch sketch = new PdfSketch(1, 1)) {
            sketch.page().setMediaBox(new PDRectangle((float) left, (float) bottom, (float) width, (float) height));
            sketch.page().setRotation(turn);
            sketch.page().setUserUnit((float) unit);
            double[] m = new double[6];
            form.getMatrix(m);
            double scale = Math.sqrt(Math.abs(inner.getDeterminant()));
            String content = number(0.35 * scale) + " w " + content(inner, drawing);
            sketch.with(COSName.XOBJECT, "F", sketch.form(content, new double[] {-1e5, -1e5, 1e5, 1e5}, m))
                    .draws("q /F Do Q");
            assertDrawing(sketch.read(folder), drawing);
        }
    }

    @Property(tries = 60, seed = "1")
    void anSvgReadsAsThePdfDoes(@ForAll long seed) throws IOException {
        Random random = new Random(seed);
        double[] drawing = drawing(random);
        AffineTransform map = randomMap(random);
        AffineTransform inner = inverse(map);
        inner.concatenate(AffineTransform.getTranslateInstance(-50, 30));
        double[] m = new double[6];
        map.getMatrix(m);
        double width = 0.35 * Math.sqrt(Math.abs(inner.getDeterminant()));
        double[] p = mapped(inner, drawing);
        String svg =
                "<g transform='matrix(" + numbers(m) + ")' fill='none' stroke='black' stroke-width='" + number(width)
                        + "'><line x1='" + number(p[0]) + "' y1='" + number(p[1]) + "' x2='" + number(p[2]) + "' y2='"
                        + number(p[3]) + "'/><path d='M" + number(p[4]) + " " + number(p[5]) + "C"
                        + numbers(Arrays.copyOfRange(p, 6, 12)) + "'/></g>";
        assertDrawing(SvgSketch.read(folder, "width='20cm' height='10cm' viewBox='-50 30 200 100'", svg), drawing);
    }

    private static void assertDrawing(LineSheet sheet, double[] d) {
        assertThat(sheet.page().widthMm()).isCloseTo(WIDTH, within(TOLERANCE));
        assertThat(sheet.page().heightMm()).isCloseTo(HEIGHT, within(TOLERANCE));
        assertThat(sheet.strokes()).hasSize(2);
        String line = "M " + d[0] + " " + d[1] + " L " + d[2] + " " + d[3];
        String curve = "M " + d[4] + " " + d[5] + " C " + d[6] + " " + d[7] + " " + d[8] + " " + d[9] + " " + d[10]
                + " " + d[11];
        assertPath(sheet.strokes().get(0).path(), line, TOLERANCE);
        assertPath(sheet.strokes().get(1).path(), curve, TOLERANCE);
        assertThat(sheet.strokes().get(1).widthMm()).isCloseTo(0.35, within(TOLERANCE));
    }

    private static double[] drawing(Random random) {
        return random.doubles(12, 1, HEIGHT - 1).toArray();
    }

    /** From mm of the page as seen to mm of the page before it is turned, with y up. */
    private static AffineTransform unturned(int turn) {
        return switch (turn) {
            case 90 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 180 -> new AffineTransform(-1, 0, 0, 1, WIDTH, 0);
            case 270 -> new AffineTransform(0, -1, -1, 0, HEIGHT, WIDTH);
            default -> new AffineTransform(1, 0, 0, -1, 0, HEIGHT);
        };
    }

    private static AffineTransform randomMap(Random random) {
        AffineTransform map = AffineTransform.getTranslateInstance(random.nextInt(100), random.nextInt(100));
        map.rotate(random.nextDouble() * 6);
        map.scale(0.5 + random.nextDouble(), random.nextBoolean() ? 1 : -1);
        map.shear(random.nextDouble() - 0.5, 0);
        return map;
    }

    private static AffineTransform inverse(AffineTransform map) {
        try {
            return map.createInverse();
        } catch (NoninvertibleTransformException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String content(AffineTransform map, double[] drawing) {
        double[] p = mapped(map, drawing);
        return number(p[0]) + " " + number(p[1]) + " m " + number(p[2]) + " " + number(p[3]) + " l S " + number(p[4])
                + " " + number(p[5]) + " m " + numbers(Arrays.copyOfRange(p, 6, 12)) + " c S";
    }

    private static double[] mapped(AffineTransform map, double[] drawing) {
        double[] mapped = new double[drawing.length];
        for (int k = 0; k < drawing.length; k += 2) {
            Point2D point = map.transform(new Point2D.Double(drawing[k], drawing[k + 1]), null);
            mapped[k] = point.getX();
            mapped[k + 1] = point.getY();
        }
        return mapped;
    }

    private static String numbers(double... values) {
        StringBuilder text = new StringBuilder();
        for (double value : values) {
            text.append(number(value)).append(' ');
        }
        return text.toString().strip();
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.7f", value);
    }
}
