package org.adumbrate.raster.decode.netpbm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.adumbrate.fault.InputFault;
import org.adumbrate.raster.SampleType;
import org.adumbrate.raster.decode.Decoded;
import org.adumbrate.raster.decode.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** PNM and PAM, written here byte by byte. */
class PnmReaderTest {
    private static final int WIDTH = Pattern.WIDTH;
    private static final int HEIGHT = Pattern.HEIGHT;

    @TempDir
    Path folder;

    @Test
    void portableMapsOfBytes() throws IOException {
        decode("P5\n# a comment\n13 9\n255\n", binary(1, 8)).check(Pattern::light8, 1e-6);
        decode("P6 13 9 255\n", binary(3, 8)).check(Pattern::light8, 1e-6);
        decode("P2 13 9 255\n", text(1, 8)).check(Pattern::light8, 1e-6);
        decode("P3 13 9 255\n", text(3, 8)).check(Pattern::light8, 1e-6);
        assertThat(decode("P5 13 9 255\n", binary(1, 8)).info().light().storedChannels())
                .isEqualTo(1);
        assertThat(decode("P5 13 9 255\n", binary(1, 8)).info().dpi()).isEmpty();
    }

    @Test
    void portableMapsOf16Bits() throws IOException {
        Decoded picture = decode("P6 13 9 65535\n", binary(3, 16));
        assertThat(picture.info().type()).isEqualTo(SampleType.SHORT);
        picture.check(Pattern::light16, 1e-6);
    }

    /** The largest value may be anything; the library rounds down to a code of 16 bits. */
    @Test
    void portableMapsOfOtherScales() throws IOException {
        ByteBuffer samples = ByteBuffer.allocate(2 * WIDTH * HEIGHT);
        for (int i = 0; i < WIDTH * HEIGHT; i++) {
            samples.putShort((short) (i * 8));
        }
        decode("P5 13 9 1000\n", samples.array()).check((x, y, c) -> Pattern.srgb((y * WIDTH + x) * 8 / 1000.0), 5e-5);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 100, 254, 256, 4095})
    void theLargestValueIsWhite(int maxval) throws IOException {
        boolean wide = maxval > 255;
        ByteBuffer samples = ByteBuffer.allocate((wide ? 2 : 1) * WIDTH * HEIGHT);
        for (int i = 0; i < WIDTH * HEIGHT; i++) {
            if (wide) {
                samples.putShort((short) (i * 31 % (maxval + 1)));
            } else {
                samples.put((byte) (i * 31 % (maxval + 1)));
            }
        }
        decode("P5\n13 9\n" + maxval + "\n", samples.array())
                .check((x, y, c) -> Pattern.srgb((y * WIDTH + x) * 31 % (maxval + 1) / (double) maxval), 5e-3);
        assertThat(decode("P5 2 1 1\n", new byte[] {0, 1}).at(1, 0, 0)).isEqualTo(1);
    }

    @Test
    void aValueAboveTheLargestIsAFault() throws IOException {
        assertFault("P5 2 1 100\n", new byte[] {100, 101}, "row 0 has a value of 101");
        assertFault("P2 2 1 100\n100 ", "101".getBytes(StandardCharsets.US_ASCII), "row 0 has a value of 101");
    }

    @Test
    void commentsStandAnywhereInAHead() throws IOException {
        decode("P5 # one\n# two\n13#three\n9\n# four\n255\n", binary(1, 8)).check(Pattern::light8, 1e-6);
    }

    /** Read by the byte from the file, it took a minute and a half. */
    @Test
    @Timeout(5)
    void aHeadWithoutEndIsGivenUpSoon() throws IOException {
        String comment = "#" + "x".repeat(16_000_000) + "\n";
        assertFault("P5\n" + comment + "13 9\n255\n", binary(1, 8), "has a head longer than 65536 bytes");
        assertFault(
                "P7\n" + comment + "WIDTH 13\nHEIGHT 9\nDEPTH 1\nMAXVAL 255\nENDHDR\n",
                binary(1, 8),
                "has a head longer than 65536 bytes");
        decode("P5\n#" + "x".repeat(65_000) + "\n13 9\n255\n", binary(1, 8)).check(Pattern::light8, 1e-6);
    }

    /** Black and white as in the standard: a map's 1 is white, unlike a bitmap's. */
    @Test
    void portableArbitraryMapsOfOneBit() throws IOException {
        Decoded picture = decode(
                "P7\n# a comment\nWIDTH 2\nHEIGHT 1\nDEPTH 1\nMAXVAL 1\nTUPLTYPE BLACKANDWHITE\nENDHDR\n",
                new byte[] {0, 1});
        assertThat(picture.at(0, 0, 0)).isEqualTo(0);
        assertThat(picture.at(1, 0, 0)).isEqualTo(1);
    }

    /** In a bitmap 1 is black. */
    @Test
    void portableBitmaps() throws IOException {
        byte[] rows = new byte[2 * HEIGHT];
        StringBuilder text = new StringBuilder();
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                int bit = Pattern.code(x, y, 0, 1);
                rows[2 * y + x / 8] |= (byte) (bit << (7 - x % 8));
                text.append(bit).append(' ');
            }
        }
        decode("P4 13 9\n", rows).check((x, y, c) -> 1 - Pattern.code(x, y, 0, 1), 1e-6);
        decode("P1 13 9\n", text.toString().getBytes(StandardCharsets.US_ASCII))
                .check((x, y, c) -> 1 - Pattern.code(x, y, 0, 1), 1e-6);
    }

    @Test
    void portableArbitraryMapsWithAlpha() throws IOException {
        Decoded picture =
                decode("P7\nWIDTH 13\nHEIGHT 9\nDEPTH 4\nMAXVAL 255\nTUPLTYPE RGB_ALPHA\nENDHDR\n", binary(4, 8));
        assertThat(picture.info().inOrder()).isTrue();
        picture.check(
                (x, y, c) -> {
                    double alpha = Pattern.code8(x, y, 3) / 255.0;
                    return Pattern.light8(x, y, c) * alpha + 1 - alpha;
                },
                1e-6);
    }

    @Test
    void faults() throws IOException {
        assertFault("P6 13 9 255\n", new byte[200], "ends early, after 5 of 9 rows");
        assertFault("P6 90000 90000 255\n", new byte[200], "beyond");
        assertFault("P6 32000 32000 255\n", new byte[200], "cannot hold");
    }

    private static byte[] binary(int channels, int bits) {
        ByteBuffer samples = ByteBuffer.allocate(WIDTH * HEIGHT * channels * bits / 8);
        for (int i = 0; i < WIDTH * HEIGHT * channels; i++) {
            int code = Pattern.code(i / channels % WIDTH, i / channels / WIDTH, i % channels, bits);
            if (bits == 8) {
                samples.put((byte) code);
            } else {
                samples.putShort((short) code);
            }
        }
        return samples.array();
    }

    private static byte[] text(int channels, int bits) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < WIDTH * HEIGHT * channels; i++) {
            text.append(Pattern.code(i / channels % WIDTH, i / channels / WIDTH, i % channels, bits));
            text.append(i % 7 == 6 ? '\n' : ' ');
        }
        return text.toString().getBytes(StandardCharsets.US_ASCII);
    }

    private Decoded decode(String head, byte[] body) throws IOException {
        return Decoded.of(write(head, body));
    }

    private Path write(String head, byte[] body) throws IOException {
        byte[] letters = head.getBytes(StandardCharsets.US_ASCII);
        return Files.write(
                folder.resolve("picture"),
                ByteBuffer.allocate(letters.length + body.length)
                        .put(letters)
                        .put(body)
                        .array());
    }

    private void assertFault(String head, byte[] body, String words) throws IOException {
        Path file = write(head, body);
        assertThatThrownBy(() -> Decoded.of(file))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining(words);
    }
}
