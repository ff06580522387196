package org.adumbrate.raster.decode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.raster.RasterReader;
import org.adumbrate.raster.StoredNumbers;
import org.adumbrate.raster.decode.png.PngBytes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files by the platform's own writer, whose codes are put in and must come out: no curve is applied. */
class StoredNumbersTest {
    @TempDir
    Path folder;

    private Path picture(int type, int width, int height) throws IOException {
        BufferedImage image = new BufferedImage(width, height, type);
        int most = type == BufferedImage.TYPE_USHORT_GRAY ? 65535 : 255;
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                for (int band = 0; band < image.getRaster().getNumBands(); band++) {
                    image.getRaster().setSample(x, y, band, code(x, y, most));
                }
            }
        }
        Path file = folder.resolve("numbers.png");
        ImageIO.write(image, "png", file.toFile());
        return file;
    }

    private static int code(int x, int y, int most) {
        return (x * 977 + y * 131) % (most + 1);
    }

    private static StoredNumbers read(Path file, long most) throws IOException {
        try (RasterReader reader = RasterFiles.open(file)) {
            return StoredNumbers.read(reader, most);
        }
    }

    @Test
    void sixteenBitsComeAsSharesOfTheLargest() throws IOException {
        StoredNumbers numbers = read(picture(BufferedImage.TYPE_USHORT_GRAY, 60, 40), 10_000);
        assertThat(numbers.size()).isEqualTo(new PixelSize(60, 40));
        assertThat(numbers.step()).isEqualTo(1 / 65535.0);
        assertThat(numbers.toFile().at(3, 4)).isEqualTo(new RasterPoint(3, 4));
        for (int k = 0; k < numbers.values().length; k++) {
            assertThat(numbers.values()[k]).isCloseTo(code(k % 60, k / 60, 65535) / 65535f, offset(1e-7f));
        }
    }

    @Test
    void eightBitsAreNotTakenForSrgb() throws IOException {
        StoredNumbers numbers = read(picture(BufferedImage.TYPE_BYTE_GRAY, 20, 10), 10_000);
        assertThat(numbers.step()).isEqualTo(1 / 255.0);
        assertThat(numbers.values()[7]).isCloseTo(code(7, 0, 255) / 255f, offset(1e-7f));
    }

    @Test
    void ofTooManyPixelsSomeAreTakenAsTheyAre() throws IOException {
        for (int factor = 2; factor < 5; factor++) {
            StoredNumbers numbers = read(picture(BufferedImage.TYPE_USHORT_GRAY, 61, 43), 61 * 43 / factor / factor);
            int width = numbers.size().width();
            assertThat(width).isEqualTo(61 / factor);
            for (int k = 0; k < numbers.values().length; k++) {
                RasterPoint middle = numbers.toFile().at(k % width + 0.5, (k - k % width) / (double) width + 0.5);
                int code = code((int) middle.x(), (int) middle.y(), 65535);
                assertThat(middle.x() % 1).isEqualTo(0.5);
                assertThat(numbers.values()[k]).isCloseTo(code / 65535f, offset(1e-7f));
            }
        }
    }

    @Test
    void colourAndTransparencyAreRefused() throws IOException {
        Path colour = picture(BufferedImage.TYPE_INT_RGB, 8, 8);
        assertThatThrownBy(() -> read(colour, 100))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining("numbers.png: has colour where one number a pixel is expected");
        Path keyed = folder.resolve("keyed.png");
        byte[] rows = PngBytes.rows(4, 4, 16, 2, (x, y, c) -> 1000 * x, 0, 0, 0, 0);
        Files.write(keyed, new PngBytes().header(4, 4, 16, 4, 0).data(rows, 1).end());
        assertThatThrownBy(() -> read(keyed, 100))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining("has transparency");
    }

    @Test
    void aFileThatIsCutShortIsAFault() throws IOException {
        Path file = picture(BufferedImage.TYPE_USHORT_GRAY, 60, 40);
        byte[] bytes = Files.readAllBytes(file);
        Files.write(file, java.util.Arrays.copyOf(bytes, bytes.length / 2));
        assertThatThrownBy(() -> read(file, 10_000)).isInstanceOf(InputFault.class);
    }
}
