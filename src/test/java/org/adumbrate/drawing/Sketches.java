package org.adumbrate.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.LineJoin;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;

/** A small drawing for tests: lines, curves and closed runs on three layers. */
final class Sketches {
    /** 4 x 2.5 inches. */
    static final SheetSize SHEET = new SheetSize(101.6, 63.5);

    private Sketches() {}

    static List<Layer> layers() {
        Pen dashed =
                new Pen(0.18, new Srgb(10, 100, 200), new Dash(List.of(3.0, 1.5), 0.5), LineCap.BUTT, LineJoin.MITER);
        Pen bold = new Pen(1.4, new Srgb(200, 0, 40), Dash.NONE, LineCap.PROJECTING, LineJoin.BEVEL);
        return List.of(
                lines("furniture", dashed, paths(1, 20)),
                lines("cut outline", bold, paths(2, 4)),
                lines("böden", Pen.round(0.35, Srgb.BLACK), paths(3, 30)));
    }

    /** A layer of lines that one pen draws. */
    static Layer lines(String name, Pen pen, List<VectorPath<SheetPoint>> paths) {
        return Layer.of(name, List.of(new Mark.Lines(pen, paths)));
    }

    /**
     * A drawing with everything that there is: areas with holes, translucent and opaque, dashes, layers kept together, a
     * layer that is switched off.
     */
    static List<Layer> everything() {
        Region<SheetPoint> frame = rectangle(8, 8, 60, 50).minus(rectangle(20, 20, 45, 40));
        Region<SheetPoint> crown = disc(60, 30, 18);
        Layer off = lines("heights", Pen.round(2, new Srgb(255, 0, 200)), List.of(line(5, 32, 96, 32)));
        return List.of(
                layers().get(0),
                Layer.of("trees-fill", List.of(new Mark.Area(Srgb.WHITE, 0.6, crown))),
                layers().get(2),
                Layer.of(
                        "figures",
                        List.of(
                                new Mark.Area(new Srgb(40, 40, 40), 1, disc(80, 45, 7)),
                                new Mark.Lines(Pen.round(0.5, Srgb.BLACK), List.of(line(80, 40, 80, 60))),
                                new Mark.Area(new Srgb(0, 120, 60), 0.35, disc(85, 48, 9)))),
                Layer.of("cut-backing", List.of(new Mark.Area(new Srgb(230, 220, 120), 1, frame)))
                        .within("cut"),
                lines("cut-outline", Pen.round(0.7, Srgb.BLACK), List.of(frame.outline()))
                        .within("cut"),
                off.hidden());
    }

    static Region<SheetPoint> rectangle(double left, double top, double right, double bottom) {
        return Region.rectangle(Space.SHEET, left, top, right, bottom);
    }

    static Region<SheetPoint> disc(double x, double y, double radius) {
        return rectangle(x - 0.01, y - 0.01, x + 0.01, y + 0.01).grown(radius - 0.01);
    }

    static VectorPath<SheetPoint> line(double x1, double y1, double x2, double y2) {
        VectorPath.Builder<SheetPoint> line = VectorPath.in(Space.SHEET);
        line.moveTo(x1, y1);
        line.lineTo(x2, y2);
        return line.build();
    }

    /** Paths of one or two runs that stay on the sheet. */
    private static List<VectorPath<SheetPoint>> paths(long seed, int count) {
        Random random = new Random(seed);
        List<VectorPath<SheetPoint>> paths = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
            for (int run = 0; run <= k % 2; run++) {
                path.moveTo(x(random), y(random));
                path.lineTo(x(random), y(random));
                path.curveTo(x(random), y(random), x(random), y(random), x(random), y(random));
                if (k % 3 == 0) {
                    path.close();
                }
            }
            paths.add(path.build());
        }
        return paths;
    }

    private static double x(Random random) {
        return 2 + 96 * random.nextDouble();
    }

    private static double y(Random random) {
        return 2 + 56 * random.nextDouble();
    }
}
