package org.adumbrate.raster;

import java.io.IOException;
import java.util.Arrays;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.Space;

/**
 * The numbers of a grey raster as its file stores them, whole in memory: no transfer curve, no profile. For rasters that hold
 * measures and not light.
 */
public final class StoredNumbers {
    private final PixelSize size;
    private final float[] values;
    private final double step;
    private final Affine<RasterPoint, RasterPoint> toFile;

    /**
     * Wraps an array, which is not copied.
     *
     * @param size its size
     * @param values one a pixel, row by row from the top
     * @param step between two neighbouring numbers that the file can store; 0 for floating point
     * @param toFile from these pixels to those of the file as seen, of which they may be a selection
     * @throws IllegalArgumentException if the array has another length than the size asks for
     */
    public StoredNumbers(PixelSize size, float[] values, double step, Affine<RasterPoint, RasterPoint> toFile) {
        if (values.length != size.count()) {
            throw new IllegalArgumentException(values.length + " values for " + size);
        }
        this.size = size;
        this.values = values;
        this.step = step;
        this.toFile = toFile;
    }

    /**
     * Reads the numbers of a grey raster: whole numbers as shares of the largest of their type, 0 to 1; floating point as it is.
     * Of a raster with more pixels than asked for every so-manieth each way is taken, none is mixed.
     *
     * @param reader the file, which is left open
     * @param mostPixels the most that are kept
     * @throws InputFault if it has colour or transparency, or is damaged
     * @throws IOException if it cannot be read
     */
    public static StoredNumbers read(RasterReader reader, long mostPixels) throws IOException {
        RasterInfo info = reader.info();
        if (info.light().storedChannels() != 1) {
            String found = info.light().lightChannels() == 1 ? "transparency" : "colour";
            throw new InputFault(
                    info.file(), "has " + found + " where one number a pixel is expected", "export it as plain grey");
        }
        PixelSize whole = info.size();
        int factor = GreyReduction.factorFor(whole, mostPixels);
        PixelSize size = new PixelSize(Math.max(1, whole.width() / factor), Math.max(1, whole.height() / factor));
        float[] values = new float[Math.toIntExact(size.count())];
        Arrays.fill(values, Float.NaN);
        Selection selection = new Selection(info, size, factor, values);
        reader.decode(selection);
        return new StoredNumbers(size, values, step(info.type()), selection.toFile());
    }

    private static double step(SampleType type) {
        return switch (type) {
            case BYTE -> 1 / 255.0;
            case SHORT -> 1 / 65535.0;
            case FLOAT -> 0;
        };
    }

    /** Keeps the pixel in the middle of each block, turned as the file is to be seen. */
    private static final class Selection implements SampleSink {
        private final RasterInfo info;
        private final PixelSize size;
        private final int factor;
        private final float[] values;

        Selection(RasterInfo info, PixelSize size, int factor, float[] values) {
            this.info = info;
            this.size = size;
            this.factor = factor;
            this.values = values;
        }

        @Override
        public void put(int x, int y, int pixels, Samples samples, int offset) {
            for (int k = 0; k < pixels; k++) {
                int seenX = info.orientation().seenX(x + k, y, info.size()) - factor / 2;
                int seenY = info.orientation().seenY(x + k, y, info.size()) - factor / 2;
                int column = seenX / factor;
                int row = seenY / factor;
                boolean kept = seenX == column * factor && seenY == row * factor;
                if (kept && column < size.width() && row < size.height()) {
                    values[row * size.width() + column] = number(samples, offset + k);
                }
            }
        }

        private static float number(Samples samples, int at) {
            if (samples instanceof Samples.Bytes bytes) {
                return (bytes.values()[at] & 0xff) / 255f;
            }
            if (samples instanceof Samples.Shorts shorts) {
                return (shorts.values()[at] & 0xffff) / 65535f;
            }
            return ((Samples.Floats) samples).values()[at];
        }

        /** The middle of a kept pixel is the middle of the one that it was in the file. */
        Affine<RasterPoint, RasterPoint> toFile() {
            double shift = factor % 2 == 0 ? 0.5 : 0;
            return Affine.scalingThenShift(Space.RASTER, Space.RASTER, factor, factor, shift, shift);
        }
    }

    /** Its size. */
    public PixelSize size() {
        return size;
    }

    /** The numbers themselves, row by row from the top; one that was never stored is no number. */
    public float[] values() {
        return values;
    }

    /** The difference of two neighbouring numbers that the file can store; 0 for floating point. */
    public double step() {
        return step;
    }

    /** From these pixels to those of the file as seen. */
    public Affine<RasterPoint, RasterPoint> toFile() {
        return toFile;
    }
}
