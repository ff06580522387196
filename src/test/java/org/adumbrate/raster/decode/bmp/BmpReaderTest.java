package org.adumbrate.raster.decode.bmp;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import org.adumbrate.fault.InputFault;
import org.adumbrate.raster.decode.Decoded;
import org.adumbrate.raster.decode.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** BMP, written here byte by byte. */
class BmpReaderTest {
    private static final int WIDTH = Pattern.WIDTH;
    private static final int HEIGHT = Pattern.HEIGHT;

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void bitmapsOf24Bits(boolean topDown) throws IOException {
        Decoded picture = decodeBmp(BmpBytes.colourBitmap(topDown));
        // 11811 dots a metre.
        assertThat(picture.info().dpi().orElseThrow()).isCloseTo(299.9994, offset(1e-4));
        assertThat(picture.info().light().storedChannels()).isEqualTo(3);
        picture.check(Pattern::light8, 1e-6);
    }

    @Test
    void bitmapsWithPalette() throws IOException {
        byte[] palette = new byte[4 * 16];
        for (int i = 0; i < palette.length; i++) {
            palette[i] = (byte) (i % 4 == 3 ? 0 : Pattern.code8(i / 4, 0, 2 - i % 4));
        }
        byte[] rows = new byte[8 * HEIGHT];
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                rows[(HEIGHT - 1 - y) * 8 + x / 2] |= (byte) ((x + y) % 16 << (x % 2 == 0 ? 4 : 0));
            }
        }
        decodeBmp(BmpBytes.bmp(4, 0, false, palette, rows))
                .check((x, y, c) -> Pattern.light8((x + y) % 16, 0, c), 1e-6);
    }

    /** Each row one run, in BI_RLE8; the greys of the palette make it one channel. */
    @Test
    void bitmapsOfRuns() throws IOException {
        byte[] palette = new byte[4 * 256];
        for (int i = 0; i < palette.length; i++) {
            palette[i] = (byte) (i % 4 == 3 ? 0 : i / 4);
        }
        ByteArrayOutputStream runs = new ByteArrayOutputStream();
        for (int y = HEIGHT - 1; y >= 0; y--) {
            runs.writeBytes(new byte[] {WIDTH, (byte) (20 * y), 0, 0});
        }
        runs.writeBytes(new byte[] {0, 1});
        Decoded picture = decodeBmp(BmpBytes.bmp(8, 1, false, palette, runs.toByteArray()));
        assertThat(picture.info().light().storedChannels()).isEqualTo(1);
        picture.check((x, y, c) -> Pattern.srgb(20 * y, 8), 1e-6);
    }

    @Test
    void bitmapsOf16BitsHaveFewerBitsForRedAndBlue() throws IOException {
        int rowBytes = (2 * WIDTH + 3) / 4 * 4;
        ByteBuffer rows = ByteBuffer.allocate(rowBytes * HEIGHT).order(ByteOrder.LITTLE_ENDIAN);
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                int pixel = code565(x, y, 0) << 11 | code565(x, y, 1) << 5 | code565(x, y, 2);
                rows.putShort((HEIGHT - 1 - y) * rowBytes + 2 * x, (short) pixel);
            }
        }
        byte[] masks = {0, (byte) 0xf8, 0, 0, (byte) 0xe0, 7, 0, 0, 0x1f, 0, 0, 0};
        decodeBmp(BmpBytes.bmp(16, 3, false, masks, rows.array()))
                .check(
                        (x, y, c) -> Pattern.srgb((int) Math.round(code565(x, y, c) * 255.0 / (c == 1 ? 63 : 31)), 8),
                        1e-6);
    }

    /** BITMAPINFOHEADER, biBitCount 32 with BI_RGB: the high byte of each pixel is not used. */
    @Test
    void theFourthByteOfAPlainPixelIsNoAlpha() throws IOException {
        Decoded picture = decodeBmp(BmpBytes.bmp(32, 0, false, new byte[0], pixelsOf32()));
        assertThat(picture.info().light().storedChannels()).isEqualTo(3);
        picture.check(Pattern::light8, 1e-6);
    }

    /** BITMAPV4HEADER, bV4AlphaMask with BI_BITFIELDS: it is. */
    @Test
    void theFourthByteUnderAnAlphaMaskIsAlpha() throws IOException {
        decodeBmp(v4(3, 0xff000000, pixelsOf32()))
                .check(
                        (x, y, c) -> {
                            double alpha = Pattern.code8(x, y, 3) / 255.0;
                            return Pattern.light8(x, y, c) * alpha + 1 - alpha;
                        },
                        1e-6);
        decodeBmp(v4(3, 0, pixelsOf32())).check(Pattern::light8, 1e-6);
        decodeBmp(v4(0, 0xff000000, pixelsOf32())).check(Pattern::light8, 1e-6);
    }

    private static byte[] pixelsOf32() {
        byte[] rows = new byte[4 * WIDTH * HEIGHT];
        for (int i = 0; i < rows.length; i++) {
            int x = i / 4 % WIDTH;
            int y = HEIGHT - 1 - i / 4 / WIDTH;
            rows[i] = (byte) Pattern.code8(x, y, i % 4 == 3 ? 3 : 2 - i % 4);
        }
        return rows;
    }

    /** A BITMAPV4HEADER over pixels of 32 bits. */
    private static byte[] v4(int compression, int alphaMask, byte[] rows) {
        byte[] info = BmpBytes.bmp(32, compression, false, new byte[0], new byte[0]);
        ByteBuffer out = ByteBuffer.allocate(14 + 108 + rows.length).order(ByteOrder.LITTLE_ENDIAN);
        out.put(info).putInt(0xff0000).putInt(0xff00).putInt(0xff).putInt(alphaMask);
        out.position(14 + 108);
        return out.put(rows)
                .putInt(2, out.capacity())
                .putInt(10, 14 + 108)
                .putInt(14, 108)
                .array();
    }

    /** Moves leave the palette's first colour; a run, two codes apart, a move to the right and up, a run. */
    @Test
    void runsOfHalfBytesWithMoves() throws IOException {
        byte[] palette = new byte[4 * 16];
        for (int i = 0; i < palette.length; i++) {
            palette[i] = (byte) (i % 4 == 3 ? 0 : 16 * (i / 4));
        }
        byte[] runs = {3, 0x12, 0, 5, 0x34, 0x56, 0x70, 0, 0, 2, 1, 2, 2, (byte) 0x9a, 0, 1};
        Decoded picture = decodeBmp(BmpBytes.bmp(4, 2, false, palette, runs));
        int[] lowest = {1, 2, 1, 3, 4, 5, 6, 7};
        for (int x = 0; x < lowest.length; x++) {
            assertThat(picture.at(x, HEIGHT - 1, 0)).isEqualTo((float) Pattern.srgb(16 * lowest[x], 8));
        }
        assertThat(picture.at(9, HEIGHT - 3, 0)).isEqualTo((float) Pattern.srgb(16 * 9, 8));
        assertThat(picture.at(10, HEIGHT - 3, 0)).isEqualTo((float) Pattern.srgb(16 * 10, 8));
        assertThat(picture.at(9, HEIGHT - 2, 0)).isZero();
        assertThat(picture.at(9, 0, 0)).isZero();
    }

    /** As some writers do: rows of 13 are filled up to 16 codes. */
    @Test
    void runsMayFillARowUpToAMultipleOfFour() throws IOException {
        byte[] palette = new byte[4 * 256];
        for (int i = 0; i < palette.length; i++) {
            palette[i] = (byte) (i % 4 == 3 ? 0 : i / 4);
        }
        ByteArrayOutputStream runs = new ByteArrayOutputStream();
        for (int y = HEIGHT - 1; y >= 0; y--) {
            runs.writeBytes(new byte[] {WIDTH, (byte) (20 * y), 3, 99, 0, 0});
        }
        runs.writeBytes(new byte[] {0, 1});
        decodeBmp(BmpBytes.bmp(8, 1, false, palette, runs.toByteArray()))
                .check((x, y, c) -> Pattern.srgb(20 * y, 8), 1e-6);
        runs.reset();
        runs.writeBytes(new byte[] {17, 1, 0, 0, 0, 1});
        assertBmpFault(BmpBytes.bmp(8, 1, false, palette, runs.toByteArray()), "a run leads out of a row");
    }

    /** OS/2 2.x: a head of 16 bytes, then the palette. */
    @Test
    void aHeadMayEndAfterItsBits() throws IOException {
        byte[] rows = new byte[4 * HEIGHT];
        byte[] head = java.util.Arrays.copyOf(BmpBytes.bmp(1, 0, false, new byte[0], new byte[0]), 30);
        ByteBuffer out = ByteBuffer.allocate(30 + 8 + rows.length).order(ByteOrder.LITTLE_ENDIAN);
        out.put(head).put(new byte[] {10, 20, 30, 0, 40, 50, 60, 0}).put(rows);
        out.putInt(2, out.capacity()).putInt(10, 38).putInt(14, 16);
        decodeBmp(out.array()).check((x, y, c) -> Pattern.srgb(30 - 10 * c, 8), 1e-6);
    }

    @Test
    void plainBitmapsComeFromTheTopDown() throws IOException {
        assertThat(decodeBmp(BmpBytes.colourBitmap()).info().inOrder()).isTrue();
    }

    /** Eight bits of red and eight of green leave none for blue. */
    @Test
    void aColourWithoutBitsIsNone() throws IOException {
        int rowBytes = (2 * WIDTH + 3) / 4 * 4;
        ByteBuffer rows = ByteBuffer.allocate(rowBytes * HEIGHT).order(ByteOrder.LITTLE_ENDIAN);
        for (int k = 0; k < WIDTH * HEIGHT; k++) {
            int code = Pattern.code8(k % WIDTH, k / WIDTH, 0) << 8 | Pattern.code8(k % WIDTH, k / WIDTH, 1);
            rows.putShort((HEIGHT - 1 - k / WIDTH) * rowBytes + 2 * (k % WIDTH), (short) code);
        }
        byte[] masks = {0, (byte) 0xff, 0, 0, (byte) 0xff, 0, 0, 0, 0, 0, 0, 0};
        decodeBmp(BmpBytes.bmp(16, 3, false, masks, rows.array()))
                .check((x, y, c) -> c == 2 ? 0 : Pattern.light8(x, y, c), 1e-6);
    }

    private static int code565(int x, int y, int channel) {
        return Pattern.code(x, y, channel, channel == 1 ? 6 : 5);
    }

    @Test
    void faults() throws IOException {
        byte[] bmp = BmpBytes.bmp(24, 0, false, new byte[0], new byte[40 * HEIGHT]);
        bmp[18] = 100;
        assertBmpFault(bmp, "its rows need 2754 bytes, it has 414");
        bmp[30] = 4;
        assertBmpFault(bmp, "BMP that holds a JPEG");
    }

    private Decoded decodeBmp(byte[] bmp) throws IOException {
        return Decoded.of(Files.write(folder.resolve("picture.bmp"), bmp));
    }

    private void assertBmpFault(byte[] bmp, String words) throws IOException {
        Path file = Files.write(folder.resolve("picture.bmp"), bmp);
        assertThatThrownBy(() -> Decoded.of(file))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining(words);
    }
}
