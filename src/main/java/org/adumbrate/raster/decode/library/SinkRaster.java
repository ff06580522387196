package org.adumbrate.raster.decode.library;

import java.awt.Point;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.SampleModel;
import java.awt.image.WritableRaster;

/**
 * A raster without memory: what an image library writes into it goes straight on. So a library that knows only whole
 * pictures streams, provided that it writes by pieces.
 */
public final class SinkRaster extends WritableRaster {
    private static final Point ORIGIN = new Point(0, 0);

    private final PieceSink sink;
    private final int band;

    SinkRaster(SampleModel model, PieceSink sink) {
        this(model, sink, 0);
    }

    private SinkRaster(SampleModel model, PieceSink sink, int band) {
        super(model, new NoBuffer(model.getDataType()), ORIGIN);
        this.sink = sink;
        this.band = band;
    }

    @Override
    public void setRect(int dx, int dy, Raster source) {
        sink.take(dx + source.getMinX(), dy + source.getMinY(), source, band);
    }

    @Override
    public void setDataElements(int x, int y, Raster source) {
        sink.take(x + source.getMinX(), y + source.getMinY(), source, band);
    }

    /** Itself: libraries ask for the whole, or for the whole of one band. */
    @Override
    public WritableRaster createWritableChild(
            int parentX, int parentY, int width, int height, int childMinX, int childMinY, int[] bands) {
        return bands == null || bands.length != 1 ? this : new SinkRaster(sampleModel, sink, bands[0]);
    }

    /** Takes pieces of a picture as a library holds them. */
    @FunctionalInterface
    public interface PieceSink {
        /**
         * Takes a piece.
         *
         * @param x the column where its top-left pixel belongs
         * @param y the row where its top-left pixel belongs
         * @param band of which channel it is, if the library hands them over one by one; else 0
         */
        void take(int x, int y, Raster piece, int band);
    }

    /** Holds nothing, and says so when asked. */
    private static final class NoBuffer extends DataBuffer {
        NoBuffer(int type) {
            super(type, 1);
        }

        @Override
        public int getElem(int bank, int i) {
            throw new UnsupportedOperationException("a raster without memory");
        }

        @Override
        public void setElem(int bank, int i, int value) {
            throw new UnsupportedOperationException("a raster without memory");
        }
    }
}
