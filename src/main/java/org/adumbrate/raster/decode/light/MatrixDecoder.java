package org.adumbrate.raster.decode.light;

import org.adumbrate.raster.LightDecoder;
import org.adumbrate.raster.Samples;

/** A tabulated curve for each of three channels, then a matrix to linear sRGB; colours outside its gamut are cut. */
final class MatrixDecoder implements LightDecoder {
    private final float[][] tables;
    private final float[] matrix;

    MatrixDecoder(float[][] tables, Matrix3 m) {
        this.tables = tables;
        this.matrix = new float[9];
        double[] entries = m.entries();
        for (int i = 0; i < entries.length; i++) {
            matrix[i] = (float) entries[i];
        }
    }

    @Override
    public int storedChannels() {
        return 3;
    }

    @Override
    public int lightChannels() {
        return 3;
    }

    @Override
    public void decode(Samples samples, int from, int pixels, float[] light, int at) {
        float[] red = tables[0];
        float[] green = tables[1];
        float[] blue = tables[2];
        int end = from + 3 * pixels;
        if (samples instanceof Samples.Bytes bytes) {
            byte[] codes = bytes.values();
            for (int i = from, to = at; i < end; i += 3, to += 3) {
                mix(red[codes[i] & 0xff], green[codes[i + 1] & 0xff], blue[codes[i + 2] & 0xff], light, to);
            }
        } else {
            short[] codes = ((Samples.Shorts) samples).values();
            for (int i = from, to = at; i < end; i += 3, to += 3) {
                mix(red[codes[i] & 0xffff], green[codes[i + 1] & 0xffff], blue[codes[i + 2] & 0xffff], light, to);
            }
        }
    }

    private void mix(float r, float g, float b, float[] light, int to) {
        float[] m = matrix;
        light[to] = cut(m[0] * r + m[1] * g + m[2] * b);
        light[to + 1] = cut(m[3] * r + m[4] * g + m[5] * b);
        light[to + 2] = cut(m[6] * r + m[7] * g + m[8] * b);
    }

    private static float cut(float value) {
        return Math.max(0, Math.min(1, value));
    }
}
