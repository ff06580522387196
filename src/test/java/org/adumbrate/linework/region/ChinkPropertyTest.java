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
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.region.ClosedRegions.Closed;

/**
 * A wall whose corner ends a hair below the roof that it bears, as models have it: the attic is open to the outside by a chink
 * narrower than the gaps that are closed, and must stay a room all the same.
 */
class ChinkPropertyTest {
    private static final double GAP_MM = 0.5;

    @Property(tries = 60, seed = "7")
    void anAtticBehindAChinkStaysOpen(@ForAll long seed, @ForAll @DoubleRange(min = 0.01, max = 0.4) double chinkMm) {
        Random random = new Random(seed);
        double[] house = house(chinkMm);
        List<VectorPath<SheetPoint>> pieces = new ArrayList<>();
        List<SheetPoint> whole = new ArrayList<>();
        for (int k = 0; k < house.length; k += 2) {
            SheetPoint from = new SheetPoint(house[k], house[k + 1]);
            SheetPoint to = new SheetPoint(house[(k + 2) % house.length], house[(k + 3) % house.length]);
            Broken.breakUp(from, to, 0.3, random, pieces);
            whole.add(from);
        }
        Collections.shuffle(pieces, random);
        Closed closed = ClosedRegions.of(pieces, PAGE, GAP_MM);
        assertThat(closed.region().contains(new SheetPoint(100, 80)))
                .as("the room is cut")
                .isFalse();
        assertThat(Drawn.overlap(closed.region(), Region.of(Space.SHEET, List.of(whole))))
                .isGreaterThan(0.998);
    }

    /** A cut house, from the foot of its left wall; its roof's left underside falls from (100, 30) to the eave at (40, 80). */
    private static double[] house(double chinkMm) {
        double under = 80 - 10 * 5.0 / 6;
        return new double[] {
            50,
            120,
            50,
            under + chinkMm,
            58,
            under + chinkMm + 0.7,
            58,
            112,
            142,
            112,
            142,
            65,
            100,
            30,
            40,
            80,
            40,
            72,
            100,
            22,
            160,
            72,
            160,
            80,
            150,
            under,
            150,
            120
        };
    }
}
