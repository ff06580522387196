package org.adumbrate.registration;

import static org.adumbrate.registration.DrawnScene.SHEET;
import static org.adumbrate.registration.DrawnScene.error;
import static org.adumbrate.registration.DrawnScene.filling;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.junit.jupiter.api.Test;

/** Passes that show few of the lines of their sheet: a pattern drawn over everything, and lines that are hidden in the model. */
class PlacingAmongUnseenLinesTest {
    private static final DrawnScene SCENE = new DrawnScene(1);
    private static final Affine<SheetPoint, RasterPoint> WHOLE = filling(900, 600);
    private static final Affine<SheetPoint, RasterPoint> CROP = Lay.scaling(3.3, 3.3, 0, 0, -41.3, -30.8);

    @Test
    void aPatternOfAHundredTimesAsManyLinesIsLookedThrough() {
        assertPlaced(Registration.register(withPattern(), SHEET, SCENE.pass(900, 600, WHOLE)), WHOLE);
    }

    @Test
    void aCropIsFoundUnderAPattern() {
        assertPlaced(Registration.register(withPattern(), SHEET, SCENE.pass(900, 600, CROP)), CROP);
    }

    @Test
    void sixTimesAsManyLinesThatAreNotSeenAreLookedThrough() {
        assertPlaced(Registration.register(withHiddenLines(), SHEET, SCENE.pass(900, 600, WHOLE)), WHOLE);
    }

    @Test
    void anotherSceneIsRefusedAllTheSame() {
        assertRefused(Registration.register(withPattern(), SHEET, new DrawnScene(2).pass(900, 600, WHOLE)));
        assertRefused(Registration.register(withHiddenLines(), SHEET, new DrawnScene(2).pass(900, 600, WHOLE)));
    }

    @Test
    void anotherCameraIsRefusedAllTheSame() {
        DrawnScene elsewhere = SCENE.fromElsewhere(3, 2);
        assertRefused(Registration.register(withPattern(), SHEET, elsewhere.pass(900, 600, WHOLE)));
        assertRefused(Registration.register(withHiddenLines(), SHEET, elsewhere.pass(900, 600, WHOLE)));
    }

    @Test
    void aCameraFartherLeftIsRefusedThoughAllThatIsLevelAgrees() {
        DrawnScene elsewhere = SCENE.fromElsewhere(4, 0);
        assertRefused(Registration.register(SCENE.lines(), SHEET, elsewhere.pass(900, 600, WHOLE)));
    }

    /** Both places agree, the other even by a little more: a pass that can fill its frame does. */
    @Test
    void ofLinesThatStandTwiceThoseInTheFrameCount() {
        for (double far = 5; far <= 15; far += 5) {
            List<VectorPath<SheetPoint>> paths = outlines();
            paths.subList(0, 20).clear();
            for (VectorPath<SheetPoint> path : outlines()) {
                paths.add(path.transform(Affine.scalingThenShift(Space.SHEET, Space.SHEET, 1, 1, far / 2, 0.4 * far)));
            }
            assertPlaced(Registration.register(LinePattern.of(paths), SHEET, SCENE.pass(900, 600, WHOLE)), WHOLE);
        }
    }

    private static void assertPlaced(Placement placement, Affine<SheetPoint, RasterPoint> truth) {
        assertThat(placement.status()).as(placement.message()).isEqualTo(Placement.Status.ALIGNED);
        assertThat(error(placement, truth)).isLessThan(0.1);
    }

    private static void assertRefused(Placement placement) {
        assertThat(placement.status()).as(placement.message()).isEqualTo(Placement.Status.REFUSED);
    }

    /** Short strokes in rows over the whole sheet, a hundred for each side of a shape. */
    private static LinePattern withPattern() {
        List<VectorPath<SheetPoint>> paths = outlines();
        double step = Math.sqrt(
                SHEET.widthMm() * SHEET.heightMm() / (400.0 * SCENE.shapes().size()));
        for (double y = 0; y < SHEET.heightMm(); y += step) {
            for (double x = 0; x < SHEET.widthMm(); x += step) {
                paths.add(line(x, y, x + 0.6 * step, y + 0.8 * step));
            }
        }
        return LinePattern.of(paths);
    }

    /** Six lines anywhere for each side of a shape, level, upright and slanted. */
    private static LinePattern withHiddenLines() {
        List<VectorPath<SheetPoint>> paths = outlines();
        Random random = new Random(3);
        for (int k = 0; k < 24 * SCENE.shapes().size(); k++) {
            double x = SHEET.widthMm() * random.nextDouble();
            double y = SHEET.heightMm() * random.nextDouble();
            double angle = k % 3 == 0 ? 0 : k % 3 == 1 ? Math.PI / 2 : Math.PI * random.nextDouble();
            double length = 10 + 60 * random.nextDouble();
            paths.add(line(x, y, x + length * Math.cos(angle), y + length * Math.sin(angle)));
        }
        return LinePattern.of(paths);
    }

    private static List<VectorPath<SheetPoint>> outlines() {
        List<VectorPath<SheetPoint>> paths = new ArrayList<>();
        for (List<SheetPoint> shape : SCENE.shapes()) {
            for (int k = 0; k < 4; k++) {
                SheetPoint from = shape.get(k);
                SheetPoint to = shape.get((k + 1) % 4);
                paths.add(line(from.x(), from.y(), to.x(), to.y()));
            }
        }
        return paths;
    }

    private static VectorPath<SheetPoint> line(double x0, double y0, double x1, double y1) {
        VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
        path.moveTo(x0, y0);
        path.lineTo(x1, y1);
        return path.build();
    }
}
