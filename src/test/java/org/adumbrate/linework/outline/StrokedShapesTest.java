package org.adumbrate.linework.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.BasicStroke;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.clip.FillRule;

/** Lines turned into shapes by the Java library's stroker, and back. */
class StrokedShapesTest {
    private static final double OFF_MM = 0.02;
    private static final int[] CAPS = {BasicStroke.CAP_BUTT, BasicStroke.CAP_ROUND};
    private static final int[] JOINS = {BasicStroke.JOIN_MITER, BasicStroke.JOIN_ROUND, BasicStroke.JOIN_BEVEL};

    @Property(tries = 200, seed = "5")
    void polylinesComeBack(@ForAll("seeds") long seed) {
        Random random = new Random(seed);
        VectorPath.Builder<PagePoint> path = VectorPath.in(Space.PAGE);
        double x = 100;
        double y = 100;
        double heading = random.nextDouble() * 6.28;
        double width = 0.05 * Math.pow(20, random.nextDouble());
        path.moveTo(x, y);
        int pieces = 1 + random.nextInt(6);
        boolean closed = pieces > 2 && random.nextInt(4) == 0;
        for (int k = 0; k < pieces; k++) {
            double length = 3 * width + 12 * random.nextDouble();
            x += length * Math.cos(heading);
            y += length * Math.sin(heading);
            path.lineTo(x, y);
            heading += closed ? 6.28 / (pieces + 1) : 2 * (random.nextDouble() - 0.5) * 2.2;
        }
        if (closed) {
            path.close();
        }
        check(path.build(), width, random);
    }

    @Property(tries = 60, seed = "6")
    void curvesComeBack(@ForAll("seeds") long seed) {
        Random random = new Random(seed);
        double width = 0.05 * Math.pow(20, random.nextDouble());
        VectorPath.Builder<PagePoint> path = VectorPath.in(Space.PAGE);
        double x = 100;
        double y = 100;
        double heading = random.nextDouble() * 6.28;
        path.moveTo(x, y);
        for (int k = random.nextInt(3); k >= 0; k--) {
            double radius = 3 * width + 10 * random.nextDouble();
            double turn = (random.nextBoolean() ? 1 : -1) * (0.3 + 1.2 * random.nextDouble());
            double h = 4.0 / 3 * Math.tan(Math.abs(turn) / 4) * radius;
            double x1 = x + h * Math.cos(heading);
            double y1 = y + h * Math.sin(heading);
            double side = Math.signum(turn);
            double cx = x - side * radius * Math.sin(heading);
            double cy = y + side * radius * Math.cos(heading);
            heading += turn;
            x = cx + side * radius * Math.sin(heading);
            y = cy - side * radius * Math.cos(heading);
            path.curveTo(x1, y1, x - h * Math.cos(heading), y - h * Math.sin(heading), x, y);
        }
        check(path.build(), width, random);
    }

    private static void check(VectorPath<PagePoint> line, double width, Random random) {
        int cap = CAPS[random.nextInt(CAPS.length)];
        int join = JOINS[random.nextInt(JOINS.length)];
        VectorPath<PagePoint> outline = Stroker.outline(line, width, cap, join);
        OutlinedLines read = OutlinedLines.of(outline, FillRule.NON_ZERO);
        String what = line + " width " + width + " cap " + cap + " join " + join + " outline " + outline;
        assertThat(read.rest().isEmpty()).as(what).isTrue();
        assertThat(read.lines()).as(what).hasSize(1);
        OutlinedLine found = read.lines().get(0);
        assertThat(found.widthMm()).as(what).isCloseTo(width, within(0.02 * width + 1e-3));
        assertThat(Stroker.distance(found.middle(), line))
                .as("%s gives %s", what, found.middle())
                .isLessThan(OFF_MM);
        assertThat(found.lengthMm()).as(what).isCloseTo(line.length(), within(0.02 + 1e-3 * line.length()));
    }

    @Provide
    Arbitrary<Long> seeds() {
        return Arbitraries.longs();
    }
}
