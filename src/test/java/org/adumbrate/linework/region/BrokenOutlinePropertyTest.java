package org.adumbrate.linework.region;

import static org.adumbrate.linework.region.Drawn.PAGE;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.region.ClosedRegions.Closed;

/** Outlines broken the way exports break them: in pieces, short at corners, doubled, shuffled. */
class BrokenOutlinePropertyTest {
    @Property(tries = 150, seed = "1")
    void aConvexOutlineComesBack(@ForAll long seed, @ForAll @IntRange(min = 3, max = 16) int corners) {
        assertComesBack(seed, List.of(round(new Random(seed), corners, 60, 1)));
    }

    @Property(tries = 150, seed = "2")
    void aStarComesBack(
            @ForAll long seed,
            @ForAll @IntRange(min = 5, max = 16) int corners,
            @ForAll @DoubleRange(min = 0.4, max = 1) double depth) {
        assertComesBack(seed, List.of(round(new Random(seed), corners, 60, depth)));
    }

    @Property(tries = 150, seed = "3")
    void holesAndIslandsComeBack(@ForAll long seed, @ForAll @IntRange(min = 4, max = 9) int corners) {
        Random random = new Random(seed);
        assertComesBack(
                seed,
                List.of(round(random, corners, 70, 0.9), round(random, 8, 38, 0.9), round(random, corners, 20, 0.9)));
    }

    private static void assertComesBack(long seed, List<List<SheetPoint>> rings) {
        VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
        List<VectorPath<SheetPoint>> pieces = new ArrayList<>();
        Random random = new Random(seed);
        for (List<SheetPoint> ring : rings) {
            path.moveTo(ring.get(0).x(), ring.get(0).y());
            ring.forEach(corner -> path.lineTo(corner.x(), corner.y()));
            for (int k = 0; k < ring.size(); k++) {
                Broken.breakUp(ring.get(k), ring.get((k + 1) % ring.size()), 0.3, random, pieces);
            }
        }
        Collections.shuffle(pieces, random);
        Region<SheetPoint> whole = Region.evenOdd(path.build(), 0.01);
        Closed closed = ClosedRegions.of(pieces, PAGE, 0.35);
        assertThat(Drawn.overlap(closed.region(), whole))
                .as("share of the area")
                .isGreaterThan(0.995);
        assertThat(closed.region().outline().runs()).isEqualTo(whole.outline().runs());
        assertThat(closed.looseEnds()).isEmpty();
    }

    /** Corners round the middle of the sheet, at even angles, at radii between depth x radius and radius. */
    private static List<SheetPoint> round(Random random, int corners, double radius, double depth) {
        List<SheetPoint> ring = new ArrayList<>();
        double turn = random.nextDouble() * 6;
        for (int k = 0; k < corners; k++) {
            double angle = turn + 2 * Math.PI * k / corners;
            double r = radius * (depth + (1 - depth) * random.nextDouble());
            ring.add(new SheetPoint(100 + r * Math.cos(angle), 75 + r * Math.sin(angle)));
        }
        return ring;
    }
}
