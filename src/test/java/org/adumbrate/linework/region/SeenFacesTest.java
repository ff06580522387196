package org.adumbrate.linework.region;

import static org.adumbrate.linework.region.Drawn.PAGE;
import static org.adumbrate.linework.region.Drawn.box;
import static org.adumbrate.linework.region.Drawn.line;
import static org.adumbrate.linework.region.Drawn.lines;
import static org.adumbrate.linework.region.Drawn.rectangle;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.junit.jupiter.api.Test;

class SeenFacesTest {
    @Test
    void aFaceEndsAtLinesAndAroundWhatStandsInIt() {
        SeenFaces faces = SeenFaces.of(
                lines(box(10, 10, 110, 90), line(60, 10.2, 60, 89.9), box(20, 30, 40, 50), line(150, 20, 150, 60)),
                PAGE,
                0.5);
        Region<SheetPoint> left = faces.region(faces.at(new SheetPoint(15, 15)).orElseThrow());
        Region<SheetPoint> expected = rectangle(10, 10, 60, 90).minus(rectangle(20, 30, 40, 50));
        assertThat(Drawn.overlap(left, expected)).isGreaterThan(0.9999);
        assertThat(faces.at(new SheetPoint(50, 80))).isEqualTo(faces.at(new SheetPoint(15, 15)));
        assertThat(faces.at(new SheetPoint(30, 40))).isNotEqualTo(faces.at(new SheetPoint(15, 15)));
        // a line that parts nothing ends nothing
        assertThat(faces.at(new SheetPoint(140, 40))).isEqualTo(faces.at(new SheetPoint(160, 40)));
        assertThat(faces.at(new SheetPoint(-5, 40))).isEmpty();
    }

    @Property(tries = 50, seed = "5")
    void thePointLiesInTheFaceThatIsFoundForIt(@ForAll long seed) {
        Random random = new Random(seed);
        var drawn = lines(box(5, 5, 195, 145));
        for (int k = 0; k < 12; k++) {
            drawn.add(line(
                    200 * random.nextDouble(),
                    150 * random.nextDouble(),
                    200 * random.nextDouble(),
                    150 * random.nextDouble()));
        }
        SeenFaces faces = SeenFaces.of(drawn, PAGE, 0);
        for (int k = 0; k < 40; k++) {
            SheetPoint point = new SheetPoint(200 * random.nextDouble(), 150 * random.nextDouble());
            assertThat(faces.region(faces.at(point).orElseThrow()).grown(0.02).contains(point))
                    .isTrue();
        }
    }
}
