package org.adumbrate.raster.decode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.Stream;
import org.adumbrate.fault.InputFault;
import org.adumbrate.raster.RasterReader;
import org.adumbrate.raster.decode.bmp.BmpBytes;
import org.adumbrate.raster.decode.jpeg.JpegBytes;
import org.adumbrate.raster.decode.png.PngBytes;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Files of every format, cut short and with bytes changed: pixels or an {@link InputFault}, and nothing else, soon. */
class DamageTest {
    private static final int CUTS = 12;
    private static final int CHANGES = 60;

    @TempDir
    Path folder;

    static Stream<Named<byte[]>> files() throws IOException {
        byte[] rows = PngBytes.rows(Pattern.WIDTH, Pattern.HEIGHT, 8, 3, Pattern::code8, 4, 3, 2, 1, 0);
        byte[] codes = PngBytes.rows(Pattern.WIDTH, Pattern.HEIGHT, 4, 1, (x, y, c) -> x % 12, 0);
        byte[] samples = new byte[3 * Pattern.WIDTH * Pattern.HEIGHT];
        Arrays.fill(samples, (byte) 'a');
        Stream<Named<byte[]>> made = Stream.of(
                Named.of(
                        "PNG",
                        new PngBytes()
                                .header(Pattern.WIDTH, Pattern.HEIGHT, 8, 2, 0)
                                .data(rows, 2)
                                .end()),
                Named.of(
                        "PNG with palette",
                        new PngBytes()
                                .header(Pattern.WIDTH, Pattern.HEIGHT, 4, 3, 0)
                                .chunk("PLTE", new byte[36])
                                .data(codes, 1)
                                .end()),
                Named.of("JPEG", JpegBytes.write(false, 0xc85028, 0x1e78dc)),
                Named.of("progressive JPEG", JpegBytes.write(true, 0xc85028, 0x1e78dc)),
                Named.of("PPM", join("P6 13 9 255\n".getBytes(StandardCharsets.US_ASCII), samples)),
                Named.of(
                        "PAM",
                        join(
                                "P7\nWIDTH 13\nHEIGHT 9\nDEPTH 3\nMAXVAL 255\nTUPLTYPE RGB\nENDHDR\n"
                                        .getBytes(StandardCharsets.US_ASCII),
                                samples)),
                Named.of("BMP", BmpBytes.colourBitmap()));
        Stream<Named<byte[]>> stored = Stream.of(
                        "inks-ycck.jpg",
                        "opencv.hdr",
                        "rgb8-strips-lzw.tif",
                        "rgb8-strips-deflate.tif",
                        "rgb8-packbits.tif",
                        "rgb8-big-be-tiles.tif",
                        "rgb8-planar-lzw.tif",
                        "rgb16-planar.tif",
                        "float32-rgb-deflate3.tif",
                        "palette8.tif",
                        "grey1-g4.tif",
                        "squares-jpeg.tif")
                .map(name -> Named.of(name, Sample.bytes(name)));
        return Stream.concat(made, stored);
    }

    private static byte[] join(byte[] a, byte[] b) {
        byte[] both = Arrays.copyOf(a, a.length + b.length);
        System.arraycopy(b, 0, both, a.length, b.length);
        return both;
    }

    @ParameterizedTest
    @MethodSource("files")
    void cutShort(byte[] whole) throws IOException {
        assertThat(decode(whole)).as("the whole file is sound").isTrue();
        for (int i = 0; i < CUTS; i++) {
            // Not to the last bytes: where only an end marker is missing, the picture is whole.
            byte[] cut = Arrays.copyOf(whole, whole.length * i / (CUTS + 2));
            assertThatThrownBy(() -> decodeOrThrow(cut))
                    .as("%d of %d bytes", cut.length, whole.length)
                    .isInstanceOf(InputFault.class);
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void changed(byte[] whole) {
        Random random = new Random(20);
        Assertions.assertTimeoutPreemptively(Duration.ofSeconds(10), () -> {
            for (int i = 0; i < CHANGES; i++) {
                byte[] changed = whole.clone();
                for (int k = random.nextInt(3); k >= 0; k--) {
                    changed[random.nextInt(changed.length)] = (byte) random.nextInt(256);
                }
                decode(changed);
            }
        });
    }

    @Test
    void theTestCanFail() {
        assertThat(Stream.of(new byte[0], new byte[100]).filter(this::decode)).isEmpty();
    }

    /** Whether it can be decoded; anything but an {@link InputFault} comes out as a failure. */
    private boolean decode(byte[] bytes) {
        try {
            decodeOrThrow(bytes);
            return true;
        } catch (InputFault e) {
            assertThat(e.getMessage().lines()).as("a fault is one line").hasSize(1);
            return false;
        } catch (IOException | RuntimeException e) {
            throw new AssertionError("no fault but " + e, e);
        }
    }

    private void decodeOrThrow(byte[] bytes) throws IOException {
        Path file = Files.write(folder.resolve("picture"), bytes);
        try (RasterReader reader = RasterFiles.open(file)) {
            reader.decode((x, y, pixels, samples, offset) -> {
                int channels = reader.info().light().storedChannels();
                assertThat(x + pixels)
                        .isLessThanOrEqualTo(reader.info().stored().width());
                assertThat(y).isLessThan(reader.info().stored().height());
                assertThat(samples.length()).isGreaterThanOrEqualTo(offset + pixels * channels);
            });
        }
    }
}
