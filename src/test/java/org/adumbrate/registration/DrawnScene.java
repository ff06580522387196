package org.adumbrate.registration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.raster.GreyImage;

/** A sheet of irregular quadrilaterals, of which passes are drawn under any map with exact truth. */
final class DrawnScene {
    static final SheetSize SHEET = new SheetSize(300, 200);

    private static final int COLUMNS = 9;
    private static final int ROWS = 6;

    private final List<List<SheetPoint>> shapes = new ArrayList<>();
    private final float[] tones = new float[COLUMNS * ROWS];

    DrawnScene(long seed) {
        Random random = new Random(seed);
        double w = SHEET.widthMm() / COLUMNS;
        double h = SHEET.heightMm() / ROWS;
        for (int k = 0; k < COLUMNS * ROWS; k++) {
            int row = k / COLUMNS;
            double x = k % COLUMNS * w;
            double y = row * h;
            shapes.add(List.of(
                    near(random, x + 0.2 * w, y + 0.2 * h, 0.15 * w),
                    near(random, x + 0.8 * w, y + 0.2 * h, 0.15 * w),
                    near(random, x + 0.8 * w, y + 0.8 * h, 0.15 * w),
                    near(random, x + 0.2 * w, y + 0.8 * h, 0.15 * w)));
            tones[k] = 0.1f + 0.5f * random.nextFloat();
        }
    }

    private static SheetPoint near(Random random, double x, double y, double far) {
        return new SheetPoint(x + far * (2 * random.nextDouble() - 1), y + far * (2 * random.nextDouble() - 1));
    }

    /** The corners of each shape. */
    List<List<SheetPoint>> shapes() {
        return shapes;
    }

    /** The outlines of the shapes. */
    LinePattern lines() {
        List<VectorPath<SheetPoint>> paths = new ArrayList<>();
        for (List<SheetPoint> shape : shapes) {
            VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
            path.moveTo(shape.get(0).x(), shape.get(0).y());
            shape.subList(1, 4).forEach(p -> path.lineTo(p.x(), p.y()));
            path.close();
            paths.add(path.build());
        }
        return LinePattern.of(paths);
    }

    /** The scene with its shapes moved on the sheet by their depth, as another camera would show what stands farther back. */
    DrawnScene fromElsewhere(double dx, double dy) {
        DrawnScene moved = new DrawnScene(0);
        for (int k = 0; k < shapes.size(); k++) {
            double times = k % 8 / 7.0;
            moved.shapes.set(
                    k,
                    shapes.get(k).stream()
                            .map(p -> new SheetPoint(p.x() + times * dx, p.y() + times * dy))
                            .toList());
            moved.tones[k] = tones[k];
        }
        return moved;
    }

    /** Filled shapes on white. */
    PassImage pass(int width, int height, Affine<SheetPoint, RasterPoint> map) {
        float[] image = white(width, height);
        for (int k = 0; k < shapes.size(); k++) {
            Coverage.paint(
                    image, width, height, shapes.get(k).stream().map(map::apply).toList(), tones[k]);
        }
        return PassImage.full(new GreyImage(new PixelSize(width, height), image));
    }

    /** The outlines alone, as dark lines of a width in pixels. */
    PassImage outlines(int width, int height, Affine<SheetPoint, RasterPoint> map, double thick) {
        float[] image = white(width, height);
        for (List<SheetPoint> shape : shapes) {
            for (int k = 0; k < 4; k++) {
                RasterPoint p = map.apply(shape.get(k));
                RasterPoint q = map.apply(shape.get((k + 1) % 4));
                double length = Math.hypot(q.x() - p.x(), q.y() - p.y());
                double nx = thick / 2 * (p.y() - q.y()) / length;
                double ny = thick / 2 * (q.x() - p.x()) / length;
                Coverage.paint(
                        image,
                        width,
                        height,
                        List.of(
                                new RasterPoint(p.x() + nx, p.y() + ny),
                                new RasterPoint(q.x() + nx, q.y() + ny),
                                new RasterPoint(q.x() - nx, q.y() - ny),
                                new RasterPoint(p.x() - nx, p.y() - ny)),
                        0.1f);
            }
        }
        return PassImage.full(new GreyImage(new PixelSize(width, height), image));
    }

    private static float[] white(int width, int height) {
        float[] image = new float[width * height];
        Arrays.fill(image, 1);
        return image;
    }

    /** The map under which the whole sheet fills a picture. */
    static Affine<SheetPoint, RasterPoint> filling(int width, int height) {
        return SHEET.frame().placing(new PixelSize(width, height)).inverse();
    }

    /** The largest distance, over the corners of the pass and its centre where they lie on the sheet, in pixels. */
    static double error(Placement placement, Affine<SheetPoint, RasterPoint> truth) {
        List<SheetPoint> points = new ArrayList<>(Lay.covered(SHEET, placement.pass(), truth.inverse()));
        points.add(truth.inverse()
                .at(placement.pass().width() / 2.0, placement.pass().height() / 2.0));
        return Lay.apart(placement.passToSheet().inverse(), truth, points);
    }
}
