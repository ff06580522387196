package org.adumbrate.raster.decode.png;

import static org.adumbrate.raster.decode.Pattern.HEIGHT;
import static org.adumbrate.raster.decode.Pattern.WIDTH;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.adumbrate.fault.InputFault;
import org.adumbrate.raster.Orientation;
import org.adumbrate.raster.SampleType;
import org.adumbrate.raster.decode.Decoded;
import org.adumbrate.raster.decode.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PngReaderTest {
    private static final int GREY = 0;
    private static final int RGB = 2;
    private static final int PALETTE = 3;

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"0,1,1", "0,2,1", "0,4,1", "0,8,1", "0,16,1", "2,8,3", "2,16,3", "4,8,2", "4,16,2", "6,8,4", "6,16,4"})
    void everyColourTypeAndDepthUnderEveryFilter(int colourType, int depth, int channels) throws IOException {
        PngBytes.Formula codes = (x, y, c) -> Pattern.code(x, y, c, depth);
        byte[] rows = PngBytes.rows(WIDTH, HEIGHT, depth, channels, codes, 4, 3, 2, 1, 0);
        Decoded picture = decode(
                new PngBytes().header(WIDTH, HEIGHT, depth, colourType, 0).data(rows, 3));

        assertThat(picture.info().type()).isEqualTo(depth == 16 ? SampleType.SHORT : SampleType.BYTE);
        assertThat(picture.info().inOrder()).isTrue();
        assertThat(picture.info().light().storedChannels()).isEqualTo(channels);
        picture.check((x, y, c) -> light(x, y, c, depth, channels), 1e-6);
    }

    /** Over paper, in linear light, if there is an even number of channels: the last is then alpha. */
    private static double light(int x, int y, int c, int depth, int channels) {
        double light = Pattern.srgb(Pattern.code(x, y, c, depth), depth);
        if (channels % 2 == 1) {
            return light;
        }
        double alpha = Pattern.code(x, y, channels - 1, depth) / (Math.pow(2, depth) - 1);
        return light * alpha + 1 - alpha;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 4, 8})
    void paletteOfColours(int depth) throws IOException {
        int entries = 1 << depth;
        byte[] palette = new byte[3 * entries];
        for (int i = 0; i < palette.length; i++) {
            palette[i] = (byte) Pattern.code8(i / 3, 0, i % 3);
        }
        byte[] rows = PngBytes.rows(WIDTH, HEIGHT, depth, 1, (x, y, c) -> (x + 3 * y) % entries, 0, 1, 2);
        Decoded picture = decode(new PngBytes()
                .header(WIDTH, HEIGHT, depth, PALETTE, 0)
                .chunk("PLTE", palette)
                .data(rows, 1));

        picture.check((x, y, c) -> Pattern.light8((x + 3 * y) % entries, 0, c), 1e-6);
    }

    @Test
    void paletteOfGreysStaysOneChannelAndKeepsItsAlpha() throws IOException {
        byte[] palette = {0, 0, 0, 100, 100, 100, (byte) 200, (byte) 200, (byte) 200};
        byte[] alphas = {51, (byte) 204};
        byte[] rows = PngBytes.rows(WIDTH, HEIGHT, 2, 1, (x, y, c) -> (x + y) % 3, 0);
        Decoded picture = decode(new PngBytes()
                .header(WIDTH, HEIGHT, 2, PALETTE, 0)
                .chunk("PLTE", palette)
                .chunk("tRNS", alphas)
                .data(rows, 1));

        assertThat(picture.info().light().lightChannels()).isEqualTo(1);
        double[] expected = {0.8, Pattern.srgb(100, 8) * 0.8 + 0.2, Pattern.srgb(200, 8)};
        picture.check((x, y, c) -> expected[(x + y) % 3], 1e-6);
    }

    /** PNG 3rd edition, 10.1: the boundaries between IDAT chunks are arbitrary, and one may be empty. */
    @Test
    void imageDataChunksMayBeEmpty() throws IOException {
        byte[] packed = PngBytes.deflate(PngBytes.rows(WIDTH, HEIGHT, 8, 1, (x, y, c) -> Pattern.code8(x, y, 0), 0));
        byte[] none = {};
        PngBytes png = new PngBytes().header(WIDTH, HEIGHT, 8, GREY, 0).chunk("IDAT", none);
        png.chunk("IDAT", java.util.Arrays.copyOf(packed, 20)).chunk("IDAT", none);
        png.chunk("IDAT", java.util.Arrays.copyOfRange(packed, 20, packed.length));
        decode(png.chunk("IDAT", none)).check((x, y, c) -> Pattern.light8(x, y, 0), 1e-6);
    }

    /** Little-endian, one field: Orientation 6. */
    private static final byte[] EXIF = {
        'I', 'I', 42, 0, 8, 0, 0, 0, 1, 0, 0x12, 1, 3, 0, 1, 0, 0, 0, 6, 0, 0, 0, 0, 0, 0, 0
    };

    @ParameterizedTest
    @ValueSource(strings = {"before", "behind"})
    void orientationByExifTextAndXmp(String where) throws IOException {
        String hex = java.util.HexFormat.of().formatHex(EXIF);
        String raw = "\nexif\n      " + EXIF.length + "\n" + hex.substring(0, 40) + "\n" + hex.substring(40) + "\n";
        byte[] name = "Raw profile type exif\0".getBytes(StandardCharsets.ISO_8859_1);
        byte[] packed = PngBytes.deflate(raw.getBytes(StandardCharsets.ISO_8859_1));
        String xmp = "XML:com.adobe.xmp\0\0\0\0\0<rdf:Description ";
        assertThat(orientation(where, "eXIf", EXIF)).isEqualTo(Orientation.RIGHT_TOP);
        assertThat(orientation(where, "tEXt", joined(name, raw.getBytes(StandardCharsets.ISO_8859_1))))
                .isEqualTo(Orientation.RIGHT_TOP);
        assertThat(orientation(where, "zTXt", joined(joined(name, new byte[1]), packed)))
                .isEqualTo(Orientation.RIGHT_TOP);
        assertThat(orientation(where, "iTXt", (xmp + "tiff:Orientation=\"3\"/>").getBytes(StandardCharsets.UTF_8)))
                .isEqualTo(Orientation.BOTTOM_RIGHT);
        assertThat(orientation(
                        where,
                        "iTXt",
                        (xmp + "><tiff:Orientation>8</tiff:Orientation>").getBytes(StandardCharsets.UTF_8)))
                .isEqualTo(Orientation.LEFT_BOTTOM);
        assertThat(orientation(where, "iTXt", (xmp + "tiff:Orientation='9'").getBytes(StandardCharsets.UTF_8)))
                .isEqualTo(Orientation.TOP_LEFT);
        assertThat(orientation(where, "tEXt", joined(name, "\nexif\n 3\n4z".getBytes(StandardCharsets.UTF_8))))
                .isEqualTo(Orientation.TOP_LEFT);
    }

    private Orientation orientation(String where, String type, byte[] body) throws IOException {
        byte[] rows = PngBytes.rows(WIDTH, HEIGHT, 8, 1, (x, y, c) -> 0, 0);
        PngBytes png = new PngBytes().header(WIDTH, HEIGHT, 8, GREY, 0);
        if (where.equals("before")) {
            png.chunk(type, body).data(rows, 1);
        } else {
            png.data(rows, 2).chunk(type, body);
        }
        return decode(png).info().orientation();
    }

    private static byte[] joined(byte[] first, byte[] second) {
        byte[] both = java.util.Arrays.copyOf(first, first.length + second.length);
        System.arraycopy(second, 0, both, first.length, second.length);
        return both;
    }

    /** PNG 3rd edition, 11.3.2.6: cICP comes before gAMA, cHRM and sRGB. Linear light, then Display P3's green. */
    @Test
    void codePointsComeFirst() throws IOException {
        byte[] grey = PngBytes.rows(WIDTH, HEIGHT, 8, 1, (x, y, c) -> Pattern.code8(x, y, 0), 0);
        decode(new PngBytes()
                        .header(WIDTH, HEIGHT, 8, GREY, 0)
                        .ints("gAMA", 200000)
                        .chunk("sRGB", new byte[1])
                        .chunk("cICP", new byte[] {1, 8, 0, 1})
                        .data(grey, 1))
                .check((x, y, c) -> Pattern.code8(x, y, 0) / 255.0, 1e-6);
        byte[] green = PngBytes.rows(WIDTH, HEIGHT, 8, 3, (x, y, c) -> c == 1 ? 128 : 64, 0);
        Decoded picture = decode(new PngBytes()
                .header(WIDTH, HEIGHT, 8, RGB, 0)
                .chunk("cICP", new byte[] {12, 13, 0, 1})
                .data(green, 1));
        // Display P3 to sRGB in linear light: the published matrix, red 1.2249 -0.2247 0, green -0.0420 1.0419 0.
        double low = Pattern.srgb(64, 8);
        double high = Pattern.srgb(128, 8);
        assertThat((double) picture.at(0, 0, 0)).isCloseTo(1.2249 * low - 0.2247 * high, offset(5e-4));
        assertThat((double) picture.at(0, 0, 1)).isCloseTo(-0.0420 * low + 1.0419 * high, offset(5e-4));
    }

    @Test
    void codePointsOfNoPrintAreToldAndPassedOver() throws IOException {
        byte[] grey = PngBytes.rows(WIDTH, HEIGHT, 8, 1, (x, y, c) -> Pattern.code8(x, y, 0), 0);
        Decoded picture = decode(new PngBytes()
                .header(WIDTH, HEIGHT, 8, GREY, 0)
                .ints("gAMA", 100000)
                .chunk("cICP", new byte[] {9, 16, 0, 1})
                .data(grey, 1));
        assertThat(picture.info().notes()).singleElement().asString().contains("cICP 9, 16, 0, 1");
        picture.check((x, y, c) -> Pattern.code8(x, y, 0) / 255.0, 1e-6);
    }

    /** The curve of sRGB under other primaries: BT.2020's, which is what cHRM says and no gAMA. */
    @Test
    void chromaticitiesAlone() throws IOException {
        byte[] rows = PngBytes.rows(WIDTH, HEIGHT, 8, 3, (x, y, c) -> c == 0 ? 128 : 100, 0);
        Decoded picture = decode(new PngBytes()
                .header(WIDTH, HEIGHT, 8, RGB, 0)
                .ints("cHRM", 31270, 32900, 70800, 29200, 17000, 79700, 13100, 4600)
                .data(rows, 1));
        // ITU-R BT.2087: BT.2020 to BT.709, green -0.1246 1.1329 -0.0083.
        double red = Pattern.srgb(128, 8);
        double rest = Pattern.srgb(100, 8);
        assertThat((double) picture.at(0, 0, 1)).isCloseTo(-0.1246 * red + (1.1329 - 0.0083) * rest, offset(5e-4));
    }

    @Test
    void oneGreyMayBeTransparent() throws IOException {
        byte[] rows = PngBytes.rows(WIDTH, HEIGHT, 4, 1, (x, y, c) -> (x + y) % 16, 0);
        Decoded picture = decode(new PngBytes()
                .header(WIDTH, HEIGHT, 4, GREY, 0)
                .chunk("tRNS", new byte[] {0, 3})
                .data(rows, 1));

        picture.check((x, y, c) -> (x + y) % 16 == 3 ? 1 : Pattern.srgb((x + y) % 16, 4), 1e-6);
    }

    @Test
    void oneColourOf16BitsMayBeTransparent() throws IOException {
        byte[] rows = PngBytes.rows(WIDTH, HEIGHT, 16, 3, (x, y, c) -> 1000 * x + c, 0);
        Decoded picture = decode(new PngBytes()
                .header(WIDTH, HEIGHT, 16, RGB, 0)
                .chunk("tRNS", new byte[] {2000 >> 8, (byte) 2000, 2001 >> 8, (byte) 2001, 2002 >> 8, (byte) 2002})
                .data(rows, 1));

        picture.check((x, y, c) -> x == 2 ? 1 : Pattern.srgb(1000 * x + c, 16), 1e-6);
    }

    @ParameterizedTest
    @CsvSource({"13,9", "1,1", "3,2", "5,1", "8,8", "1,6"})
    void interlacedPassesMeetAgain(int width, int height) throws IOException {
        // ISO/IEC 15948, 8.2: the pass of a pixel by its place in an 8 x 8 square.
        int[][] first = {{0, 0}, {4, 0}, {0, 4}, {2, 0}, {0, 2}, {1, 0}, {0, 1}};
        int[][] step = {{8, 8}, {8, 8}, {4, 8}, {4, 4}, {2, 4}, {2, 2}, {1, 2}};
        ByteArrayOutputStream filtered = new ByteArrayOutputStream();
        for (int p = 0; p < 7; p++) {
            int[] at = first[p];
            int[] by = step[p];
            int columns = Math.max(0, (width - at[0] + by[0] - 1) / by[0]);
            int rows = Math.max(0, (height - at[1] + by[1] - 1) / by[1]);
            if (columns > 0) {
                filtered.writeBytes(PngBytes.rows(
                        columns,
                        rows,
                        8,
                        3,
                        (x, y, c) -> Pattern.code8(at[0] + x * by[0], at[1] + y * by[1], c),
                        4,
                        2));
            }
        }
        Decoded picture = decode(new PngBytes().header(width, height, 8, RGB, 1).data(filtered.toByteArray(), 2));

        assertThat(picture.info().inOrder()).isFalse();
        picture.check(Pattern::light8, 1e-6);
    }

    @Test
    void resolutionAndOrientation() throws IOException {
        byte[] exif = {'M', 'M', 0, 42, 0, 0, 0, 8, 0, 1, 1, 0x12, 0, 3, 0, 0, 0, 1, 0, 6, 0, 0, 0, 0, 0, 0};
        byte[] perMetre = {0, 0, 0x2e, 0x23, 0, 0, 0x2e, 0x23, 1};
        Decoded picture =
                decode(grey().chunk("pHYs", perMetre).chunk("eXIf", exif).data(greyRows(), 1));

        // 0x2e23 = 11811 dots a metre.
        assertThat(picture.info().dpi().orElseThrow()).isEqualTo(299.9994, offset(1e-4));
        assertThat(picture.info().orientation()).isEqualTo(Orientation.RIGHT_TOP);
        assertThat(picture.info().size().width()).isEqualTo(HEIGHT);
    }

    @Test
    void aUnitlessDensityIsNoResolution() throws IOException {
        byte[] ratioOnly = {0, 0, 0, 1, 0, 0, 0, 1, 0};
        assertThat(decode(grey().chunk("pHYs", ratioOnly).data(greyRows(), 1))
                        .info()
                        .dpi())
                .isEmpty();
    }

    @Test
    void gammaIsHonoured() throws IOException {
        // 0.55556 = 1 / 1.8.
        Decoded picture = decode(grey().ints("gAMA", 55556).data(greyRows(), 1));
        picture.check((x, y, c) -> Math.pow(Pattern.code8(x, y, 0) / 255.0, 1 / 0.55556), 1e-6);
    }

    @Test
    void gammaYieldsToTheSrgbChunkAndWhatIsWrittenForSrgbIsSrgb() throws IOException {
        decode(grey().chunk("sRGB", new byte[1]).ints("gAMA", 55556).data(greyRows(), 1))
                .check(Pattern::light8, 1e-6);
        decode(grey().ints("gAMA", 45455).data(greyRows(), 1)).check(Pattern::light8, 1e-6);
    }

    @Test
    void primariesAreHonoured() throws IOException {
        // Linear light under the primaries of Display P3 and D65; matrix to sRGB from CSS Color 4, sample code
        // (P3 to XYZ to sRGB).
        double[][] p3ToSrgb = {
            {1.2249401, -0.2249401, 0},
            {-0.0420569, 1.0420569, 0},
            {-0.0196375, -0.0786360, 1.0982736}
        };
        byte[] rows = PngBytes.rows(WIDTH, HEIGHT, 8, 3, Pattern::code8, 0);
        Decoded picture = decode(new PngBytes()
                .header(WIDTH, HEIGHT, 8, RGB, 0)
                .ints("gAMA", 100000)
                .ints("cHRM", 31270, 32900, 68000, 32000, 26500, 69000, 15000, 6000)
                .data(rows, 1));

        picture.check(
                (x, y, c) -> {
                    double light = 0;
                    for (int i = 0; i < 3; i++) {
                        light += p3ToSrgb[c][i] * Pattern.code8(x, y, i) / 255;
                    }
                    return Math.max(0, Math.min(1, light));
                },
                1e-5);
    }

    @Test
    void aProfileThatIsBrokenIsPassedOverAndTold() throws IOException {
        byte[] broken = {'x', 0, 0, 1, 2, 3, 4};
        Decoded picture = decode(grey().chunk("iCCP", broken).data(greyRows(), 1));

        picture.check(Pattern::light8, 1e-6);
        assertThat(picture.info().notes()).singleElement().asString().contains("colour profile is passed over");
    }

    @Test
    void faults() throws IOException {
        byte[] good = grey().data(greyRows(), 1).end();
        assertFault(flip(good, 45), "checksum");
        assertFault(new PngBytes().header(0, 5, 8, 0, 0).end(), "states a size of 0 x 5 px");
        assertFault(new PngBytes().header(Integer.MAX_VALUE, 5, 8, 0, 0).end(), "beyond 100000 px a side");
        assertFault(new PngBytes().header(90000, 90000, 8, 0, 0).end(), "beyond");
        assertFault(
                new PngBytes()
                        .header(20000, 20000, 8, 0, 0)
                        .data(new byte[9], 1)
                        .end(),
                "cannot hold");
        assertFault(new PngBytes().header(5, 5, 3, 0, 0).data(new byte[9], 1).end(), "colour type 0 with 3 bits");
        assertFault(
                new PngBytes().header(5, 5, 8, PALETTE, 0).data(new byte[30], 1).end(), "no palette");
        assertFault(grey().end(), "no image data");
        assertFault(grey().data(new byte[20], 1).end(), "in the image data of row 1");
        assertFault(grey().chunk("IDAT", new byte[20]).end(), "cannot be unpacked from row 0");
        assertFault(grey().data(wrongFilter(), 1).end(), "row 2 names a filter");
        assertFault(grey().chunk("ABCD", new byte[2]).data(greyRows(), 1).end(), "critical chunk ABCD");
    }

    @Test
    void aPixelOutsideThePaletteIsAFault() throws IOException {
        byte[] rows = PngBytes.rows(WIDTH, HEIGHT, 4, 1, (x, y, c) -> x, 0);
        assertFault(
                new PngBytes()
                        .header(WIDTH, HEIGHT, 4, PALETTE, 0)
                        .chunk("PLTE", new byte[6])
                        .data(rows, 1)
                        .end(),
                "entry 2 of a palette of 2");
    }

    private static PngBytes grey() {
        return new PngBytes().header(WIDTH, HEIGHT, 8, GREY, 0);
    }

    private static byte[] greyRows() {
        return PngBytes.rows(WIDTH, HEIGHT, 8, 1, Pattern::code8, 0);
    }

    private static byte[] wrongFilter() {
        byte[] rows = greyRows();
        rows[2 * (WIDTH + 1)] = 5;
        return rows;
    }

    private static byte[] flip(byte[] bytes, int at) {
        byte[] copy = bytes.clone();
        copy[at] ^= 1;
        return copy;
    }

    private Decoded decode(PngBytes png) throws IOException {
        return Decoded.of(Files.write(folder.resolve("picture.png"), png.end()));
    }

    private void assertFault(byte[] png, String words) throws IOException {
        Path file = Files.write(folder.resolve("picture.png"), png);
        assertThatThrownBy(() -> Decoded.of(file))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining(words)
                .hasMessageContaining("picture.png");
    }
}
