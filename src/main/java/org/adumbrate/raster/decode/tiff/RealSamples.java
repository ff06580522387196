package org.adumbrate.raster.decode.tiff;

import java.awt.image.Raster;
import org.adumbrate.raster.SampleSink;
import org.adumbrate.raster.Samples;

/** Floating-point numbers, as they are. */
final class RealSamples implements PieceSamples {
    private final int channels;
    private final boolean reversed;
    private final boolean inverted;
    private float[] reals = {};
    private float[] room = {};

    /**
     * @param channels how many of the stored channels are used, from the first on
     * @param reversed whether the bytes of each number stand in reverse
     * @param inverted whether 1 is black and 0 white
     */
    RealSamples(int channels, boolean reversed, boolean inverted) {
        this.channels = channels;
        this.reversed = reversed;
        this.inverted = inverted;
    }

    @Override
    public void put(Raster piece, int x, int y, SampleSink sink) {
        int width = piece.getWidth();
        if (reals.length < width) {
            reals = new float[width];
            room = new float[width * channels];
        }
        for (int row = 0; row < piece.getHeight(); row++) {
            for (int c = 0; c < channels; c++) {
                piece.getSamples(piece.getMinX(), piece.getMinY() + row, width, 1, c, reals);
                for (int i = 0; i < width; i++) {
                    room[i * channels + c] = value(reals[i]);
                }
            }
            sink.put(x, y + row, width, new Samples.Floats(room), 0);
        }
    }

    private float value(float stored) {
        float value = reversed ? Float.intBitsToFloat(Integer.reverseBytes(Float.floatToRawIntBits(stored))) : stored;
        return inverted ? 1 - value : value;
    }
}
