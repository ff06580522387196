package org.adumbrate.raster.decode;

import java.awt.Point;
import java.awt.image.DataBufferByte;
import java.awt.image.Raster;
import java.awt.image.SampleModel;
import java.awt.image.WritableRaster;

/**
 * A raster without memory: what an image library writes into it goes straight on. So a library that knows only whole
 * pictures streams, provided that it writes by pieces.
 */
final class SinkRaster extends WritableRaster {
    private final PieceSink sink;

    SinkRaster(SampleModel model, PieceSink sink) {
        super(model, new DataBufferByte(1), new Point(0, 0));
        this.sink = sink;
    }

    @Override
    public void setRect(int dx, int dy, Raster source) {
        sink.take(dx + source.getMinX(), dy + source.getMinY(), source);
    }

    @Override
    public void setDataElements(int x, int y, Raster source) {
        sink.take(x + source.getMinX(), y + source.getMinY(), source);
    }

    @Override
    public WritableRaster createWritableChild(
            int parentX, int parentY, int width, int height, int childMinX, int childMinY, int[] bands) {
        return this;
    }

    /** Takes pieces of a picture as a library holds them. */
    @FunctionalInterface
    interface PieceSink {
        /** Takes a piece whose top-left pixel belongs at column x and row y. */
        void take(int x, int y, Raster piece);
    }
}
