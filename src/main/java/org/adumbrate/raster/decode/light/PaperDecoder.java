package org.adumbrate.raster.decode.light;

import org.adumbrate.raster.LightDecoder;
import org.adumbrate.raster.SampleType;
import org.adumbrate.raster.Samples;

/**
 * Lays pixels with alpha over white paper, in linear light: {@code c·a + (1 - a)} (Porter and Duff's <em>over</em>, on
 * a backdrop of 1).
 */
final class PaperDecoder implements LightDecoder {
    private static final int CHUNK = 1024;

    private final LightDecoder opaque;
    private final boolean associated;
    private final int colours;

    /**
     * @param opaque decodes the colour alone; of 16-bit samples if integer samples are to be divided by alpha
     * @param alpha how the last channel relates to the others
     */
    PaperDecoder(LightDecoder opaque, Alpha alpha) {
        this.opaque = opaque;
        this.associated = alpha == Alpha.ASSOCIATED;
        this.colours = opaque.storedChannels();
    }

    @Override
    public int storedChannels() {
        return colours + 1;
    }

    @Override
    public int lightChannels() {
        return opaque.lightChannels();
    }

    @Override
    public void decode(Samples samples, int from, int pixels, float[] light, int at) {
        float[] alpha = new float[Math.min(CHUNK, pixels)];
        Samples colour = Samples.allocate(colourType(samples), alpha.length * colours);
        for (int done = 0; done < pixels; done += CHUNK) {
            int count = Math.min(CHUNK, pixels - done);
            int to = at + done * lightChannels();
            split(samples, from + done * storedChannels(), count, colour, alpha);
            opaque.decode(colour, 0, count, light, to);
            boolean multiplied = associated && samples instanceof Samples.Floats;
            over(light, to, alpha, count, multiplied);
        }
    }

    private SampleType colourType(Samples samples) {
        if (samples instanceof Samples.Floats) {
            return SampleType.FLOAT;
        }
        return associated || samples instanceof Samples.Shorts ? SampleType.SHORT : SampleType.BYTE;
    }

    private void split(Samples samples, int from, int count, Samples colour, float[] alpha) {
        if (samples instanceof Samples.Floats floats) {
            splitFloats(floats.values(), from, count, ((Samples.Floats) colour).values(), alpha);
        } else if (associated) {
            splitAssociated(samples, from, count, ((Samples.Shorts) colour).values(), alpha);
        } else {
            for (int i = 0, source = from; i < count; i++, source += colours + 1) {
                colour.copyFrom(i * colours, samples, source, colours);
                alpha[i] = share(samples, source + colours);
            }
        }
    }

    private void splitFloats(float[] samples, int from, int count, float[] colour, float[] alpha) {
        for (int i = 0, source = from; i < count; i++, source += colours + 1) {
            System.arraycopy(samples, source, colour, i * colours, colours);
            float value = samples[source + colours];
            alpha[i] = Float.isNaN(value) ? 1 : Math.max(0, Math.min(1, value));
        }
    }

    private void splitAssociated(Samples samples, int from, int count, short[] colour, float[] alpha) {
        for (int i = 0, source = from; i < count; i++, source += colours + 1) {
            float a = share(samples, source + colours);
            alpha[i] = a;
            for (int c = 0; c < colours; c++) {
                float undone = a == 0 ? 0 : Math.min(1, share(samples, source + c) / a);
                colour[i * colours + c] = (short) Math.round(undone * 65535);
            }
        }
    }

    private static float share(Samples samples, int index) {
        return samples instanceof Samples.Bytes bytes
                ? (bytes.values()[index] & 0xff) / 255f
                : (((Samples.Shorts) samples).values()[index] & 0xffff) / 65535f;
    }

    private void over(float[] light, int from, float[] alpha, int count, boolean multiplied) {
        int channels = lightChannels();
        int at = from;
        for (int i = 0; i < count; i++) {
            float a = alpha[i];
            float weight = multiplied ? 1 : a;
            for (int c = 0; c < channels; c++, at++) {
                light[at] = light[at] * weight + (1 - a);
            }
        }
    }
}
