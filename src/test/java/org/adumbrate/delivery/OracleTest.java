package org.adumbrate.delivery;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import javax.imageio.ImageIO;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.prepare.memory.StageClock;
import org.adumbrate.prepare.passes.PassRequest;
import org.adumbrate.underlay.PassLook;
import org.adumbrate.underlay.PassRole;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The whole merge, from PNG files to a PNG file, against the same arithmetic written down plainly in double precision:
 * IEC 61966-2-1 decoding, the Catmull-Rom kernel summed over its sixteen neighbours, multiply with opacity, encoding.
 */
class OracleTest {
    private static final int WIDTH = 340;
    private static final int HEIGHT = 220;
    private static final double SHADOW_OPACITY = 0.85;
    private static final double OCCLUSION_OPACITY = 0.7;

    @TempDir
    private Path folder;

    @Test
    void theMergeAgreesWithDoublePrecision() throws IOException, Refusal {
        Path shadow = folder.resolve("shadow.png");
        Path occlusion = folder.resolve("occlusion.png");
        BufferedImage first = pass(136, 88, BufferedImage.TYPE_INT_RGB, 1);
        BufferedImage second = pass(85, 55, BufferedImage.TYPE_BYTE_GRAY, 2);
        ImageIO.write(first, "png", shadow.toFile());
        ImageIO.write(second, "png", occlusion.toFile());
        Path output = folder.resolve("underlay.png");
        MergeRequest request = new MergeRequest(
                Optional.empty(),
                Optional.of(new SheetSize(17 * 25.4, 11 * 25.4)),
                20,
                List.of(
                        new PassRequest(
                                PassRole.SHADOW, shadow, PassLook.plain(SHADOW_OPACITY), false, Optional.empty()),
                        new PassRequest(
                                PassRole.OCCLUSION,
                                occlusion,
                                PassLook.plain(OCCLUSION_OPACITY),
                                false,
                                Optional.empty())),
                new PictureRequest(output, 8, OptionalInt.of(1), false, OptionalInt.empty()));
        Merge.run(request, StageClock.Listener.SILENT);
        Raster got = ImageIO.read(output.toFile()).getRaster();
        assertThat(got.getWidth()).isEqualTo(WIDTH);
        assertThat(got.getHeight()).isEqualTo(HEIGHT);
        int within = 0;
        int most = 0;
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                int worst = 0;
                for (int c = 0; c < 3; c++) {
                    worst = Math.max(worst, Math.abs(got.getSample(x, y, c) - expected(first, second, x, y, c)));
                }
                within += worst <= 1 ? 1 : 0;
                most = Math.max(most, worst);
            }
        }
        assertThat(within).isGreaterThanOrEqualTo((int) Math.ceil(0.999 * WIDTH * HEIGHT));
        assertThat(most).isLessThanOrEqualTo(2);
    }

    private static int expected(BufferedImage shadow, BufferedImage occlusion, int x, int y, int channel) {
        double light = (1 - SHADOW_OPACITY + SHADOW_OPACITY * sample(shadow, x, y, channel))
                * (1 - OCCLUSION_OPACITY + OCCLUSION_OPACITY * sample(occlusion, x, y, 0));
        double encoded = light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
        return (int) Math.round(255 * encoded);
    }

    private static double sample(BufferedImage pass, int x, int y, int channel) {
        double u = (x + 0.5) * pass.getWidth() / WIDTH - 0.5;
        double v = (y + 0.5) * pass.getHeight() / HEIGHT - 0.5;
        double sum = 0;
        for (int j = (int) Math.floor(v) - 1; j <= Math.floor(v) + 2; j++) {
            for (int i = (int) Math.floor(u) - 1; i <= Math.floor(u) + 2; i++) {
                int column = Math.max(0, Math.min(i, pass.getWidth() - 1));
                int row = Math.max(0, Math.min(j, pass.getHeight() - 1));
                double code = pass.getRaster().getSample(column, row, channel) / 255.0;
                double light = code <= 0.04045 ? code / 12.92 : Math.pow((code + 0.055) / 1.055, 2.4);
                sum += weight(u - i) * weight(v - j) * light;
            }
        }
        return Math.max(0, Math.min(1, sum));
    }

    private static double weight(double distance) {
        double x = Math.abs(distance);
        return x < 1 ? 1.5 * x * x * x - 2.5 * x * x + 1 : x < 2 ? -0.5 * x * x * x + 2.5 * x * x - 4 * x + 2 : 0;
    }

    /** Waves, steps and noise. */
    private static BufferedImage pass(int width, int height, int type, long seed) {
        BufferedImage image = new BufferedImage(width, height, type);
        Random random = new Random(seed);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                for (int c = 0; c < image.getRaster().getNumBands(); c++) {
                    double wave = 128 + 100 * Math.sin(x * 0.13 + c) * Math.cos(y * 0.09);
                    double step = (x / 16 + y / 16) % 2 == 0 ? 0 : 60;
                    int level = (int) Math.round(wave + step + 6 * random.nextGaussian());
                    image.getRaster().setSample(x, y, c, Math.max(0, Math.min(255, level)));
                }
            }
        }
        return image;
    }
}
