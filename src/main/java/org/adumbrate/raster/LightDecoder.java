package org.adumbrate.raster;

/**
 * Turns a file's samples into linear light; immutable, and so safe to share between threads. Colour profile, transfer
 * curve and alpha (laid over white paper) are all settled here.
 */
public interface LightDecoder {
    /** Samples of a stored pixel. */
    int storedChannels();

    /** Channels of light made from it: 1 (grey) or 3 (linear sRGB primaries: red, green, blue). */
    int lightChannels();

    /**
     * Decodes pixels.
     *
     * @param samples the stored samples
     * @param from index of the first sample of the first pixel
     * @param pixels how many pixels
     * @param light receives {@code pixels · lightChannels()} values, interleaved, from index {@code at}; 0 is black, 1 is
     *     white; values of a floating-point file may lie outside
     * @param at where to begin in {@code light}
     */
    void decode(Samples samples, int from, int pixels, float[] light, int at);
}
