package org.adumbrate.registration;

import static org.adumbrate.registration.DrawnScene.SHEET;
import static org.adumbrate.registration.DrawnScene.error;
import static org.adumbrate.registration.DrawnScene.filling;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.raster.GreyImage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Scenes drawn with exact coverage under a known map; the truth comes from the drawing, not from the program. */
class RegistrationTest {
    private static final DrawnScene SCENE = new DrawnScene(1);
    private static final LinePattern LINES = SCENE.lines();

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        // kind, width, height, pixels a mm in x and y, pixel position of the sheet's origin
        "same-ratio, 900, 600, 3, 3, 0, 0",
        "rounded, 900, 601, 3, 3.005, 0, 0",
        "cropped, 760, 500, 3, 3, -51.3, -40.8",
        "bars, 990, 640, 3, 3, 31.25, 20.5",
        "stretched, 900, 570, 3, 2.85, 0, 0",
        "shifted, 900, 600, 3, 3, 0.62, -0.79",
        "shifted, 900, 600, 3, 3, -33.3, 21.7",
        "zoomed, 900, 600, 3.2, 3.2, -31.5, -14.2",
        "zoomed, 900, 600, 2.8, 2.8, 35.5, 16.2",
        "mixed, 800, 520, 3.1, 3, -70.7, -33.1"
    })
    void aPassIsPlacedAndExplained(String kind, int width, int height, double sx, double sy, double left, double top) {
        Affine<SheetPoint, RasterPoint> truth = Lay.scaling(sx, sy, 0, 0, left, top);
        Placement placement = Registration.register(LINES, SHEET, SCENE.pass(width, height, truth));
        assertThat(placement.status()).as(placement.message()).isEqualTo(Placement.Status.ALIGNED);
        assertThat(placement.explains().word()).as(placement.message()).isEqualTo(kind);
        assertThat(error(placement, truth)).isLessThan(0.1);
        assertThat(placement.confidence()).isGreaterThan(0.95);
    }

    @ParameterizedTest
    @CsvSource({"0, 60, 90", "0.4, 60, 90", "1, 60, 90", "0.2, 0, 75"})
    void barsOfAnyToneAreCut(float tone, int above, int below) {
        PassImage view = SCENE.pass(900, 600, filling(900, 600));
        PassImage pass = withBars(view.grey(), above, below, tone);
        Placement placement = Registration.register(LINES, SHEET, pass);
        assertThat(placement.explains()).as(placement.message()).isEqualTo(Explanation.BARS);
        assertThat(error(placement, Lay.scaling(3, 3, 0, 0, 0, above))).isLessThan(0.1);
        assertThat(placement.message()).contains(above + " top").contains(below + " bottom");
    }

    @Test
    void drawnEdgesAreFoundInTheirMiddle() {
        Affine<SheetPoint, RasterPoint> truth = Lay.scaling(3.1, 3.1, 0, 0, -12.3, -9.7);
        Placement placement = Registration.register(LINES, SHEET, SCENE.outlines(850, 560, truth, 1));
        assertThat(placement.status()).as(placement.message()).isEqualTo(Placement.Status.ALIGNED);
        assertThat(error(placement, truth)).isLessThan(0.1);
    }

    @Test
    void aReducedPassIsPlacedInPixelsOfTheOriginal() {
        Affine<SheetPoint, RasterPoint> truth = Lay.scaling(6, 6, 0, 0, -40.5, -31);
        PassImage full = SCENE.pass(1700, 1100, truth);
        ToneImage half = new ToneImage(1700, 1100, 1, full.grey().light()).reduced(2);
        PassImage reduced =
                new PassImage(new GreyImage(new PixelSize(half.width, half.height), half.tone), full.original());
        Placement placement = Registration.register(LINES, SHEET, reduced);
        assertThat(error(placement, truth)).isLessThan(0.2);
        assertThat(placement.pass()).isEqualTo(new PixelSize(1700, 1100));
    }

    @Test
    void aThirdOfTheViewMayBeMissing() {
        Affine<SheetPoint, RasterPoint> truth = filling(900, 600);
        PassImage pass = SCENE.pass(900, 600, truth);
        for (int y = 0; y < 600; y++) {
            Arrays.fill(pass.grey().light(), y * 900, y * 900 + 300, 0.3f);
        }
        Placement placement = Registration.register(LINES, SHEET, pass);
        assertThat(placement.status()).as(placement.message()).isEqualTo(Placement.Status.ALIGNED);
        assertThat(error(placement, truth)).isLessThan(0.1);
    }

    @Test
    void anotherSceneIsRefused() {
        Placement placement = Registration.register(LINES, SHEET, new DrawnScene(2).pass(900, 600, filling(900, 600)));
        assertRefused(placement, "does not belong");
    }

    @Test
    void anotherCameraIsRefusedThoughSomeLinesAgree() {
        DrawnScene elsewhere = SCENE.fromElsewhere(3, 2);
        assertRefused(Registration.register(LINES, SHEET, elsewhere.pass(900, 600, filling(900, 600))), "of the edges");
    }

    @Test
    void aMirroredPassIsRefusedAsMirrored() {
        ToneImage drawn = new ToneImage(
                900, 600, 1, SCENE.pass(900, 600, filling(900, 600)).grey().light());
        PassImage pass = PassImage.full(new GreyImage(new PixelSize(900, 600), drawn.mirrored().tone));
        assertRefused(Registration.register(LINES, SHEET, pass), "mirrored");
    }

    @Test
    void aBlankPassIsRefusedAsBlank() {
        float[] grey = new float[900 * 600];
        Arrays.fill(grey, 0.3f);
        PassImage pass = PassImage.full(new GreyImage(new PixelSize(900, 600), grey));
        assertRefused(Registration.register(LINES, SHEET, pass), "blank");
    }

    @Test
    void withoutLinesNothingIsPlaced() {
        PassImage pass = SCENE.pass(300, 200, filling(300, 200));
        assertRefused(Registration.register(LinePattern.of(List.of()), SHEET, pass), "no lines");
    }

    @Test
    void aPictureOfAFewPixelsIsRefused() {
        assertRefused(Registration.register(LINES, SHEET, SCENE.pass(40, 30, filling(40, 30))), "too small");
    }

    private static void assertRefused(Placement placement, String reason) {
        assertThat(placement.status()).as(placement.message()).isEqualTo(Placement.Status.REFUSED);
        assertThat(placement.explains()).isEqualTo(Explanation.REFUSED);
        assertThat(placement.message()).contains(reason);
        assertThat(placement.confidence()).isLessThan(0.5);
    }

    private static PassImage withBars(GreyImage view, int above, int below, float tone) {
        int width = view.size().width();
        int height = view.size().height() + above + below;
        float[] image = new float[width * height];
        Arrays.fill(image, tone);
        System.arraycopy(view.light(), 0, image, above * width, view.light().length);
        return PassImage.full(new GreyImage(new PixelSize(width, height), image));
    }
}
