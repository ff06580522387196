package org.adumbrate.raster.decode.icc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.adumbrate.raster.LightDecoder;
import org.adumbrate.raster.SampleType;
import org.adumbrate.raster.Samples;
import org.adumbrate.raster.decode.Pattern;
import org.adumbrate.raster.decode.light.ColourModel;
import org.adumbrate.raster.decode.light.Curve;
import org.junit.jupiter.api.Test;

class EmbeddedProfileTest {
    private final List<String> notes = new ArrayList<>();

    @Test
    void anEmbeddedSrgbProfileIsTheSameAsNone() {
        float[] tagged = ramp(ProfileBytes.srgb().build());
        float[] untagged = ramp(null);
        assertThat(tagged).containsExactly(untagged, offset(1e-4f));
        assertThat(notes).isEmpty();
    }

    /** Light of Adobe RGB in linear sRGB: both whites are D65, so the published D65 matrices give it directly. */
    @Test
    void matrixAndGamma() {
        double[][] toSrgb = {{1.39836, -0.39836, 0}, {0, 1, 0}, {0, -0.04293, 1.04293}};
        int[] code = {180, 150, 90};
        double[] light = new double[3];
        for (int c = 0; c < 3; c++) {
            light[c] = Math.pow(code[c] / 255.0, 563 / 256.0);
        }
        float[] decoded = decode(ProfileBytes.adobeRgb().build(), code);
        for (int row = 0; row < 3; row++) {
            double expected = 0;
            for (int c = 0; c < 3; c++) {
                expected += toSrgb[row][c] * light[c];
            }
            assertThat((double) decoded[row]).isCloseTo(expected, offset(5e-4));
        }
    }

    @Test
    void thePlatformsColourManagementAgrees() {
        byte[] profile = ProfileBytes.adobeRgb().build();
        ICC_ColorSpace space = new ICC_ColorSpace(ICC_Profile.getInstance(profile));
        Random random = new Random(5);
        for (int i = 0; i < 50; i++) {
            int[] code = {random.nextInt(256), random.nextInt(256), random.nextInt(256)};
            float[] expected = space.toRGB(new float[] {code[0] / 255f, code[1] / 255f, code[2] / 255f});
            float[] light = decode(profile, code);
            for (int c = 0; c < 3; c++) {
                assertThat((double) light[c]).isCloseTo(Pattern.srgb(expected[c]), offset(2e-3));
            }
        }
    }

    @Test
    void parametricCurvesOfEveryKind() throws MalformedProfileException {
        // ICC.1:2022, table 68; the parameters are those of sRGB where a kind can express it.
        double a = 1 / 1.055;
        double b = 0.055 / 1.055;
        Curve power = parametric(0, 2.4);
        Curve cut = parametric(1, 2, 2, -0.5);
        Curve raised = parametric(2, 2, 0.5, -0.1, 0.25);
        Curve srgb = parametric(3, 2.4, a, b, 1 / 12.92, 0.04045);
        Curve full = parametric(4, 2, 0.5, 0.25, 0.3, 0.5, 0.125, 0.0625);

        assertThat(power.light(0.5)).isCloseTo(Math.pow(0.5, 2.4), offset(1e-5));
        assertThat(cut.light(0.2)).isZero();
        assertThat(cut.light(0.5)).isCloseTo(0.25, offset(1e-5));
        assertThat(raised.light(0.1)).isCloseTo(0.25, offset(1e-5));
        assertThat(raised.light(1)).isCloseTo(0.41, offset(1e-4));
        assertThat(srgb.distanceTo(Curve.SRGB)).isLessThan(5e-5);
        assertThat(full.light(0.25)).isCloseTo(0.1375, offset(1e-5));
        assertThat(full.light(1)).isCloseTo(0.6875, offset(1e-5));
    }

    private static Curve parametric(int kind, double... parameters) throws MalformedProfileException {
        return new IccProfile(new ProfileBytes("GRAY")
                        .parametric("kTRC", kind, parameters)
                        .build())
                .curve("kTRC");
    }

    @Test
    void aGreyProfile() {
        EmbeddedProfile profile = EmbeddedProfile.of(
                new ProfileBytes("GRAY").curve("kTRC", 0x0180).build());
        float[] table = new float[1];
        profile.colorimetry(ColourModel.GREY, notes)
                .decoder(SampleType.BYTE)
                .decode(new Samples.Bytes(new byte[] {64}), 0, 1, table, 0);
        assertThat((double) table[0]).isCloseTo(Math.pow(64 / 255.0, 1.5), offset(1e-6));
    }

    /** At the points of the profile's own tables, where no interpolation of the platform's comes in. */
    @Test
    void tablesOfInks() {
        ProfileBytes.Lightness press =
                ink -> 100 * (1 - 0.2 * ink[0] - 0.3 * ink[1] - 0.1 * ink[2]) * (1 - 0.9 * ink[3]);
        LightDecoder decoder = EmbeddedProfile.of(
                        new ProfileBytes("CMYK").lightness("A2B0", 4, press).build())
                .colorimetry(ColourModel.CMYK, notes)
                .decoder(SampleType.SHORT);
        assertThat(notes).isEmpty();
        for (int point = 0; point < 81; point++) {
            double[] ink = {point % 3 / 2.0, point / 3 % 3 / 2.0, point / 9 % 3 / 2.0, point / 27 % 3 / 2.0};
            assertThat(light(decoder, ink)).containsExactly(grey(press.of(ink)), offset(2e-3f));
        }
    }

    @Test
    void tablesOfThreeChannels() {
        ProfileBytes.Lightness screen = rgb -> 30 * rgb[0] + 60 * rgb[1] + 10 * rgb[2];
        LightDecoder decoder = EmbeddedProfile.of(
                        new ProfileBytes("RGB ").lightness("A2B0", 3, screen).build())
                .colorimetry(ColourModel.RGB, notes)
                .decoder(SampleType.SHORT);
        assertThat(notes).isEmpty();
        for (int i = 0; i < 40; i++) {
            double[] rgb = {i * 37 % 40 / 39.0, i * 23 % 40 / 39.0, i / 39.0};
            // The tables are linear, so that what lies between their points is known too.
            assertThat(light(decoder, rgb)).containsExactly(grey(screen.of(rgb)), offset(2e-3f));
        }
    }

    private static float[] light(LightDecoder decoder, double... device) {
        short[] codes = new short[device.length];
        for (int c = 0; c < codes.length; c++) {
            codes[c] = (short) Math.round(device[c] * 65535);
        }
        float[] light = new float[3];
        decoder.decode(new Samples.Shorts(codes), 0, 1, light, 0);
        return light;
    }

    /** CIE L* to Y (CIE 15; ISO/CIE 11664-4). */
    private static float[] grey(double lightness) {
        float y = (float) (lightness > 8 ? Math.pow((lightness + 16) / 116, 3) : lightness * 27 / 24389);
        return new float[] {y, y, y};
    }

    @Test
    void whatCannotBeUsedIsPassedOverAndTold() {
        float[] untagged = ramp(null);
        byte[] good = ProfileBytes.adobeRgb().build();
        byte[] longTable = good.clone();
        longTable[130] = 127;
        byte[] outside = good.clone();
        outside[128 + 4 + 4] = 127;
        byte[][] bad = {
            {},
            new byte[200],
            Arrays.copyOf(good, 300),
            longTable,
            outside,
            new ProfileBytes("GRAY").curve("kTRC", 0x0180).build(),
            new ProfileBytes("RGB ").curve("rTRC").build()
        };
        for (byte[] profile : bad) {
            notes.clear();
            assertThat(ramp(profile)).containsExactly(untagged);
            assertThat(notes).singleElement().asString().startsWith("its colour profile is passed over: ");
        }
    }

    private float[] ramp(byte[] profile) {
        byte[] codes = new byte[3 * 256];
        for (int i = 0; i < codes.length; i++) {
            codes[i] = (byte) (i / 3 + i % 3);
        }
        float[] light = new float[codes.length];
        decoder(profile).decode(new Samples.Bytes(codes), 0, 256, light, 0);
        return light;
    }

    private float[] decode(byte[] profile, int... code) {
        float[] light = new float[3];
        byte[] codes = {(byte) code[0], (byte) code[1], (byte) code[2]};
        decoder(profile).decode(new Samples.Bytes(codes), 0, 1, light, 0);
        return light;
    }

    private LightDecoder decoder(byte[] profile) {
        EmbeddedProfile embedded = profile == null ? EmbeddedProfile.NONE : EmbeddedProfile.of(profile);
        return embedded.colorimetry(ColourModel.RGB, notes).decoder(SampleType.BYTE);
    }
}
