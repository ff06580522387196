package org.adumbrate.perspective;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.SheetPoint;

/** Height lines as some camera, chosen by a seed, would show them: one-point or two-point, one to four floors. */
final class DrawnHeights {
    static final double HEIGHT = 1.65;

    final View view;
    final List<Double> elevations = new ArrayList<>();
    final List<HeightLine> lines = new ArrayList<>();
    int strays;

    private final Random random;

    /**
     * @param floors how many floors
     * @param perFloor how many lines on each
     */
    DrawnHeights(long seed, int floors, int perFloor, double noiseMm, double strayShare) {
        random = new Random(seed);
        double turn = random.nextBoolean() ? 0 : between(-0.6, 0.6);
        double eye = between(1.2, 9);
        view = new View(between(180, 400), new SheetPoint(between(150, 280), between(100, 200)), eye, turn);
        double elevation = between(-1, 1);
        for (int k = 0; k < floors; k++) {
            while (Math.abs(eye - elevation) < 0.4) {
                elevation += 0.3;
            }
            elevations.add(elevation);
            for (int i = 0; i < perFloor; i++) {
                // the first two stand near and far, so that every floor has some depth
                double depth = i == 0 ? between(8, 9) : i == 1 ? between(17, 22) : between(8, 22);
                lines.add(line(depth, elevation, noiseMm));
            }
            elevation += between(0.5, 3.5);
        }
        Collections.shuffle(lines, random);
        strays = (int) Math.round(strayShare * lines.size());
        for (int k = 0; k < strays; k++) {
            lines.set(k, hiddenInPart(lines.get(k)));
        }
    }

    /** Where a person of a stature is seen, standing on a floor at a depth: foot, then head. */
    HeightLine person(double stature, double depth, double elevation) {
        SheetPoint foot = seen(between(-3, 3), depth, elevation);
        double scale = view.scaleAt(depth);
        return new HeightLine(foot, new SheetPoint(foot.x(), foot.y() - scale * stature));
    }

    double between(double from, double to) {
        return from + (to - from) * random.nextDouble();
    }

    private SheetPoint seen(double across, double depth, double elevation) {
        double x = across * Math.cos(view.turn()) + depth * Math.sin(view.turn());
        double y = depth * Math.cos(view.turn()) - across * Math.sin(view.turn());
        return view.project(new ModelPoint(x, y, elevation)).orElseThrow();
    }

    private HeightLine line(double depth, double elevation, double noise) {
        HeightLine exact = person(HEIGHT, depth, elevation);
        return new HeightLine(off(exact.foot(), noise), off(exact.head(), noise));
    }

    private SheetPoint off(SheetPoint point, double noise) {
        return new SheetPoint(point.x() + noise * random.nextGaussian(), point.y() + noise * random.nextGaussian());
    }

    private HeightLine hiddenInPart(HeightLine line) {
        double hidden = between(0.1, 0.8) * line.heightMm();
        return random.nextInt(4) == 0
                ? new HeightLine(
                        line.foot(), new SheetPoint(line.head().x(), line.head().y() + hidden))
                : new HeightLine(new SheetPoint(line.foot().x(), line.foot().y() - hidden), line.head());
    }
}
