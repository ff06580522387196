package org.adumbrate.linework.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.Stroke;

/**
 * A box turned anyhow, its six faces painted white from back to front and their edges stroked, is read as the edges that are seen,
 * whoever wrote it.
 */
class PaintedBoxTest {
    private static final int[][] FACES = {
        {0, 1, 3, 2}, {4, 6, 7, 5}, {0, 4, 5, 1}, {2, 3, 7, 6}, {0, 2, 6, 4}, {1, 5, 7, 3}
    };

    private static Path folder;

    @BeforeContainer
    static void makeFolder() throws IOException {
        folder = PropertyFolder.make("boxes");
    }

    @AfterContainer
    static void removeFolder() throws IOException {
        PropertyFolder.remove(folder);
    }

    @Property(tries = 40, seed = "1")
    void theVisibleEdgesOfAPaintedBoxAreRead(@ForAll long seed) throws IOException {
        double[][] corners = corners(new Random(seed));
        List<int[]> faces = new ArrayList<>(List.of(FACES));
        faces.sort(Comparator.comparingDouble(face -> -depth(face, corners)));
        List<double[]> visible = new ArrayList<>();
        for (int[] face : faces) {
            if (facesViewer(face, corners)) {
                for (int k = 0; k < 4; k++) {
                    visible.add(edge(corners[face[k]], corners[face[(k + 1) % 4]]));
                }
            }
        }
        StringBuilder svg = new StringBuilder("<g fill='white' stroke='black' stroke-width='.2'>");
        StringBuilder pdf = new StringBuilder("1 g 0 G ");
        for (int[] face : faces) {
            svg.append("<path d='")
                    .append(ring(face, corners, "M%s", "L%s", "Z"))
                    .append("'/>");
            pdf.append(ring(face, corners, "%s m ", "%s l ", "b "));
        }
        try (PdfSketch sketch = new PdfSketch(200, 200)) {
            compare(sketch.draws("1 0 0 -1 0 200 cm " + pdf).read(folder), visible, 25.4 / 72);
        }
        LineSheet read = SvgSketch.read(folder, "width='200mm' height='200mm' viewBox='0 0 200 200'", svg + "</g>");
        compare(read, visible, 1);
    }

    /** Every point of each is on the other, to within 0.01 mm: so near to a rim a line is seen. */
    private static void compare(LineSheet sheet, List<double[]> visible, double scale) {
        List<double[]> read = new ArrayList<>();
        for (Stroke stroke : sheet.strokes()) {
            stroke.path()
                    .pieces(piece -> read.add(
                            new double[] {piece.x0() / scale, piece.y0() / scale, piece.x3() / scale, piece.y3() / scale
                            }));
        }
        assertThat(scale * farthest(visible, read))
                .as("mm from an edge that is seen to what is read")
                .isCloseTo(0, within(0.0105));
        assertThat(scale * farthest(read, visible))
                .as("mm from what is read to an edge that is seen")
                .isCloseTo(0, within(0.0105));
    }

    private static double farthest(List<double[]> lines, List<double[]> others) {
        double farthest = 0;
        for (double[] line : lines) {
            for (int k = 0; k <= 200; k++) {
                double x = line[0] + k / 200.0 * (line[2] - line[0]);
                double y = line[1] + k / 200.0 * (line[3] - line[1]);
                double nearest = others.stream()
                        .mapToDouble(other -> distance(other, x, y))
                        .min()
                        .orElse(Double.POSITIVE_INFINITY);
                farthest = Math.max(farthest, nearest);
            }
        }
        return farthest;
    }

    private static double distance(double[] line, double x, double y) {
        double dx = line[2] - line[0];
        double dy = line[3] - line[1];
        double square = dx * dx + dy * dy;
        double t = square == 0 ? 0 : Math.max(0, Math.min(1, ((x - line[0]) * dx + (y - line[1]) * dy) / square));
        return Math.hypot(x - line[0] - t * dx, y - line[1] - t * dy);
    }

    /** The corners of a box in perspective, x, y on the page and z away from the eye, rounded as files round. */
    private static double[][] corners(Random random) {
        double a = random.nextDouble() * 6;
        double b = random.nextDouble() * 6;
        double[] size = random.doubles(3, 15, 50).toArray();
        double[][] corners = new double[8][];
        for (int k = 0; k < 8; k++) {
            double x = size[0] * ((k & 1) - 0.5);
            double y = size[1] * ((k >> 1 & 1) - 0.5);
            double z = size[2] * ((k >> 2 & 1) - 0.5);
            double u = x * Math.cos(a) - y * Math.sin(a);
            double v = x * Math.sin(a) + y * Math.cos(a);
            double w = v * Math.sin(b) + z * Math.cos(b) + 200;
            v = v * Math.cos(b) - z * Math.sin(b);
            corners[k] = new double[] {rounded(100 + 200 * u / w), rounded(100 + 200 * v / w), w};
        }
        return corners;
    }

    private static double rounded(double value) {
        return Math.round(value * 100) / 100.0;
    }

    private static double depth(int[] face, double[][] corners) {
        return corners[face[0]][2]
                + corners[face[1]][2]
                + corners[face[2]][2]
                + corners[face[3]][2]
                - (facesViewer(face, corners) ? 1e6 : 0);
    }

    private static boolean facesViewer(int[] face, double[][] corners) {
        double[] a = corners[face[0]];
        double[] b = corners[face[1]];
        double[] c = corners[face[2]];
        return (b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1]) > 0;
    }

    private static double[] edge(double[] from, double[] to) {
        return new double[] {from[0], from[1], to[0], to[1]};
    }

    private static String ring(int[] face, double[][] corners, String first, String next, String close) {
        StringBuilder ring = new StringBuilder();
        for (int k = 0; k < 4; k++) {
            double[] corner = corners[face[k]];
            ring.append(String.format(
                    Locale.ROOT, k == 0 ? first : next, String.format(Locale.ROOT, "%.2f %.2f", corner[0], corner[1])));
        }
        return ring + close;
    }
}
