package org.adumbrate.perspective.shadows;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.SheetPaths;
import org.adumbrate.perspective.SunDirection;
import org.adumbrate.perspective.View;
import org.adumbrate.raster.GreyImage;

/**
 * A courtyard of boxes, drawn and rendered by a ray caster of its own: a floor, a back wall and two side walls, posts, shelves on the walls and a
 * box askew. Model points are those of {@link View}: the eye stands above the origin.
 */
final class Courtyard {
    static final SheetSize SHEET = new SheetSize(420, 280);
    static final float DARK = 0.25f;
    private static final int SAMPLES = 2;
    private static final double[] OFF = {0.25, 0.75};

    private final View view;
    private final PixelSize size;
    private final List<Box> boxes = new ArrayList<>();
    /** Where each sample lies, and whether it is up against the sky. */
    private float[] seen = new float[0];

    /** A box, turned about its middle. */
    private static final class Box {
        private final double[] from;
        private final double[] to;
        private final double turn;

        Box(double[] from, double[] to, double turn) {
            this.from = from;
            this.to = to;
            this.turn = turn;
        }

        double[] local(double[] p, boolean isPoint) {
            double cos = Math.cos(turn);
            double sin = Math.sin(turn);
            double cx = isPoint ? (from[0] + to[0]) / 2 : 0;
            double cy = isPoint ? (from[1] + to[1]) / 2 : 0;
            return new double[] {
                cx + cos * (p[0] - cx) + sin * (p[1] - cy), cy - sin * (p[0] - cx) + cos * (p[1] - cy), p[2]
            };
        }

        /** Where a ray enters, in its own length; without bound if it misses. */
        double hit(double[] at, double[] along) {
            double[] o = turn == 0 ? at : local(at, true);
            double[] d = turn == 0 ? along : local(along, false);
            double in = 0;
            double out = Double.POSITIVE_INFINITY;
            for (int k = 0; k < 3; k++) {
                double a = (from[k] - o[k]) / d[k];
                double b = (to[k] - o[k]) / d[k];
                in = Math.max(in, Math.min(a, b));
                out = Math.min(out, Math.max(a, b));
            }
            return in < out ? in : Double.POSITIVE_INFINITY;
        }

        ModelPoint corner(int k) {
            double cx = (from[0] + to[0]) / 2;
            double cy = (from[1] + to[1]) / 2;
            double x = ((k & 1) == 0 ? from[0] : to[0]) - cx;
            double y = ((k & 2) == 0 ? from[1] : to[1]) - cy;
            return new ModelPoint(
                    cx + Math.cos(turn) * x - Math.sin(turn) * y,
                    cy + Math.sin(turn) * x + Math.cos(turn) * y,
                    (k & 4) == 0 ? from[2] : to[2]);
        }
    }

    Courtyard(long seed, double turnDeg, int widthPx) {
        view = new View(300, new SheetPoint(200, 130), 3, Math.toRadians(turnDeg));
        size = new PixelSize(widthPx, widthPx * 2 / 3);
        Random random = new Random(seed);
        box(-30, -30, -1, 30, 40, 0);
        box(-9, 22, 0, 9, 22.4, 6);
        box(-9, 9, 0, -8.7, 22, 5);
        box(8, 9, 0, 8.3, 22, 4);
        for (int k = 0; k < 6; k++) {
            double x = -6 + 2.2 * k + random.nextDouble();
            double y = 10 + 8 * random.nextDouble();
            double thick = 0.15 + 0.3 * random.nextDouble();
            box(x, y, 0, x + thick, y + thick, 1 + 2 * random.nextDouble());
        }
        for (int k = 0; k < 4; k++) {
            double x = -7 + 3.5 * k + random.nextDouble();
            double z = 1 + 3 * random.nextDouble();
            box(x, 21.2 - 0.4 * random.nextDouble(), z, x + 1 + random.nextDouble(), 22, z + 0.15);
            double y = 10.5 + 2.6 * k + random.nextDouble();
            double up = 1 + 2 * random.nextDouble();
            box(-8.7, y, up, -8.1 + 0.4 * random.nextDouble(), y + 0.8, up + 0.15);
            box(7.2 - 0.4 * random.nextDouble(), y, up, 8, y + 0.8, up + 0.15);
        }
        boxes.add(new Box(new double[] {-1, 13, 0}, new double[] {0.5, 14, 0.8}, 0.4 + random.nextDouble()));
        look();
    }

    private void box(double x0, double y0, double z0, double x1, double y1, double z1) {
        boxes.add(new Box(new double[] {x0, y0, z0}, new double[] {x1, y1, z1}, 0));
    }

    View view() {
        return view;
    }

    /** All edges of the boxes but of the floor, hidden ones too. */
    List<VectorPath<SheetPoint>> lines() {
        List<VectorPath<SheetPoint>> lines = new ArrayList<>();
        for (Box box : boxes.subList(1, boxes.size())) {
            for (int k = 0; k < 8; k++) {
                for (int bit = 1; bit < 8; bit *= 2) {
                    if ((k & bit) == 0) {
                        SheetPoint from = view.project(box.corner(k)).orElseThrow();
                        SheetPoint to = view.project(box.corner(k | bit)).orElseThrow();
                        lines.add(SheetPaths.line(from.x(), from.y(), to.x(), to.y()));
                    }
                }
            }
        }
        return lines;
    }

    private void look() {
        int width = size.width() * SAMPLES;
        int height = size.height() * SAMPLES;
        float[] found = new float[3 * width * height];
        double mm = SHEET.widthMm() / size.width();
        IntStream.range(0, height).parallel().forEach(row -> {
            double[] eye = {0, 0, view.eyeHeightM()};
            for (int column = 0; column < width; column++) {
                double x = middle(column) * mm;
                double y = middle(row) * mm;
                ModelPoint ahead = view.at(new SheetPoint(x, y), 1);
                double[] along = {ahead.x(), ahead.y(), ahead.z() - eye[2]};
                double t = nearest(eye, along);
                for (int k = 0; k < 3; k++) {
                    found[3 * (row * width + column) + k] = (float) (eye[k] + t * (1 - 1e-5) * along[k]);
                }
            }
        });
        seen = found;
    }

    /** Where a sample lies, in pixels. */
    private static double middle(int sample) {
        int pixel = sample / SAMPLES;
        return pixel + OFF[sample % SAMPLES];
    }

    private double nearest(double[] at, double[] along) {
        double nearest = Double.POSITIVE_INFINITY;
        for (Box box : boxes) {
            nearest = Math.min(nearest, box.hit(at, along));
        }
        return nearest;
    }

    /** The shadow pass: lit and sky white, shadow dark. */
    GreyImage shadows(SunDirection sun) {
        int width = size.width() * SAMPLES;
        float[] light = new float[size.width() * size.height()];
        double[] along = {sun.x(), sun.y(), sun.z()};
        IntStream.range(0, size.height()).parallel().forEach(y -> {
            for (int x = 0; x < size.width(); x++) {
                float sum = 0;
                for (int k = 0; k < SAMPLES * SAMPLES; k++) {
                    int at = 3 * ((y * SAMPLES + k / SAMPLES) * width + x * SAMPLES + k % SAMPLES);
                    double[] from = {seen[at], seen[at + 1], seen[at + 2]};
                    boolean isLit = !Double.isFinite(from[0]) || Double.isInfinite(nearest(from, along));
                    sum += isLit ? 1 : DARK;
                }
                light[y * size.width() + x] = sum / (SAMPLES * SAMPLES);
            }
        });
        return new GreyImage(size, light);
    }
}
