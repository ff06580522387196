package org.adumbrate.golden;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import org.junit.jupiter.api.Test;

/** The comparator must be able to fail, in each of its ways. */
class GoldenImageTest {
    private static final GoldenImage.Limits LIMITS = new GoldenImage.Limits(0.1, 0.001, 40);

    private static BufferedImage grey(int level) {
        BufferedImage image = new BufferedImage(100, 50, BufferedImage.TYPE_BYTE_GRAY);
        int[] pixels = new int[5000];
        java.util.Arrays.fill(pixels, level);
        image.getRaster().setPixels(0, 0, 100, 50, pixels);
        return image;
    }

    @Test
    void theSamePictureIsAccepted() {
        assertThat(GoldenImage.difference(grey(90), grey(90), LIMITS)).isEmpty();
    }

    @Test
    void aSlightlyDarkerPictureIsNot() {
        assertThat(GoldenImage.difference(grey(90), grey(89), LIMITS)).isPresent();
    }

    @Test
    void aFewStraysAreAcceptedManyAreNot() {
        BufferedImage few = grey(90);
        for (int k = 0; k < 5; k++) {
            few.getRaster().setSample(k, 0, 0, 80);
        }
        assertThat(GoldenImage.difference(grey(90), few, LIMITS)).isEmpty();
        few.getRaster().setSample(5, 0, 0, 80);
        assertThat(GoldenImage.difference(grey(90), few, LIMITS)).isPresent();
    }

    @Test
    void oneVeryWrongPixelIsNot() {
        BufferedImage one = grey(90);
        one.getRaster().setSample(50, 20, 0, 131);
        assertThat(GoldenImage.difference(grey(90), one, LIMITS)).isPresent();
    }

    @Test
    void anotherSizeOrAnotherNumberOfChannelsIsNot() {
        BufferedImage wider = new BufferedImage(101, 50, BufferedImage.TYPE_BYTE_GRAY);
        BufferedImage color = new BufferedImage(100, 50, BufferedImage.TYPE_INT_RGB);
        assertThat(GoldenImage.difference(grey(90), wider, LIMITS)).isPresent();
        assertThat(GoldenImage.difference(grey(90), color, LIMITS)).isPresent();
    }
}
