package org.adumbrate.linework.pdf;

import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.util.Arrays;
import java.util.Optional;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.linework.clip.ClipShape;
import org.adumbrate.linework.clip.FillRule;
import org.adumbrate.linework.page.PathTracer;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;

/**
 * The outlines of the triangles and patches of a mesh (ISO 32000-1, 8.7.4.5.5 to 8.7.4.5.8), all drawn the same way round, so that
 * together they enclose what the mesh paints. A patch is taken to stay within its four sides.
 */
final class PdfMesh {
    private static final int MOST_BYTES = 1 << 22;
    private static final COSName PER_ROW = COSName.getPDFName("VerticesPerRow");

    private final PathTracer pen = new PathTracer();
    private final int type;
    private final int perRow;
    private final double[] decode;
    private final int flagBits;
    private final int coordinateBits;
    private final int colorBits;
    private final byte[] data;
    private long bit;

    private PdfMesh(COSStream mesh, AffineTransform toPage) throws IOException {
        pen.drawThrough(toPage);
        type = mesh.getInt(COSName.SHADING_TYPE);
        perRow = mesh.getInt(PER_ROW, 2);
        decode = PdfShadings.numbers(mesh, COSName.DECODE);
        flagBits = type == 5 ? 0 : mesh.getInt(COSName.BITS_PER_FLAG, 8);
        coordinateBits = mesh.getInt(COSName.BITS_PER_COORDINATE);
        int components = mesh.containsKey(COSName.FUNCTION) ? 1 : (decode.length - 4) / 2;
        colorBits = components * mesh.getInt(COSName.BITS_PER_COMPONENT);
        data = PdfContent.of(mesh, MOST_BYTES);
    }

    /**
     * What a mesh paints.
     *
     * @return nothing if it states no sensible sizes
     * @throws IOException if its data are damaged or too much
     */
    static Optional<ClipShape<PagePoint>> outline(COSStream mesh, AffineTransform toPage) throws IOException {
        PdfMesh reading = new PdfMesh(mesh, toPage);
        boolean sensible = reading.decode.length >= 6
                && reading.coordinateBits > 0
                && reading.coordinateBits <= 32
                && reading.colorBits > 0
                && reading.flagBits >= 0
                && reading.flagBits <= 8
                && reading.perRow > 1;
        if (!sensible) {
            return Optional.empty();
        }
        switch (reading.type) {
            case 4 -> reading.triangles();
            case 5 -> reading.lattice();
            default -> reading.patches(reading.type == 6 ? 12 : 16);
        }
        return Optional.of(new ClipShape<>(reading.pen.take(), FillRule.NON_ZERO));
    }

    private boolean hasMore(long bits) {
        return bit + bits <= 8L * data.length;
    }

    private void triangles() {
        double[] a = {};
        double[] b = {};
        double[] c = {};
        int missing = 3;
        while (hasMore(flagBits + 2L * coordinateBits + colorBits)) {
            int flag = (int) bits(flagBits) & 3;
            double[] next = vertex();
            if (flag == 0 && missing == 0) {
                missing = 3;
            }
            if (missing > 0) {
                missing--;
                a = b;
                b = c;
                c = next;
            } else {
                a = flag == 1 ? b : a;
                b = c;
                c = next;
            }
            if (missing == 0) {
                ring(a, b, c);
            }
        }
    }

    private void lattice() {
        double[][] above = null;
        while (hasMore(perRow * (2L * coordinateBits + colorBits))) {
            double[][] row = new double[perRow][];
            for (int k = 0; k < perRow; k++) {
                row[k] = vertex();
            }
            for (int k = 1; above != null && k < perRow; k++) {
                ring(above[k - 1], above[k], row[k - 1]);
                ring(above[k], row[k], row[k - 1]);
            }
            above = row;
        }
    }

    private double[] vertex() {
        double[] point = point();
        bit += colorBits;
        align();
        return point;
    }

    private void patches(int points) {
        double[][] p = new double[points][];
        boolean begun = false;
        while (hasMore(flagBits + 2L * (points - 4) * coordinateBits)) {
            int flag = (int) bits(flagBits) & 3;
            int first = 0;
            if (flag != 0 && begun) {
                double[][] before = p;
                p = new double[points][];
                for (int k = 0; k < 4; k++) {
                    p[k] = before[(3 * flag + k) % 12];
                }
                first = 4;
            }
            if (!hasMore(2L * (points - first) * coordinateBits)) {
                return;
            }
            for (int k = first; k < points; k++) {
                p[k] = point();
            }
            bit += (long) (first == 0 ? 4 : 2) * colorBits;
            align();
            begun = true;
            patch(p);
        }
    }

    /** Once around the four sides of a patch. */
    private void patch(double[][] p) {
        double[][] around = Arrays.copyOf(p, 13);
        around[12] = p[0];
        if (area(p[0], p[3], p[6]) + area(p[0], p[6], p[9]) < 0) {
            for (int k = 0; k < 6; k++) {
                double[] other = around[k];
                around[k] = around[12 - k];
                around[12 - k] = other;
            }
        }
        pen.moveTo(around[0][0], around[0][1]);
        for (int k = 1; k < 12; k += 3) {
            pen.curveTo(
                    around[k][0], around[k][1], around[k + 1][0], around[k + 1][1], around[k + 2][0], around[k + 2][1]);
        }
        pen.close();
    }

    private void ring(double[] a, double[] b, double[] c) {
        boolean turned = area(a, b, c) < 0;
        pen.moveTo(a[0], a[1]);
        pen.lineTo(turned ? c[0] : b[0], turned ? c[1] : b[1]);
        pen.lineTo(turned ? b[0] : c[0], turned ? b[1] : c[1]);
        pen.close();
    }

    private static double area(double[] a, double[] b, double[] c) {
        return (b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1]);
    }

    private double[] point() {
        double most = Math.pow(2, coordinateBits) - 1;
        double x = decode[0] + bits(coordinateBits) / most * (decode[1] - decode[0]);
        double y = decode[2] + bits(coordinateBits) / most * (decode[3] - decode[2]);
        return new double[] {x, y};
    }

    private void align() {
        bit = (bit + 7) / 8 * 8;
    }

    private long bits(int count) {
        long value = 0;
        for (int k = 0; k < count; k++, bit++) {
            int shift = 7 - (int) (bit % 8);
            value = (value << 1) | ((data[(int) (bit / 8)] >> shift) & 1);
        }
        return value;
    }
}
