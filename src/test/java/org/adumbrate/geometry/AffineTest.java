package org.adumbrate.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class AffineTest {
    @Property(tries = 200, seed = "1")
    void goingThereAndBackIsStandingStill(
            @ForAll @DoubleRange(min = -3, max = 3) double turn,
            @ForAll @DoubleRange(min = 0.01, max = 50) double scale,
            @ForAll @DoubleRange(min = -2, max = 2) double shear,
            @ForAll @DoubleRange(min = -1000, max = 1000) double x,
            @ForAll @DoubleRange(min = -1000, max = 1000) double y) {
        double c = scale * Math.cos(turn);
        double s = scale * Math.sin(turn);
        Affine<RasterPoint, SheetPoint> map =
                new Affine<>(Space.RASTER, Space.SHEET, c, shear * c - s, 12.5, s, shear * s + c, -7);
        RasterPoint back = map.inverse().apply(map.at(x, y));
        assertThat(back.x()).isCloseTo(x, within(1e-6));
        assertThat(back.y()).isCloseTo(y, within(1e-6));
        RasterPoint composed = map.then(map.inverse()).at(x, y);
        assertThat(composed.x()).isCloseTo(x, within(1e-6));
        assertThat(composed.y()).isCloseTo(y, within(1e-6));
    }

    @Test
    void aRasterOf3400PixelsOn17InchesHas0127MillimetresToThePixel() {
        Affine<RasterPoint, SheetPoint> placing =
                new SheetSize(431.8, 279.4).frame().placing(new PixelSize(3400, 2200));
        assertThat(placing.xx()).isCloseTo(0.127, within(1e-12));
        assertThat(placing.at(3400, 2200)).isEqualTo(new SheetPoint(431.8, 279.4));
    }

    @Test
    void aFlatMapHasNoInverse() {
        assertThatThrownBy(() -> new Affine<>(Space.RASTER, Space.SHEET, 1, 2, 0, 2, 4, 0).inverse())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("flattens");
    }
}
