package org.adumbrate.registration;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;

/** Whatever window of the sheet a pass shows, at whatever scale, it is placed to a fraction of a pixel. */
class RegistrationPropertyTest {
    @Property(tries = 6, seed = "20260101")
    void anyWindowIsPlaced(
            @ForAll @IntRange(min = 1, max = 1000) int seed,
            @ForAll @DoubleRange(min = 0.8, max = 1.25) double zoom,
            @ForAll @DoubleRange(min = 0.96, max = 1.04) double stretch,
            @ForAll @DoubleRange(min = -0.12, max = 0.12) double dx,
            @ForAll @DoubleRange(min = -0.12, max = 0.12) double dy) {
        DrawnScene scene = new DrawnScene(seed);
        Affine<SheetPoint, RasterPoint> truth =
                Lay.scaling(2.8 * zoom, 2.8 * zoom * stretch, 150, 100, 420 + 840 * dx, 280 + 560 * dy);
        PassImage pass = scene.pass(840, 560, truth);
        Random noise = new Random(seed);
        float[] light = pass.grey().light();
        for (int k = 0; k < light.length; k++) {
            light[k] += (float) (0.01 * noise.nextGaussian());
        }
        Placement placement = Registration.register(scene.lines(), DrawnScene.SHEET, pass);
        assertThat(placement.status()).as(placement.message()).isEqualTo(Placement.Status.ALIGNED);
        assertThat(DrawnScene.error(placement, truth)).isLessThan(0.15);
    }
}
