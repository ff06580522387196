package org.adumbrate.raster.decode.tiff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.adumbrate.fault.InputFault;
import org.adumbrate.raster.Orientation;
import org.adumbrate.raster.SampleType;
import org.adumbrate.raster.decode.Decoded;
import org.adumbrate.raster.decode.Pattern;
import org.adumbrate.raster.decode.Sample;
import org.adumbrate.raster.decode.icc.ProfileBytes;
import org.adumbrate.raster.decode.metadata.TiffTag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The samples were written tag by tag, or recoded by libtiff, and hold what {@link Pattern} says. */
class TiffReaderTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "rgb8",
                "rgb8-strips-lzw",
                "rgb8-strips-deflate",
                "rgb8-packbits",
                "rgb8-big-endian-lzw",
                "rgb8-tiles-deflate",
                "rgb8-planar-lzw",
                "rgb8-planar-tiles",
                "rgb8-big",
                "rgb8-big-be-tiles",
                "rgba8-unspecified"
            })
    void colourOf8Bits(String name) throws IOException {
        Decoded picture = sample(name);
        assertThat(picture.info().type()).isEqualTo(SampleType.BYTE);
        assertThat(picture.info().inOrder()).isTrue();
        assertThat(picture.info().light().storedChannels()).isEqualTo(3);
        picture.check(Pattern::light8, 1e-6);
    }

    @ParameterizedTest
    @ValueSource(strings = {"rgb16", "rgb16-big-endian-lzw", "rgb16-tiles-deflate", "rgb16-planar"})
    void colourOf16Bits(String name) throws IOException {
        Decoded picture = sample(name);
        assertThat(picture.info().type()).isEqualTo(SampleType.SHORT);
        assertThat(picture.info().inOrder()).isTrue();
        picture.check(Pattern::light16, 1e-6);
    }

    @ParameterizedTest
    @CsvSource({"grey8,8", "white-is-zero8,8", "grey1,1", "grey2,2", "grey4,4", "grey4-tiles,4", "white-is-zero1,1"})
    void greyOfUpTo8Bits(String name, int bits) throws IOException {
        Decoded picture = sample(name);
        assertThat(picture.info().light().storedChannels()).isEqualTo(1);
        assertThat(picture.info().type()).isEqualTo(SampleType.BYTE);
        picture.check((x, y, c) -> Pattern.srgb(Pattern.code(x, y, 0, bits), bits), 1e-6);
    }

    @ParameterizedTest
    @CsvSource({"grey1-g4", "grey1-g3"})
    void fax(String name) throws IOException {
        sample(name).check((x, y, c) -> Pattern.code(x, y, 0, 1), 1e-6);
    }

    @ParameterizedTest
    @ValueSource(strings = {"grey16", "grey16-packbits", "white-is-zero16", "uint32-grey"})
    void greyOf16BitsAndMore(String name) throws IOException {
        Decoded picture = sample(name);
        assertThat(picture.info().type()).isEqualTo(SampleType.SHORT);
        picture.check(Pattern::light16, 1e-6);
    }

    @ParameterizedTest
    @ValueSource(ints = {10, 12})
    void greyBetween8And16Bits(int bits) throws IOException {
        sample("grey" + bits).check((x, y, c) -> Pattern.srgb(Pattern.code16(x, y, 0) >> (16 - bits), bits), 2e-5);
    }

    @ParameterizedTest
    @CsvSource({
        "float32-grey,1e-6",
        "float32-rgb,1e-6",
        "float32-rgb-deflate3,1e-6",
        "float32-grey-tiles-lzw3-be,1e-6",
        "float64-grey,1e-6",
        "float16-grey,2e-3",
        "float16-grey-be,2e-3",
        "float16-rgb,2e-3",
        "float16-rgb-deflate3,2e-3"
    })
    void floatsAreLightAndNotClamped(String name, double tolerance) throws IOException {
        Decoded picture = sample(name);
        assertThat(picture.info().type()).isEqualTo(SampleType.FLOAT);
        picture.check(Pattern::real, tolerance);
        assertThat(picture.at(0, 0, 0)).isNegative();
        assertThat(picture.at(Pattern.WIDTH - 1, Pattern.HEIGHT - 1, 0)).isGreaterThan(4);
    }

    @Test
    void straightAlpha() throws IOException {
        sample("rgba8-straight").check((x, y, c) -> over(Pattern.light8(x, y, c), alpha(x, y)), 1e-6);
        sample("rgba16-straight")
                .check((x, y, c) -> over(Pattern.light16(x, y, c), Pattern.code16(x, y, 3) / 65535.0), 1e-6);
        sample("grey-alpha8").check((x, y, c) -> over(Pattern.light8(x, y, 0), Pattern.code8(x, y, 1) / 255.0), 1e-6);
    }

    /** TIFF 6.0, section 18: the field must be there; where it is not, readers take the fourth sample for alpha. */
    @Test
    void aFourthChannelThatIsNotNamedIsAlphaAndTold() throws IOException {
        byte[] tiff = renamed(Sample.bytes("rgba8-straight.tif"), TiffTag.EXTRA_SAMPLES, 339 + 100);
        Decoded picture = Decoded.of(Files.write(folder.resolve("unnamed.tif"), tiff));
        picture.check((x, y, c) -> over(Pattern.light8(x, y, c), alpha(x, y)), 1e-6);
        assertThat(picture.info().notes()).singleElement().asString().contains("taken for transparency");
        assertThat(sample("rgba8-straight").info().notes()).isEmpty();
        assertThat(sample("rgba8-unspecified").info().notes()).isEmpty();
    }

    /** Gives a field of a little-endian file another number. */
    private static byte[] renamed(byte[] tiff, int tag, int to) {
        ByteBuffer data = ByteBuffer.wrap(tiff.clone()).order(ByteOrder.LITTLE_ENDIAN);
        int entry = data.getInt(4) + 2;
        while (data.getShort(entry) != (short) tag) {
            entry += 12;
        }
        return data.putShort(entry, (short) to).array();
    }

    @Test
    void associatedAlphaIsUndone() throws IOException {
        Decoded picture = sample("rgba8-associated");
        // The stored product is rounded to a code; divided by alpha and through the curve's slope (at most 2.28) that
        // is
        // at most 0.5 / 255 · 2.28 of light once weighed by alpha again.
        picture.check((x, y, c) -> over(Pattern.light8(x, y, c), Math.max(64, Pattern.code8(x, y, 3)) / 255.0), 0.0046);
    }

    private static double over(double light, double alpha) {
        return light * alpha + 1 - alpha;
    }

    private static double alpha(int x, int y) {
        return Pattern.code8(x, y, 3) / 255.0;
    }

    @Test
    void inks() throws IOException {
        sample("inks8")
                .check(
                        (x, y, c) -> Pattern.srgb(
                                (1 - Pattern.code8(x, y, c) / 255.0) * (1 - Pattern.code8(x, y, 3) / 255.0)),
                        1e-5);
        sample("inks16")
                .check(
                        (x, y, c) -> Pattern.srgb(
                                (1 - Pattern.code16(x, y, c) / 65535.0) * (1 - Pattern.code16(x, y, 3) / 65535.0)),
                        1e-5);
    }

    @Test
    void palettes() throws IOException {
        sample("palette8").check((x, y, c) -> Pattern.light16(Pattern.code8(x, y, 0), 0, c), 1e-6);
        sample("palette4").check((x, y, c) -> Pattern.light16(Pattern.code(x, y, 0, 4), 0, c), 1e-6);
        Decoded greys = sample("palette4-greys");
        assertThat(greys.info().light().storedChannels()).isEqualTo(1);
        assertThat(greys.info().type()).isEqualTo(SampleType.BYTE);
        greys.check((x, y, c) -> Pattern.srgb(Pattern.code(x, y, 0, 4), 4), 1e-6);
    }

    @ParameterizedTest
    @ValueSource(strings = {"squares-jpeg", "squares-jpeg-rgb-tiles"})
    void jpegWithin(String name) throws IOException {
        Decoded picture = sample(name);
        int[][] colours = {{200, 80, 40}, {30, 120, 220}};
        for (int i = 0; i < 2; i++) {
            for (int c = 0; c < 3; c++) {
                assertThat((double) picture.at(8 + 16 * i, 8, c))
                        .isBetween(Pattern.srgb(colours[i][c] - 2, 8), Pattern.srgb(colours[i][c] + 2, 8));
            }
        }
    }

    @Test
    void orientationAndResolution() throws IOException {
        Decoded picture = sample("grey8");
        assertThat(picture.info().orientation()).isEqualTo(Orientation.RIGHT_TOP);
        // 236 / 2 dots a centimetre.
        assertThat(picture.info().dpi().orElseThrow()).isCloseTo(299.72, offset(1e-9));
        assertThat(sample("rgb8").info().dpi()).isEmpty();
    }

    @Test
    void anEmbeddedProfile() throws IOException {
        byte[] profile = new ProfileBytes("GRAY").curve("kTRC", 0x0180).build();
        byte[] tiff = withField(Sample.bytes("grey8.tif"), TiffTag.ICC_PROFILE, profile);
        Decoded picture = Decoded.of(Files.write(folder.resolve("tagged.tif"), tiff));
        assertThat(picture.info().notes()).isEmpty();
        picture.check((x, y, c) -> Math.pow(Pattern.code8(x, y, 0) / 255.0, 1.5), 1e-6);
    }

    /** The little-endian file with its directory repeated at its end and one field of bytes more. */
    private static byte[] withField(byte[] tiff, int tag, byte[] value) {
        ByteBuffer old = ByteBuffer.wrap(tiff).order(ByteOrder.LITTLE_ENDIAN);
        int directory = old.getInt(4);
        int entries = old.getShort(directory);
        int end = tiff.length + tiff.length % 2;
        int valueAt = end + 2 + 12 * (entries + 1) + 4;
        ByteBuffer out = ByteBuffer.allocate(valueAt + value.length).order(ByteOrder.LITTLE_ENDIAN);
        out.put(tiff).putInt(4, end).position(end);
        out.putShort((short) (entries + 1)).put(tiff, directory + 2, 12 * entries);
        out.putShort((short) tag).putShort((short) 7).putInt(value.length).putInt(valueAt);
        return out.putInt(0).put(value).array();
    }

    @Test
    void faults() throws IOException {
        assertFault(Sample.bytes("rgb8-zstd.tif"), "TIFF compressed by Zstandard is not read here; save it as");
        byte[] tiff = Sample.bytes("grey8.tif");
        assertFault(set(tiff, TiffTag.WIDTH, 0), "states a size of 0 x 9 px");
        assertFault(set(tiff, TiffTag.WIDTH, 60000), "cannot hold");
        assertFault(set(tiff, TiffTag.PHOTOMETRIC, 8), "TIFF in L*a*b*");
        assertFault(set(tiff, TiffTag.PHOTOMETRIC, 2), "1 samples a pixel, its colour needs 3");
        assertFault(set(tiff, TiffTag.PHOTOMETRIC, 3), "palette has 0 of 256 entries");
        assertFault(set(tiff, TiffTag.SAMPLE_FORMAT, 2), "signed or complex");
        assertFault(set(tiff, TiffTag.BITS_PER_SAMPLE, 7), "1 samples of 7 bits");
        assertFault(set(tiff, TiffTag.ROWS_PER_STRIP, 3), "lists 1 of 3 strips");
        assertFault(set(tiff, TiffTag.STRIP_OFFSETS, 5000), "ends early, in strip 0 of 1");
        assertFault(Arrays.copyOf(tiff, 40), "ends early, before its directory");
    }

    /** Sets the first value of a field of a little-endian file whose entries hold their values themselves. */
    private static byte[] set(byte[] tiff, int tag, int value) {
        ByteBuffer data = ByteBuffer.wrap(tiff.clone()).order(ByteOrder.LITTLE_ENDIAN);
        int entry = data.getInt(4) + 2;
        while (data.getShort(entry) != (short) tag) {
            entry += 12;
        }
        return data.putShort(entry + 8, (short) value).array();
    }

    private static Decoded sample(String name) throws IOException {
        return Decoded.of(Sample.file(name + ".tif"));
    }

    private void assertFault(byte[] tiff, String words) throws IOException {
        Path file = Files.write(folder.resolve("picture.tif"), tiff);
        assertThatThrownBy(() -> Decoded.of(file))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining(words);
    }
}
