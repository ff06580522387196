package org.adumbrate.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.LineJoin;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;

/** A small drawing for tests: lines, curves and closed runs in three groups. */
final class Sketches {
    /** 4 x 2.5 inches. */
    static final SheetSize SHEET = new SheetSize(101.6, 63.5);

    private Sketches() {}

    static List<LineGroup> groups() {
        Pen dashed =
                new Pen(0.18, new Srgb(10, 100, 200), new Dash(List.of(3.0, 1.5), 0.5), LineCap.BUTT, LineJoin.MITER);
        Pen bold = new Pen(1.4, new Srgb(200, 0, 40), Dash.NONE, LineCap.PROJECTING, LineJoin.BEVEL);
        return List.of(
                new LineGroup("furniture", dashed, paths(1, 20)),
                new LineGroup("cut outline", bold, paths(2, 4)),
                new LineGroup("böden", Pen.round(0.35, Srgb.BLACK), paths(3, 30)));
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
