package org.adumbrate.linework.cleanup;

import static org.adumbrate.linework.cleanup.CleanUpSettings.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.SheetPaths;

/** Random lines broken into pieces that overlap or leave gaps, some twice, shuffled and turned round, come back. */
class BrokenLinesPropertyTest {
    /** How far a point may lie from where it was: what breaking moved it, and what joining may. */
    private static final double NEAR_MM = 0.02;

    @Property(tries = 60, seed = "1")
    void brokenLinesComeBack(@ForAll long seed) {
        Random random = new Random(seed);
        List<double[]> lines = lines(random, 40);
        List<VectorPath<SheetPoint>> pieces = new ArrayList<>();
        for (double[] line : lines) {
            shatter(line, random, pieces);
        }
        Collections.shuffle(pieces, random);
        List<double[]> found = SheetPaths.segments(CleanUp.run(pieces, STANDARD).paths());
        assertThat(found).hasSameSizeAs(lines);
        for (double[] line : lines) {
            assertThat(found).anyMatch(other -> near(line, other));
        }
    }

    @Property(tries = 60, seed = "1")
    void theOrderOfPiecesDoesNotMatter(@ForAll long seed) {
        Random random = new Random(seed);
        List<VectorPath<SheetPoint>> pieces = new ArrayList<>();
        for (double[] line : lines(random, 20)) {
            shatter(line, random, pieces);
        }
        double length = length(pieces);
        Collections.shuffle(pieces, random);
        assertThat(length(pieces)).isCloseTo(length, org.assertj.core.api.Assertions.within(0.1));
    }

    @Property(tries = 60, seed = "1")
    void whatIsCleanStaysAsItIs(@ForAll long seed) {
        List<VectorPath<SheetPoint>> mess = new ArrayList<>();
        Random random = new Random(seed);
        for (int n = 0; n < 300; n++) {
            double x = 40 * random.nextDouble();
            double y = 30 * random.nextDouble();
            double angle = random.nextInt(12) * Math.PI / 6;
            double length = random.nextDouble() * random.nextDouble() * 20;
            mess.add(SheetPaths.line(x, y, x + length * Math.cos(angle), y + length * Math.sin(angle)));
        }
        Cleaned once = CleanUp.run(mess, STANDARD);
        Cleaned twice = CleanUp.run(once.paths(), STANDARD);
        int work = twice.counts().merged()
                + twice.counts().joined()
                + twice.counts().dropped()
                + twice.counts().thinned();
        assertThat(work).isLessThanOrEqualTo(3);
    }

    private static double length(List<VectorPath<SheetPoint>> pieces) {
        return CleanUp.run(pieces, STANDARD).paths().stream()
                .mapToDouble(VectorPath::length)
                .sum();
    }

    /** Lines of which no two lie so that an end of one comes near the other, or nearly along it. */
    private static List<double[]> lines(Random random, int count) {
        List<double[]> lines = new ArrayList<>();
        while (lines.size() < count) {
            double x = 400 * random.nextDouble();
            double y = 250 * random.nextDouble();
            double angle = random.nextBoolean() ? random.nextInt(4) * Math.PI / 4 : random.nextDouble() * Math.PI;
            double length = 3 + 60 * random.nextDouble() * random.nextDouble();
            double[] line = {x, y, x + length * Math.cos(angle), y + length * Math.sin(angle)};
            if (lines.stream().noneMatch(other -> meet(line, other) || meet(other, line))) {
                lines.add(line);
            }
        }
        return lines;
    }

    private static boolean meet(double[] line, double[] other) {
        return distance(line[0], line[1], other) < 0.5 || distance(line[2], line[3], other) < 0.5;
    }

    private static double distance(double x, double y, double[] line) {
        double dx = line[2] - line[0];
        double dy = line[3] - line[1];
        double t = ((x - line[0]) * dx + (y - line[1]) * dy) / (dx * dx + dy * dy);
        double along = Math.max(0, Math.min(1, t));
        return Math.hypot(x - line[0] - along * dx, y - line[1] - along * dy);
    }

    /** Breaks a line in up to nine places, exact to 0.002 mm, with gaps up to 0.09 mm and overlaps up to a whole piece. */
    private static void shatter(double[] line, Random random, List<VectorPath<SheetPoint>> into) {
        double length = Math.hypot(line[2] - line[0], line[3] - line[1]);
        double from = 0;
        while (from < length) {
            double to = Math.min(length, from + Math.max(0.3, random.nextDouble() * length / 3));
            to = length - to < 0.3 ? length : to;
            piece(line, from, to, length, random, into);
            if (random.nextInt(4) == 0) {
                piece(line, from + (to - from) * 0.5 * random.nextDouble(), to, length, random, into);
            }
            boolean gap = random.nextInt(3) == 0;
            from = to == length ? length : gap ? to + 0.09 * random.nextDouble() : to - 0.2 * random.nextDouble();
        }
    }

    private static void piece(
            double[] line, double from, double to, double length, Random random, List<VectorPath<SheetPoint>> into) {
        double ux = (line[2] - line[0]) / length;
        double uy = (line[3] - line[1]) / length;
        double off = 0.002 * (random.nextDouble() - 0.5);
        double end = 0.002 * (random.nextDouble() - 0.5);
        double x0 = line[0] + from * ux - off * uy;
        double y0 = line[1] + from * uy + off * ux;
        double x1 = line[0] + to * ux - end * uy;
        double y1 = line[1] + to * uy + end * ux;
        into.add(random.nextBoolean() ? SheetPaths.line(x0, y0, x1, y1) : SheetPaths.line(x1, y1, x0, y0));
    }

    private static boolean near(double[] line, double[] other) {
        return ends(line, other[0], other[1], other[2], other[3]) || ends(line, other[2], other[3], other[0], other[1]);
    }

    private static boolean ends(double[] line, double x0, double y0, double x1, double y1) {
        return Math.hypot(line[0] - x0, line[1] - y0) < NEAR_MM && Math.hypot(line[2] - x1, line[3] - y1) < NEAR_MM;
    }
}
