package org.adumbrate.registration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.GreyImage;
import org.junit.jupiter.api.Test;

class PassImageTest {
    @Test
    void aReductionMayKeepOrLeaveOutTheIncompleteBlock() {
        assertThat(new PassImage(grey(1701, 1100), new PixelSize(3401, 2200)).reduction())
                .isEqualTo(2);
        assertThat(new PassImage(grey(1700, 1100), new PixelSize(3401, 2200)).reduction())
                .isEqualTo(2);
        assertThat(PassImage.full(grey(800, 518)).reduction()).isEqualTo(1);
    }

    @Test
    void anyOtherRatioIsNotAReduction() {
        assertThatThrownBy(() -> new PassImage(grey(1700, 1000), new PixelSize(3400, 2200)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("1700 x 1000 px");
    }

    private static GreyImage grey(int width, int height) {
        return new GreyImage(new PixelSize(width, height), new float[width * height]);
    }
}
