package org.adumbrate.linework.region;

import static org.adumbrate.linework.region.Drawn.PAGE;
import static org.adumbrate.linework.region.Drawn.box;
import static org.adumbrate.linework.region.Drawn.line;
import static org.adumbrate.linework.region.Drawn.lines;
import static org.adumbrate.linework.region.Drawn.rectangle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import org.locationtech.jts.operation.union.UnaryUnionOp;

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

    @Test
    void pointsNameTheirFacesTogether() {
        SeenFaces faces = SeenFaces.of(lines(box(10, 10, 110, 90), line(60, 10, 60, 90), box(20, 30, 40, 50)), PAGE, 0);
        PointedFaces named = faces.named(List.of(
                new SheetPoint(15, 15), new SheetPoint(70, 20), new SheetPoint(50, 80), new SheetPoint(300, 20)));
        Region<SheetPoint> expected = rectangle(10, 10, 110, 90).minus(rectangle(20, 30, 40, 50));
        // the line between two of them goes
        assertThat(named.region().pieces()).hasSize(1);
        assertThat(Drawn.overlap(named.region(), expected)).isGreaterThan(0.9999);
        assertThat(named.spots().get(0).face()).isEqualTo(named.spots().get(2).face());
        assertThat(named.spots().get(1).face())
                .isNotEqualTo(named.spots().get(0).face());
        assertThat(named.spots().get(0).areaMm2()).isCloseTo(50 * 80 - 400, within(0.1));
        assertThat(named.spots().get(3).face()).isEqualTo(PointedFaces.NONE);
    }

    @Test
    void aPointKnowsTheLineItLiesOnAndTheSheetsEdge() {
        SeenFaces faces = SeenFaces.of(lines(box(10, 10, 110, 90), line(150, 20, 150, 60)), PAGE, 0);
        PointedFaces named = faces.named(List.of(
                new SheetPoint(10.009, 40), new SheetPoint(10.02, 40), new SheetPoint(5, 5), new SheetPoint(150, 40)));
        assertThat(named.spots()).extracting(PointedFaces.Spot::onLine).containsExactly(true, false, false, false);
        assertThat(named.spots().get(1).edgeMm()).isZero();
        assertThat(named.spots().get(2).edgeMm()).isCloseTo(700, within(0.01));
    }

    /** The library's own way from lines to polygons shares no code with the grid, the sides and the search to the left. */
    @Property(tries = 60, seed = "11")
    void facesAreThePolygonsOfARandomMap(@ForAll long seed) {
        Random random = new Random(seed);
        List<Geometry> all = new ArrayList<>();
        var drawn = lines();
        GeometryFactory maker = new GeometryFactory();
        for (int k = 0; k < 14; k++) {
            double[] ends = {
                200 * random.nextDouble(),
                150 * random.nextDouble(),
                200 * random.nextDouble(),
                150 * random.nextDouble()
            };
            drawn.add(line(ends));
            all.add(maker.createLineString(
                    new Coordinate[] {new Coordinate(ends[0], ends[1]), new Coordinate(ends[2], ends[3])}));
        }
        all.add(maker.toGeometry(new Envelope(0, 200, 0, 150)).getBoundary());
        Polygonizer polygonizer = new Polygonizer();
        polygonizer.add(UnaryUnionOp.union(all));
        SeenFaces faces = SeenFaces.of(drawn, PAGE, 0);
        Map<Object, Integer> faceOf = new HashMap<>();
        for (int k = 0; k < 60; k++) {
            SheetPoint point = new SheetPoint(200 * random.nextDouble(), 150 * random.nextDouble());
            Point place = maker.createPoint(new Coordinate(point.x(), point.y()));
            Geometry polygon = polygonOf(polygonizer, place);
            // lines are moved onto a grid of 0.005 mm, and short ends beyond a crossing are trimmed
            if (polygon.getBoundary().distance(place) < 0.05) {
                continue;
            }
            int face = faces.at(point).orElseThrow();
            assertThat(faceOf.computeIfAbsent(polygon, any -> face)).isEqualTo(face);
            Geometry region = faces.region(face).polygons();
            assertThat(region.contains(place)).isTrue();
            assertThat(region.symDifference(polygon).getArea()).isLessThan(0.02 * polygon.getLength() + 0.01);
        }
        assertThat(new HashSet<>(faceOf.values())).hasSameSizeAs(faceOf.keySet());
    }

    private static Geometry polygonOf(Polygonizer polygonizer, Point place) {
        for (Object polygon : polygonizer.getPolygons()) {
            if (((Geometry) polygon).contains(place)) {
                return (Geometry) polygon;
            }
        }
        throw new AssertionError("no polygon at " + place);
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
