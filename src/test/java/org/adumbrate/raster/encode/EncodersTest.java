package org.adumbrate.raster.encode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.twelvemonkeys.imageio.plugins.tiff.TIFFImageReaderSpi;
import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.InflaterInputStream;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.adumbrate.fault.OutputFault;
import org.adumbrate.geometry.PixelBox;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.LightSink;
import org.adumbrate.raster.OrderedStrips;
import org.adumbrate.raster.SrgbCurve;
import org.apache.commons.imaging.ImageInfo;
import org.apache.commons.imaging.Imaging;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the encoders write is opened again by readers that are not ours: the platform's, TwelveMonkeys and Commons Imaging. */
class EncodersTest {
    private static final PixelSize SIZE = new PixelSize(61, 150);

    @TempDir
    private Path folder;

    private static double encodedAt(int x, int y, int channel) {
        return ((x * 3 + y + 50 * channel) % 256) / 255.0;
    }

    private static PictureFormat format(int channels, int bits) {
        return new PictureFormat(SIZE, channels, bits, 300, 3, false);
    }

    static void fill(StripEncoder encoder, PictureFormat format, int stripRows, int threads) throws IOException {
        int height = format.size().height();
        OrderedStrips.<LightSink.Filler, LightSink.Strip>run(
                (height + stripRows - 1) / stripRows,
                threads,
                encoder::filler,
                (packer, strip) -> {
                    int top = strip * stripRows;
                    int rows = Math.min(stripRows, height - top);
                    packer.begin(top, rows);
                    for (int y = top; y < top + rows; y++) {
                        packer.row(light(format, y));
                    }
                    return packer.end();
                },
                (strip, packed) -> encoder.take(packed));
        encoder.finish();
    }

    private static float[] light(PictureFormat format, int y) {
        int channels = format.channels();
        float[] light = new float[format.size().width() * channels];
        for (int k = 0; k < light.length; k++) {
            light[k] = (float) SrgbCurve.decode(encodedAt(k / channels, y, k % channels));
        }
        return light;
    }

    private StripEncoder encoder(String kind, Path file, PictureFormat format, int stripRows) throws IOException {
        return kind.equals("tif") ? new TiffEncoder(file, format, stripRows) : new PngEncoder(file, format);
    }

    @ParameterizedTest
    @CsvSource({
        "tif, 1, 8",
        "tif, 3, 8",
        "tif, 1, 16",
        "tif, 3, 16",
        "png, 1, 8",
        "png, 3, 8",
        "png, 1, 16",
        "png, 3, 16"
    })
    void everySampleComesBack(String kind, int channels, int bits) throws IOException {
        Path file = folder.resolve("picture." + kind);
        PictureFormat format = format(channels, bits);
        try (StripEncoder encoder = encoder(kind, file, format, 16)) {
            fill(encoder, format, 16, 2);
        }
        Raster raster = read(file, kind);
        int most = bits == 8 ? 255 : 65535;
        for (int y = 0; y < SIZE.height(); y++) {
            for (int x = 0; x < SIZE.width(); x++) {
                for (int c = 0; c < channels; c++) {
                    assertThat(raster.getSample(x, y, c))
                            .as("pixel %d, %d channel %d", x, y, c)
                            .isEqualTo((int) Math.round(encodedAt(x, y, c) * most));
                }
            }
        }
    }

    private static Raster read(Path file, String kind) throws IOException {
        ImageReader reader = kind.equals("tif")
                ? new TIFFImageReaderSpi().createReaderInstance()
                : ImageIO.getImageReadersByFormatName("png").next();
        try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
            reader.setInput(in);
            BufferedImage image = reader.read(0);
            return image.getRaster();
        } finally {
            reader.dispose();
        }
    }

    @ParameterizedTest
    @CsvSource({"tif, 1", "tif, 3", "png, 1", "png, 3"})
    void resolutionAndProfileAreWhatWasAsked(String kind, int channels) throws IOException {
        Path file = folder.resolve("picture." + kind);
        PictureFormat format = format(channels, 8);
        try (StripEncoder encoder = encoder(kind, file, format, 64)) {
            fill(encoder, format, 64, 1);
        }
        ImageInfo info = Imaging.getImageInfo(file.toFile());
        assertThat(info.getPhysicalWidthDpi()).isEqualTo(300);
        assertThat(info.getPhysicalHeightDpi()).isEqualTo(300);
        java.awt.color.ICC_Profile profile =
                java.awt.color.ICC_Profile.getInstance(Imaging.getIccProfileBytes(file.toFile()));
        assertThat(profile.getNumComponents()).isEqualTo(channels);
    }

    /** A share of light s is the code s · 65535, and readers that follow profiles are told so. */
    @ParameterizedTest
    @CsvSource({"tif", "png"})
    void evenStepsOfLightComeBackAsTheyAre(String kind) throws IOException {
        Path file = folder.resolve("light." + kind);
        PictureFormat format = new PictureFormat(PixelBox.of(SIZE), 1, 16, 300, 3, false, Transfer.LINEAR);
        try (StripEncoder encoder = encoder(kind, file, format, 16)) {
            fill(encoder, format, 16, 2);
        }
        Raster raster = read(file, kind);
        for (int y = 0; y < SIZE.height(); y++) {
            float[] light = light(format, y);
            for (int x = 0; x < SIZE.width(); x++) {
                assertThat(raster.getSample(x, y, 0)).isEqualTo(Math.round(light[x] * 65535));
            }
        }
        var profile = java.awt.color.ICC_Profile.getInstance(Imaging.getIccProfileBytes(file.toFile()));
        float[] seen = new java.awt.color.ICC_ColorSpace(profile).toCIEXYZ(new float[] {0.25f});
        assertThat(seen[1]).isCloseTo(0.25f, org.assertj.core.api.Assertions.within(0.001f));
        assertThatThrownBy(() -> new PictureFormat(PixelBox.of(SIZE), 1, 8, 300, 3, false, Transfer.LINEAR))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** The platform's colour engine must see sRGB in our profile: a grey of our curve is the same grey there. */
    @Test
    void ourProfileIsSrgb() {
        var space = new java.awt.color.ICC_ColorSpace(java.awt.color.ICC_Profile.getInstance(OutputProfile.of(3)));
        float[] rgb = space.toRGB(new float[] {0.5f, 0.25f, 0.75f});
        assertThat(rgb[0]).isCloseTo(0.5f, org.assertj.core.api.Assertions.within(0.003f));
        assertThat(rgb[1]).isCloseTo(0.25f, org.assertj.core.api.Assertions.within(0.003f));
        assertThat(rgb[2]).isCloseTo(0.75f, org.assertj.core.api.Assertions.within(0.003f));
    }

    @Test
    void theStripNeverShowsInPng() throws IOException {
        PictureFormat format = format(3, 8);
        byte[] one = inflated(format, 150, 1);
        for (int rows : new int[] {1, 7, 64}) {
            for (int threads = 1; threads <= 3; threads++) {
                assertThat(inflated(format, rows, threads)).isEqualTo(one);
            }
        }
    }

    private static byte[] inflated(PictureFormat format, int rows, int threads) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (StripEncoder encoder = new FlateRowsEncoder(format, out)) {
            fill(encoder, format, rows, threads);
        }
        try (InputStream in = new InflaterInputStream(new ByteArrayInputStream(out.toByteArray()))) {
            return in.readAllBytes();
        }
    }

    @Test
    void anUnfinishedPictureLeavesWhatStoodThere() throws IOException {
        Path file = Files.writeString(folder.resolve("picture.tif"), "before");
        PictureFormat format = format(1, 8);
        try (StripEncoder encoder = new TiffEncoder(file, format, 16)) {
            LightSink.Filler packer = encoder.filler();
            packer.begin(0, 1);
            packer.row(light(format, 0));
            encoder.take(packer.end());
        }
        assertThat(file).hasContent("before");
        assertThat(folder).isDirectoryNotContaining("glob:**.part");
    }

    @Test
    void aFolderThatCannotBeMadeIsToldInOneLine() throws IOException {
        Path blocked = Files.writeString(folder.resolve("blocked"), "a file");
        assertThatThrownBy(() -> new TiffEncoder(blocked.resolve("picture.tif"), format(1, 8), 16))
                .isInstanceOf(OutputFault.class)
                .hasMessageContaining("picture.tif: cannot be written")
                .hasMessageNotContaining("\n");
    }
}
