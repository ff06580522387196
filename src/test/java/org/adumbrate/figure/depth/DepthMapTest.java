package org.adumbrate.figure.depth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.raster.StoredNumbers;
import org.junit.jupiter.api.Test;

class DepthMapTest {
    private static DepthMap map(float... values) {
        StoredNumbers numbers = new StoredNumbers(
                new PixelSize(values.length, 1), values, 1 / 255.0, Affine.identity(Space.RASTER, Space.RASTER));
        return DepthMap.of(
                numbers, new DepthScale(4, 40), Affine.scalingThenShift(Space.RASTER, Space.SHEET, 0.5, 0.5, 100, 200));
    }

    @Test
    void valuesAreDepthsFromNearToFar() {
        DepthMap map = map(0, 0.25f, 0.5f, 1, Float.NaN, 1.5f);
        assertThat(map.depthAt(new SheetPoint(100.1, 200.1))).isCloseTo(4, offset(1e-6));
        assertThat(map.depthAt(new SheetPoint(100.9, 200.4))).isCloseTo(13, offset(1e-5));
        assertThat(map.depthAt(new SheetPoint(101.4, 200.4))).isCloseTo(22, offset(1e-5));
        assertThat(map.nearest()).isCloseTo(4, offset(1e-6));
        assertThat(map.step()).isCloseTo(36 / 255.0, offset(1e-12));
    }

    @Test
    void theBackgroundIsInfinitelyFar() {
        DepthMap map = map(0, 1, Float.NaN, 1.5f, Float.POSITIVE_INFINITY, -2);
        for (int x = 1; x < 6; x++) {
            assertThat(map.inverse(x, 0)).isEqualTo(0);
        }
        assertThat(map.depthAt(new SheetPoint(100.6, 200.1))).isInfinite();
        assertThat(map.depthAt(new SheetPoint(99.9, 200.1))).isInfinite();
        assertThat(map(1, 1).nearest()).isInfinite();
    }

    @Test
    void aDepthPassReachesFromNearToFarther() {
        assertThatThrownBy(() -> new DepthScale(4, 4)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new DepthScale(-1, 4)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new DepthScale(1, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
