package org.adumbrate.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.GreyImage;
import org.junit.jupiter.api.Test;

/** Pictures that are made as each kind of render looks: tones are sRGB levels of 255. */
class PassKindTest {
    private static final int WIDTH = 600;
    private static final int HEIGHT = 400;

    private interface Tone {
        double at(int x, int y);
    }

    private static GreyImage picture(Tone tone) {
        float[] light = new float[WIDTH * HEIGHT];
        for (int k = 0; k < light.length; k++) {
            double encoded = Math.max(0, Math.min(255, tone.at(k % WIDTH, k / WIDTH))) / 255;
            light[k] = (float) (encoded <= 0.04045 ? encoded / 12.92 : Math.pow((encoded + 0.055) / 1.055, 2.4));
        }
        return new GreyImage(new PixelSize(WIDTH, HEIGHT), light);
    }

    private static ToneLook look(Tone tone) {
        return ToneLook.of(picture(tone), k -> true);
    }

    private static PassKind kind(Tone tone) {
        return PassKind.of(look(tone), false, false).kind();
    }

    private static double shadow(int x, int y) {
        return (x / 60 + y / 80) % 3 == 0 ? 133 : 255;
    }

    @Test
    void twoTonesAreShadow() {
        assertThat(kind(PassKindTest::shadow)).isEqualTo(PassKind.SHADOW);
    }

    @Test
    void noiseLeavesShadowShadow() {
        Random random = new Random(2);
        assertThat(kind((x, y) -> shadow(x, y) + 3 * random.nextGaussian())).isEqualTo(PassKind.SHADOW);
    }

    @Test
    void drawnEdgesAreSeen() {
        ToneLook drawn = look((x, y) -> x % 60 < 2 || y % 80 < 2 ? 40 : shadow(x, y));
        assertThat(drawn.drawn()).isGreaterThan(10 * look(PassKindTest::shadow).drawn() + 0.01);
    }

    @Test
    void softCornersAreOcclusion() {
        Random random = new Random(3);
        Tone soft = (x, y) ->
                255 - 170 * Math.exp(-(x % 200) / 30.0) - 90 * Math.exp(-(y % 200) / 20.0) + random.nextGaussian();
        assertThat(kind(soft)).isEqualTo(PassKind.OCCLUSION);
    }

    @Test
    void evenPlanesBehindOneNearFaceAreDepth() {
        Tone planes = (x, y) -> y > 270 ? 20 : y > 120 ? 60 + 0.6 * (270 - y) + 0.05 * x : 255;
        assertThat(kind(planes)).isEqualTo(PassKind.DEPTH);
    }

    @Test
    void whatGrowsWithDistanceIsDepthWhateverItLooksLike() {
        assertThat(PassKind.of(look(PassKindTest::shadow), false, true).kind()).isEqualTo(PassKind.DEPTH);
    }

    @Test
    void oneToneIsNothing() {
        assertThat(kind((x, y) -> 200)).isEqualTo(PassKind.UNKNOWN);
    }

    @Test
    void manyColoursAreNoOcclusion() {
        ToneLook soft = look((x, y) -> x < 200 ? 255 : 60 + 0.3 * x);
        assertThat(PassKind.of(soft, true, false).kind()).isEqualTo(PassKind.UNKNOWN);
    }

    @Test
    void whatDoesNotCountIsNotLookedAt() {
        ToneLook half = ToneLook.of(picture((x, y) -> x < 300 ? shadow(x, y) : 10), k -> k % WIDTH < 300);
        assertThat(half.oneDark()).isGreaterThan(0.99);
        assertThat(PassKind.of(half, false, false).kind()).isEqualTo(PassKind.SHADOW);
    }
}
