package org.adumbrate.raster.decode.jpeg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.adumbrate.fault.InputFault;
import org.adumbrate.raster.Orientation;
import org.adumbrate.raster.SampleType;
import org.adumbrate.raster.decode.Decoded;
import org.adumbrate.raster.decode.Pattern;
import org.adumbrate.raster.decode.Sample;
import org.adumbrate.raster.decode.icc.ProfileBytes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JpegReaderTest {
    private static final int WARM = 0xc85028;
    private static final int COLD = 0x1e78dc;

    /** Codes that a flat square may stray by: rounding to YCbCr and back. */
    private static final int STRAY = 2;

    @TempDir
    Path folder;

    @Test
    void greyStaysOneChannel() throws IOException {
        Decoded picture = decode(JpegBytes.writeGrey(90, 200));

        assertThat(picture.info().light().storedChannels()).isEqualTo(1);
        assertThat(picture.info().light().lightChannels()).isEqualTo(1);
        assertThat(picture.info().type()).isEqualTo(SampleType.BYTE);
        assertCode(picture, 8, 0, 90);
        assertCode(picture, 24, 0, 200);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void colour(boolean progressive) throws IOException {
        Decoded picture = decode(JpegBytes.write(progressive, WARM, COLD));

        assertThat(picture.info().inOrder()).isTrue();
        assertColour(picture, 8, WARM);
        assertColour(picture, 24, COLD);
    }

    /** A finer pattern than flat squares, against the platform's own reader. */
    @Test
    void everyRefinementOfAProgressivePictureCounts() throws IOException {
        byte[] jpeg = JpegBytes.write(true, WARM, COLD, WARM, 0xffffff, 0x101010, COLD);
        Decoded picture = decode(jpeg);
        var expected = ImageIO.read(folder.resolve("picture.jpg").toFile());
        picture.check((x, y, c) -> Pattern.srgb(expected.getRGB(x, y) >> (16 - 8 * c) & 0xff, 8), 1e-6);
    }

    @Test
    void componentsNamedByLettersAreRgb() throws IOException {
        Decoded picture = Decoded.of(Sample.file("letters-rgb.jpg"));
        assertColour(picture, 8, WARM);
        assertColour(picture, 24, COLD);
    }

    @ParameterizedTest
    @ValueSource(strings = {"inks-adobe.jpg", "inks-plain.jpg", "inks-ycck.jpg"})
    void inks(String name) throws IOException {
        Decoded picture = Decoded.of(Sample.file(name));
        int[][] inks = {{127, 85, 110, 20}, {0, 84, 35, 129}};
        for (int i = 0; i < inks.length; i++) {
            double paper = 1 - inks[i][3] / 255.0;
            for (int c = 0; c < 3; c++) {
                double encoded = (1 - inks[i][c] / 255.0) * paper;
                assertThat((double) picture.at(8 + 16 * i, 8, c)).isCloseTo(Pattern.srgb(encoded), offset(0.01));
            }
        }
        assertThat(picture.info().notes()).hasSize(1);
    }

    @Test
    void orientationAndResolutionOfExif() throws IOException {
        byte[] exif = {
            0,
            'I',
            'I',
            42,
            0,
            8,
            0,
            0,
            0,
            4,
            0, //
            0x12,
            1,
            3,
            0,
            1,
            0,
            0,
            0,
            8,
            0,
            0,
            0, //
            0x1a,
            1,
            5,
            0,
            1,
            0,
            0,
            0,
            62,
            0,
            0,
            0, //
            0x1b,
            1,
            5,
            0,
            1,
            0,
            0,
            0,
            62,
            0,
            0,
            0, //
            0x28,
            1,
            3,
            0,
            1,
            0,
            0,
            0,
            3,
            0,
            0,
            0, //
            0,
            0,
            0,
            0,
            (byte) 236,
            0,
            0,
            0,
            2,
            0,
            0,
            0
        };
        Decoded picture = decode(JpegBytes.with(JpegBytes.writeGrey(90), 0xe1, "Exif\0", exif));

        assertThat(picture.info().orientation()).isEqualTo(Orientation.LEFT_BOTTOM);
        // 236 / 2 dots a centimetre.
        assertThat(picture.info().dpi().orElseThrow()).isCloseTo(299.72, offset(1e-9));
    }

    @Test
    void resolutionOfJfif() throws IOException {
        byte[] jpeg = JpegBytes.writeGrey(90);
        assertThat(decode(jpeg).info().dpi()).isEmpty();
        // JFIF segment: length, five letters, version, units, densities.
        jpeg[13] = 1;
        jpeg[14] = 300 >> 8;
        jpeg[15] = (byte) 300;
        jpeg[16] = 300 >> 8;
        jpeg[17] = (byte) 300;
        assertThat(decode(jpeg).info().dpi()).hasValue(300);
    }

    @Test
    void aProfileInPartsOutOfOrder() throws IOException {
        byte[] profile = ProfileBytes.adobeRgb().build();
        byte[] jpeg = JpegBytes.write(false, WARM);
        jpeg = JpegBytes.with(jpeg, 0xe2, "ICC_PROFILE\0\1\2", Arrays.copyOfRange(profile, 0, 200));
        jpeg = JpegBytes.with(jpeg, 0xe2, "ICC_PROFILE\0\2\2", Arrays.copyOfRange(profile, 200, profile.length));
        Decoded picture = decode(jpeg);

        assertThat(picture.info().notes()).isEmpty();
        // Green of Adobe RGB is that of sRGB in light (both D65), under a power of 563 / 256.
        assertThat((double) picture.at(8, 8, 1)).isCloseTo(Math.pow(0x50 / 255.0, 563 / 256.0), offset(0.005));
        assertThat((double) picture.at(8, 8, 0))
                .isCloseTo(
                        1.39836 * Math.pow(0xc8 / 255.0, 563 / 256.0) - 0.39836 * Math.pow(0x50 / 255.0, 563 / 256.0),
                        offset(0.015));
    }

    /** The first square's ink under a press that is known: lightness falls in proportion to each ink. */
    @Test
    void inksUnderAProfile() throws IOException {
        ProfileBytes.Lightness press = ink -> 100 * (1 - 0.2 * ink[0] - 0.3 * ink[1] - 0.1 * ink[2] - 0.4 * ink[3]);
        byte[] profile = new ProfileBytes("CMYK").lightness("A2B0", 4, press).build();
        for (String name : new String[] {"inks-adobe.jpg", "inks-ycck.jpg"}) {
            Decoded picture = decode(JpegBytes.with(Sample.bytes(name), 0xe2, "ICC_PROFILE\0\1\1", profile));
            double lightness = press.of(new double[] {127 / 255.0, 85 / 255.0, 110 / 255.0, 20 / 255.0});
            for (int c = 0; c < 3; c++) {
                assertThat((double) picture.at(8, 8, c)).isCloseTo(Math.pow((lightness + 16) / 116, 3), offset(0.006));
            }
            assertThat(picture.info().notes()).isEmpty();
        }
    }

    @Test
    void cutShort() throws IOException {
        byte[] jpeg = JpegBytes.write(false, WARM, COLD, WARM);
        for (int length = 4; length < jpeg.length - 2; length += 7) {
            assertFault(Arrays.copyOf(jpeg, length), "");
        }
        assertFault(Arrays.copyOf(jpeg, jpeg.length - 10), "ends early, after row");
    }

    @Test
    void aProgressivePictureThatLacksAScan() throws IOException {
        byte[] jpeg = JpegBytes.write(true, WARM, COLD, WARM);
        int last = jpeg.length - 1;
        while (jpeg[last - 1] != (byte) 0xff || jpeg[last] != (byte) 0xda) {
            last--;
        }
        assertFault(Arrays.copyOf(jpeg, last - 1), "ends early, in scan");
    }

    @Test
    void kindsThatAreNotRead() throws IOException {
        byte[] jpeg = JpegBytes.write(false, WARM);
        int frame = frame(jpeg);
        assertFault(set(jpeg, frame + 1, 0xc3), "lossless JPEG is not read here; save it as");
        assertFault(set(jpeg, frame + 1, 0xc9), "arithmetic-coded or hierarchical JPEG");
        assertFault(set(jpeg, frame + 4, 12), "JPEG of 12 bits");
        assertFault(set(set(jpeg, frame + 5, 0), frame + 6, 0), "height at its end");
        assertFault(set(jpeg, frame + 7, 0xff), "cannot hold");
        assertFault(set(set(jpeg, frame + 5, 0xff), frame + 7, 0xff), "beyond");
    }

    private static int frame(byte[] jpeg) {
        int at = 0;
        while (jpeg[at] != (byte) 0xff || jpeg[at + 1] != (byte) 0xc0) {
            at++;
        }
        return at;
    }

    private static byte[] set(byte[] bytes, int at, int value) {
        byte[] copy = bytes.clone();
        copy[at] = (byte) value;
        return copy;
    }

    private void assertColour(Decoded picture, int x, int rgb) {
        for (int c = 0; c < 3; c++) {
            assertCode(picture, x, c, rgb >> (16 - 8 * c) & 0xff);
        }
    }

    private static void assertCode(Decoded picture, int x, int channel, int code) {
        assertThat((double) picture.at(x, 8, channel))
                .isBetween(Pattern.srgb(code - STRAY, 8), Pattern.srgb(code + STRAY, 8));
    }

    private Decoded decode(byte[] jpeg) throws IOException {
        return Decoded.of(Files.write(folder.resolve("picture.jpg"), jpeg));
    }

    private void assertFault(byte[] jpeg, String words) throws IOException {
        Path file = Files.write(folder.resolve("picture.jpg"), jpeg);
        assertThatThrownBy(() -> Decoded.of(file))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining(words);
    }
}
