package org.adumbrate.registration;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BarsTest {
    @ParameterizedTest
    @ValueSource(floats = {0, 0.35f, 0.9f})
    void barsAreCutToThePixel(float tone) {
        ToneImage image = texture(200, 120);
        fill(image, 0, 0, 200, 17, tone);
        fill(image, 0, 111, 200, 120, tone);
        fill(image, 193, 0, 200, 120, tone);
        assertThat(Bars.inside(image)).isEqualTo(new PixelRect(0, 17, 193, 111));
    }

    @Test
    void aPlainBackgroundIsNoBar() {
        ToneImage image = texture(200, 120);
        fill(image, 0, 0, 200, 30, 1);
        fill(image, 0, 30, 120, 60, 1);
        assertThat(Bars.inside(image)).isEqualTo(new PixelRect(0, 0, 200, 120));
    }

    @Test
    void aBlankPictureHasNoBars() {
        ToneImage image = texture(200, 120);
        fill(image, 0, 0, 200, 120, 0.5f);
        assertThat(Bars.inside(image)).isEqualTo(new PixelRect(0, 0, 200, 120));
        assertThat(image.isPlain(Bars.inside(image))).isTrue();
    }

    private static ToneImage texture(int width, int height) {
        Random random = new Random(3);
        float[] tone = new float[width * height];
        for (int k = 0; k < tone.length; k++) {
            tone[k] = random.nextFloat();
        }
        return new ToneImage(width, height, 1, tone);
    }

    private static void fill(ToneImage image, int left, int top, int right, int bottom, float tone) {
        for (int y = top; y < bottom; y++) {
            Arrays.fill(image.tone, y * image.width + left, y * image.width + right, tone);
        }
    }
}
