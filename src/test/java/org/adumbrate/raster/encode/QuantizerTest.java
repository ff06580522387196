package org.adumbrate.raster.encode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.adumbrate.raster.SrgbCurve;
import org.junit.jupiter.api.Test;

class QuantizerTest {
    private static byte[] quantized(float light, boolean dithered, int side) {
        float[] row = new float[side];
        java.util.Arrays.fill(row, light);
        byte[] out = new byte[side * side];
        for (int y = 0; y < side; y++) {
            byte[] line = new byte[side];
            new Quantizer(dithered).toBytes(row, side, 1, 0, y, line);
            System.arraycopy(line, 0, out, y * side, side);
        }
        return out;
    }

    /** IEC 61966-2-1: every 8-bit code must survive decoding and encoding, dithered or not. */
    @Test
    void everyCodeComesBack() {
        for (int code = 0; code < 256; code++) {
            for (boolean dithered : new boolean[] {false, true}) {
                byte[] out = quantized((float) SrgbCurve.decode(code / 255.0), dithered, 8);
                for (byte each : out) {
                    assertThat(each & 0xff).isEqualTo(code);
                }
            }
        }
    }

    @Test
    void theMeanOfADitheredToneIsTheTone() {
        for (double level = 20; level < 21; level += 0.07) {
            byte[] out = quantized((float) SrgbCurve.decode(level / 255), true, 8);
            double sum = 0;
            for (byte each : out) {
                sum += each & 0xff;
            }
            assertThat(sum / 64).isCloseTo(level, within(1 / 64.0));
        }
    }

    /** Half of black on white is light 0.5, encoded 187.516 of 255 (worked from IEC 61966-2-1). */
    @Test
    void halfLightIs188() {
        assertThat(quantized(0.5f, false, 1)[0] & 0xff).isEqualTo(188);
    }

    @Test
    void lightOutsideIsCutOff() {
        assertThat(quantized(1.7f, false, 1)[0] & 0xff).isEqualTo(255);
        assertThat(quantized(-0.2f, false, 1)[0] & 0xff).isZero();
    }

    @Test
    void sixteenBitsAreRoundedToNearest() {
        short[] out = new short[1];
        for (int code = 0; code < 65536; code += 97) {
            Quantizer.toShorts(new float[] {(float) SrgbCurve.decode(code / 65535.0)}, 1, out);
            assertThat(out[0] & 0xffff).isCloseTo(code, within(1));
        }
    }
}
