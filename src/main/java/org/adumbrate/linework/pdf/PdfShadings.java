package org.adumbrate.linework.pdf;

import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.linework.clip.ClipShape;
import org.adumbrate.linework.clip.FillRule;
import org.adumbrate.linework.page.PathTracer;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSStream;

/** How far shadings reach (ISO 32000-1, 8.7.4.5): everywhere within that they are opaque. */
final class PdfShadings {
    /** Farther than any page, in mm. */
    private static final double FAR_MM = 1e5;

    /** A circle of four cubic curves: 4/3 (√2 - 1) of the radius from end to control point. */
    private static final double CIRCLE = 4.0 / 3 * (Math.sqrt(2) - 1);

    private final COSDictionary shading;
    private final AffineTransform toPage;

    private PdfShadings(COSDictionary shading, AffineTransform toPage) {
        this.shading = shading;
        this.toPage = toPage;
    }

    /**
     * The shapes within all of which a shading paints.
     *
     * @param shading may be missing
     * @param toPage its own coordinates to mm of the page
     * @return nothing if it is damaged or reaches in a way that is not followed
     */
    static Optional<List<ClipShape<PagePoint>>> reach(COSDictionary shading, AffineTransform toPage) {
        try {
            if (shading == null || toPage.getDeterminant() == 0) {
                return Optional.empty();
            }
            return new PdfShadings(shading, toPage).reach();
        } catch (IOException | RuntimeException e) {
            return Optional.empty();
        }
    }

    /** The matrix that a dictionary states, or that which changes nothing. */
    static AffineTransform matrix(COSDictionary dictionary) {
        double[] m = numbers(dictionary, COSName.MATRIX, 1, 0, 0, 1, 0, 0);
        return m.length == 6 ? new AffineTransform(m) : new AffineTransform();
    }

    private Optional<List<ClipShape<PagePoint>>> reach() throws IOException {
        Optional<ClipShape<PagePoint>> painted =
                switch (shading.getInt(COSName.SHADING_TYPE)) {
                    case 1 -> Optional.of(domain());
                    case 2 -> axial();
                    case 3 -> radial();
                    case 4, 5, 6, 7 ->
                        shading instanceof COSStream stream ? PdfMesh.outline(stream, toPage) : Optional.empty();
                    default -> Optional.empty();
                };
        if (painted.isEmpty()) {
            return Optional.empty();
        }
        List<ClipShape<PagePoint>> shapes = new ArrayList<>();
        shapes.add(painted.get());
        double[] box = numbers(shading, COSName.BBOX);
        if (box.length == 4) {
            PathTracer pen = pen(toPage);
            pen.rectangle(box[0], box[1], box[2] - box[0], box[3] - box[1]);
            shapes.add(new ClipShape<>(pen.take(), FillRule.NON_ZERO));
        }
        return Optional.of(shapes);
    }

    private ClipShape<PagePoint> domain() {
        double[] domain = numbers(shading, COSName.DOMAIN, 0, 1, 0, 1);
        AffineTransform inner = new AffineTransform(toPage);
        inner.concatenate(matrix(shading));
        PathTracer pen = pen(inner);
        pen.rectangle(domain[0], domain[2], domain[1] - domain[0], domain[3] - domain[2]);
        return new ClipShape<>(pen.take(), FillRule.NON_ZERO);
    }

    /** The strip between the perpendiculars at both ends of the axis, and what lies beyond an end that extends. */
    private Optional<ClipShape<PagePoint>> axial() {
        double[] c = numbers(shading, COSName.COORDS);
        double length = Math.hypot(c[2] - c[0], c[3] - c[1]);
        if (length == 0) {
            return Optional.empty();
        }
        double far = far();
        double ux = (c[2] - c[0]) / length;
        double uy = (c[3] - c[1]) / length;
        double from = isExtended(0) ? -far : 0;
        double to = isExtended(1) ? far : length;
        PathTracer pen = pen(toPage);
        pen.moveTo(c[0] + from * ux - far * uy, c[1] + from * uy + far * ux);
        pen.lineTo(c[0] + to * ux - far * uy, c[1] + to * uy + far * ux);
        pen.lineTo(c[0] + to * ux + far * uy, c[1] + to * uy - far * ux);
        pen.lineTo(c[0] + from * ux + far * uy, c[1] + from * uy - far * ux);
        pen.close();
        return Optional.of(new ClipShape<>(pen.take(), FillRule.NON_ZERO));
    }

    /** Between two circles of which one lies within the other; the cones that others make are not followed. */
    private Optional<ClipShape<PagePoint>> radial() {
        double[] c = numbers(shading, COSName.COORDS);
        double apart = Math.hypot(c[3] - c[0], c[4] - c[1]);
        boolean grows = c[5] >= c[2];
        if (apart > Math.abs(c[5] - c[2])) {
            return Optional.empty();
        }
        int inner = grows ? 0 : 3;
        int outer = grows ? 3 : 0;
        PathTracer pen = pen(toPage);
        double reach = isExtended(outer / 3) ? far() : c[outer + 2];
        circle(pen, c[outer], c[outer + 1], reach);
        if (!isExtended(inner / 3) && c[inner + 2] > 0) {
            circle(pen, c[inner], c[inner + 1], c[inner + 2]);
        }
        return Optional.of(new ClipShape<>(pen.take(), FillRule.EVEN_ODD));
    }

    private static void circle(PathTracer pen, double x, double y, double radius) {
        double k = CIRCLE * radius;
        pen.moveTo(x + radius, y);
        pen.curveTo(x + radius, y + k, x + k, y + radius, x, y + radius);
        pen.curveTo(x - k, y + radius, x - radius, y + k, x - radius, y);
        pen.curveTo(x - radius, y - k, x - k, y - radius, x, y - radius);
        pen.curveTo(x + k, y - radius, x + radius, y - k, x + radius, y);
        pen.close();
    }

    /** Beyond every page, in the shading's own coordinates. */
    private double far() {
        double[] c = numbers(shading, COSName.COORDS);
        double reach = 0;
        for (double value : c) {
            reach = Math.max(reach, Math.abs(value));
        }
        double offset = Math.hypot(toPage.getTranslateX(), toPage.getTranslateY());
        double stretch = Math.max(
                Math.hypot(toPage.getScaleX(), toPage.getShearX()), Math.hypot(toPage.getScaleY(), toPage.getShearY()));
        return reach + (FAR_MM + offset) * stretch / Math.abs(toPage.getDeterminant());
    }

    private boolean isExtended(int end) {
        COSArray both = shading.getCOSArray(COSName.EXTEND);
        return both != null && both.size() > end && both.getObject(end) == COSBoolean.TRUE;
    }

    private static PathTracer pen(AffineTransform toPage) {
        PathTracer pen = new PathTracer();
        pen.drawThrough(toPage);
        return pen;
    }

    /** The numbers that a dictionary states under a name, or others if it states none. */
    static double[] numbers(COSDictionary dictionary, COSName name, double... otherwise) {
        COSArray stated = dictionary.getCOSArray(name);
        if (stated == null) {
            return otherwise;
        }
        double[] numbers = new double[stated.size()];
        for (int k = 0; k < numbers.length; k++) {
            numbers[k] = stated.getObject(k) instanceof COSNumber number ? number.floatValue() : 0;
        }
        return numbers;
    }
}
