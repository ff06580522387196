package org.adumbrate.registration;

import static org.adumbrate.registration.DrawnScene.filling;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import org.junit.jupiter.api.Test;

class RegistrationPictureTest {
    private static final DrawnScene SCENE = new DrawnScene(1);

    @Test
    void anAlignedPassIsShownUnderBlueLinesAndARefusedOneUnderRed() {
        PassImage right = SCENE.pass(600, 400, filling(600, 400));
        PassImage wrong = new DrawnScene(2).pass(600, 400, filling(600, 400));
        BufferedImage aligned = picture(right);
        BufferedImage refused = picture(wrong);
        assertThat(aligned.getWidth()).isEqualTo(450);
        assertThat(aligned.getHeight()).isEqualTo(300);
        assertThat(count(aligned, 0)).isGreaterThan(1000).isGreaterThan(20 * count(aligned, 16));
        assertThat(count(refused, 16)).isGreaterThan(1000).isGreaterThan(20 * count(refused, 0));
    }

    @Test
    void aPictureOfNoSizeIsNotDrawn() {
        PassImage pass = SCENE.pass(300, 200, filling(300, 200));
        Placement placement = Registration.register(SCENE.lines(), DrawnScene.SHEET, pass);
        assertThatThrownBy(() -> RegistrationPicture.draw(placement, SCENE.lines(), pass, 10))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static BufferedImage picture(PassImage pass) {
        LinePattern lines = SCENE.lines();
        return RegistrationPicture.draw(Registration.register(lines, DrawnScene.SHEET, pass), lines, pass, 450);
    }

    /** Pixels in which the channel at a shift stands well above the other of red and blue. */
    private static int count(BufferedImage picture, int shift) {
        int count = 0;
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                int rgb = picture.getRGB(x, y);
                count += (rgb >> shift & 0xFF) > (rgb >> (16 - shift) & 0xFF) + 100 && (rgb >> 8 & 0xFF) < 0x78 ? 1 : 0;
            }
        }
        return count;
    }
}
