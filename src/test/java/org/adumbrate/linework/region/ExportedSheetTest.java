package org.adumbrate.linework.region;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.region.ClosedRegions.Closed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/** Lines of whole buildings against their exact regions; where both come from is said beside the files. */
class ExportedSheetTest {
    private static final double GAP = 0.5;

    @ParameterizedTest
    @CsvSource({"kiln-yard, 431.8, 279.4, 1", "quay-shed, 420, 297, 0"})
    void theCutIsFoundWithItsRooms(String sheet, double width, double height, int rooms) {
        Closed cut = ClosedRegions.of(lines(sheet + "-cut", "own"), new SheetSize(width, height), GAP);
        Region<SheetPoint> truth = region(sheet + "-cut");
        assertThat(Drawn.overlap(cut.region(), truth)).isGreaterThan(0.9999);
        assertThat(cut.region().pieces()).hasSameSizeAs(truth.pieces());
        assertThat(cut.region().outline().runs()).isEqualTo(truth.pieces().size() + rooms);
        assertThat(cut.looseEnds()).isEmpty();
    }

    @Test
    void crownsAreFoundWhereARoofAndAWallHidePartOfThem() {
        Region<SheetPoint> trees = Veils.enclosed(
                lines("quay-shed-trees", "own"), lines("quay-shed-trees", "other"), new SheetSize(420, 297), GAP);
        Region<SheetPoint> truth = region("quay-shed-trees");
        assertThat(truth.minus(trees).area()).isLessThan(0.001 * truth.area());
        assertThat(Drawn.overlap(Veils.withoutStems(trees), truth)).isGreaterThan(0.99);
    }

    private static List<VectorPath<SheetPoint>> lines(String name, String kind) {
        return Stream.of(text(name + ".txt").split("\n"))
                .map(line -> line.split(" "))
                .filter(words -> words[0].equals(kind))
                .map(words -> Drawn.line(
                        Double.parseDouble(words[1]), Double.parseDouble(words[2]),
                        Double.parseDouble(words[3]), Double.parseDouble(words[4])))
                .toList();
    }

    private static Region<SheetPoint> region(String name) {
        try {
            return Region.ofPolygons(Space.SHEET, new WKTReader().read(text(name + ".wkt")));
        } catch (ParseException e) {
            throw new AssertionError(e);
        }
    }

    private static String text(String name) {
        try (InputStream in = ExportedSheetTest.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
