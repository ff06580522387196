package org.adumbrate.registration;

import static org.adumbrate.registration.DrawnScene.filling;
import static org.assertj.core.api.Assertions.assertThat;

import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.raster.GreyImage;
import org.junit.jupiter.api.Test;

class PassEdgesTest {
    private static final DrawnScene SCENE = new DrawnScene(1);
    private static final Affine<SheetPoint, RasterPoint> WHOLE = filling(900, 600);

    @Test
    void atTheRightPlaceNearlyAllEdgesLieAlongLines() {
        PassEdges.Explained explained = edges(SCENE.pass(900, 600, WHOLE)).explained(SCENE.lines(), WHOLE);
        assertThat(explained.share()).isGreaterThan(0.95);
        assertThat(explained.regions(0.9)).isEqualTo(1);
    }

    @Test
    void levelLinesThatAgreeDoNotMakeUpForUprightOnesThatDoNot() {
        PassImage fromTheSide = SCENE.fromElsewhere(6, 0).pass(900, 600, WHOLE);
        PassEdges.Explained explained = edges(fromTheSide).explained(SCENE.lines(), WHOLE);
        assertThat(explained.regions(0.1)).isGreaterThan(0.6);
        assertThat(explained.share()).isLessThan(0.25);
    }

    /** One shape of many: few edges prove nothing, however well they lie. */
    @Test
    void aPassWithFewEdgesIsNotExplained() {
        float[] light = SCENE.pass(900, 600, WHOLE).grey().light().clone();
        for (int k = 0; k < light.length; k++) {
            light[k] = k % 900 < 100 && k / 900 < 100 ? light[k] : 1;
        }
        PassImage pass = PassImage.full(new GreyImage(new PixelSize(900, 600), light));
        PassEdges.Explained explained = edges(pass).explained(SCENE.lines(), WHOLE);
        assertThat(explained.regions(0.5)).isGreaterThan(0);
        assertThat(explained.share()).isZero();
    }

    private static PassEdges edges(PassImage pass) {
        ToneImage tone = ToneImage.of(pass);
        return new PassEdges(PassLevel.of(tone, Bars.inside(tone), 1));
    }
}
