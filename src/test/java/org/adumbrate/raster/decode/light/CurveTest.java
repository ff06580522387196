package org.adumbrate.raster.decode.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.nio.charset.StandardCharsets;
import org.adumbrate.raster.LightDecoder;
import org.adumbrate.raster.SampleType;
import org.adumbrate.raster.Samples;
import org.adumbrate.raster.decode.Pattern;
import org.adumbrate.raster.decode.Sample;
import org.junit.jupiter.api.Test;

class CurveTest {
    /**
     * All 256 codes against a table computed from IEC 61966-2-1 in double precision; the constants stand in W3C, WCAG 2.2,
     * definition of relative luminance.
     */
    @Test
    void srgbCodes() {
        String[] lines = new String(Sample.bytes("srgb-codes.csv"), StandardCharsets.US_ASCII)
                .lines()
                .toArray(String[]::new);
        assertThat(lines).hasSize(257);
        float[] table = Curve.SRGB.table(SampleType.BYTE);
        for (int code = 0; code < 256; code++) {
            double light = Double.parseDouble(lines[code + 1].split(",", -1)[1]);
            assertThat(Curve.SRGB.light(code / 255.0)).isCloseTo(light, offset(1e-10));
            assertThat((double) table[code]).isCloseTo(light, offset(1e-7));
        }
    }

    @Test
    void sixteenBitsAgreeWithEight() {
        float[] wide = Curve.SRGB.table(SampleType.SHORT);
        float[] narrow = Curve.SRGB.table(SampleType.BYTE);
        for (int code = 0; code < 256; code++) {
            assertThat(wide[code * 257]).isEqualTo(narrow[code]);
        }
    }

    @Test
    void inksOfNoPressAreEncodedSrgb() {
        LightDecoder decoder = Colorimetry.untagged(ColourModel.CMYK).decoder(SampleType.BYTE);
        float[] light = new float[3];
        decoder.decode(new Samples.Bytes(new byte[] {51, 0, (byte) 255, 102}), 0, 1, light, 0);

        assertThat((double) light[0]).isCloseTo(Pattern.srgb(0.8 * 0.6), offset(1e-6));
        assertThat((double) light[1]).isCloseTo(Pattern.srgb(0.6), offset(1e-6));
        assertThat(light[2]).isZero();
    }

    @Test
    void associatedAlphaIsUndoneBeforeTheCurve() {
        LightDecoder decoder = new PixelLayout(ColourModel.GREY, Alpha.ASSOCIATED, SampleType.BYTE)
                .decoder(Colorimetry.untagged(ColourModel.GREY));
        float[] light = new float[3];
        decoder.decode(new Samples.Bytes(new byte[] {60, 120, 0, 0, (byte) 255, (byte) 255}), 0, 3, light, 0);

        double alpha = 120 / 255.0;
        assertThat((double) light[0]).isCloseTo(Pattern.srgb(0.5) * alpha + 1 - alpha, offset(2e-5));
        assertThat(light[1]).isEqualTo(1);
        assertThat(light[2]).isEqualTo(1);
    }

    @Test
    void floatsPassAsTheyAreExceptThoseThatWouldSpread() {
        LightDecoder decoder = new PixelLayout(ColourModel.GREY, Alpha.NONE, SampleType.FLOAT).decoder(type -> null);
        float[] light = new float[4];
        decoder.decode(
                new Samples.Floats(new float[] {-0.5f, 7.25f, Float.NaN, Float.POSITIVE_INFINITY}), 0, 4, light, 0);
        assertThat(light).containsExactly(-0.5f, 7.25f, 0, 65504);
    }

    @Test
    void floatsWithAlpha() {
        float[] light = new float[3];
        Samples pixel = new Samples.Floats(new float[] {0.2f, 0.4f, 2f, 0.25f});
        new PixelLayout(ColourModel.RGB, Alpha.STRAIGHT, SampleType.FLOAT)
                .decoder(type -> null)
                .decode(pixel, 0, 1, light, 0);
        assertThat(light).containsExactly(new float[] {0.8f, 0.85f, 1.25f}, offset(1e-6f));
        new PixelLayout(ColourModel.RGB, Alpha.ASSOCIATED, SampleType.FLOAT)
                .decoder(type -> null)
                .decode(pixel, 0, 1, light, 0);
        assertThat(light).containsExactly(new float[] {0.95f, 1.15f, 2.75f}, offset(1e-6f));
    }
}
