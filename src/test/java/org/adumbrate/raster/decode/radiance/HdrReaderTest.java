package org.adumbrate.raster.decode.radiance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.adumbrate.fault.InputFault;
import org.adumbrate.raster.SampleType;
import org.adumbrate.raster.decode.Decoded;
import org.adumbrate.raster.decode.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HdrReaderTest {
    private static final String HEAD = "#?RADIANCE\nFORMAT=32-bit_rle_rgbe\n\n";

    @TempDir
    Path folder;

    @Test
    void flatPixels() throws IOException {
        // Values that a mantissa of 8 bits holds: m / 256 · 2^e.
        ByteArrayOutputStream pixels = new ByteArrayOutputStream();
        for (int i = 0; i < 6; i++) {
            pixels.writeBytes(new byte[] {(byte) (128 + i), (byte) (20 * i), 64, (byte) (127 + i)});
        }
        Decoded picture = decode(HEAD + "-Y 2 +X 3\n", pixels.toByteArray());
        assertThat(picture.info().type()).isEqualTo(SampleType.FLOAT);
        assertThat(picture.info().inOrder()).isTrue();
        picture.check(
                (x, y, c) -> {
                    int i = 3 * y + x;
                    int mantissa = c == 0 ? 128 + i : c == 1 ? 20 * i : 64;
                    return mantissa / 256.0 * Math.pow(2, i - 1);
                },
                1e-6);
        assertThat(picture.at(2, 1, 0)).isGreaterThan(8);
    }

    @Test
    void runsOfBytes() throws IOException {
        ByteArrayOutputStream row = new ByteArrayOutputStream();
        row.writeBytes(new byte[] {2, 2, 0, 16});
        for (int value : new int[] {128, 64, 32, 129}) {
            row.writeBytes(new byte[] {(byte) (128 + 16), (byte) value});
        }
        decode(HEAD + "-Y 1 +X 16\n", row.toByteArray()).check((x, y, c) -> new double[] {1, 0.5, 0.25}[c], 1e-6);
    }

    @Test
    void runsOfPixels() throws IOException {
        byte[] row = {(byte) 128, 64, 32, (byte) 129, 1, 1, 1, 3, 1, 1, 1, 1, 64, 64, 64, (byte) 129};
        Decoded picture = decode(HEAD + "-Y 1 +X 261\n", row);
        picture.check((x, y, c) -> x == 260 ? 0.5 : new double[] {1, 0.5, 0.25}[c], 1e-6);
    }

    @Test
    void whatAnotherProgramWrites() throws IOException {
        // A mantissa of 8 bits, cut: of a pixel of 16 at most, 16 / 256.
        Decoded.of(Sample.file("opencv.hdr"))
                .check((x, y, c) -> x * 0.31 + y * 0.17 + c * 0.07 + 0.25 - 1 / 32.0, 1 / 32.0 + 1e-5);
    }

    @Test
    void faults() throws IOException {
        assertFault(HEAD + "-Y 1 +X 1\n", "rgbe", "xyze", "HDR in XYZ is not read here");
        assertFault(HEAD + "+X 2 -Y 2\n", "", "", "HDR with rows in the order \"+X 2 -Y 2\" is not read here");
        assertFault(HEAD + "-Y 2 +X 16\n", "", "", "ends early, after row 1 of 2");
        assertFault(HEAD + "-Y 900 +X 16\n", "", "", "cannot hold");
        assertFault("#?RADIANCE\n", "", "", "ends early, in its head");
    }

    private void assertFault(String head, String change, String to, String words) throws IOException {
        Path file = write(head.replace(change, to), new byte[90]);
        assertThatThrownBy(() -> Decoded.of(file))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining(words);
    }

    private Decoded decode(String head, byte[] body) throws IOException {
        return Decoded.of(write(head, body));
    }

    private Path write(String head, byte[] body) throws IOException {
        byte[] letters = head.getBytes(StandardCharsets.US_ASCII);
        return Files.write(
                folder.resolve("picture.hdr"),
                ByteBuffer.allocate(letters.length + body.length)
                        .put(letters)
                        .put(body)
                        .array());
    }
}
