package org.adumbrate.raster.decode.tiff;

import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.DataBufferUShort;
import java.awt.image.PixelInterleavedSampleModel;
import java.awt.image.Raster;
import org.adumbrate.raster.SampleSink;
import org.adumbrate.raster.SampleType;
import org.adumbrate.raster.Samples;

/** Whole numbers, of any width and packing, brought to full scale. */
final class WholeSamples implements PieceSamples {
    private final SampleType type;
    private final int channels;
    private final long[] most;
    private final int full;
    private final int flip;
    private int[] codes = {};
    private Samples room;

    /**
     * @param type of the samples made
     * @param most the largest number that each channel can store; as many as are used, from the first on
     * @param inverted whether the largest number is to become 0
     */
    WholeSamples(SampleType type, long[] most, boolean inverted) {
        this.type = type;
        this.channels = most.length;
        this.most = most.clone();
        this.full = type == SampleType.BYTE ? 0xff : 0xffff;
        this.flip = inverted ? full : 0;
        this.room = Samples.allocate(type, 0);
    }

    @Override
    public void put(Raster piece, int x, int y, SampleSink sink) {
        int width = piece.getWidth();
        for (int row = 0; row < piece.getHeight(); row++) {
            if (isAsWanted(piece)) {
                PixelInterleavedSampleModel model = (PixelInterleavedSampleModel) piece.getSampleModel();
                int column = piece.getMinX() - piece.getSampleModelTranslateX();
                int line = piece.getMinY() + row - piece.getSampleModelTranslateY();
                DataBuffer data = piece.getDataBuffer();
                sink.put(x, y + row, width, wrap(data), data.getOffset() + model.getOffset(column, line));
            } else {
                sink.put(x, y + row, width, convert(piece, row), 0);
            }
        }
    }

    private boolean isAsWanted(Raster piece) {
        if (flip != 0 || !(piece.getSampleModel() instanceof PixelInterleavedSampleModel model)) {
            return false;
        }
        int[] offsets = model.getBandOffsets();
        boolean same = model.getPixelStride() == channels && offsets.length == channels;
        for (int c = 0; same && c < channels; c++) {
            same = offsets[c] == c && most[c] == full;
        }
        DataBuffer data = piece.getDataBuffer();
        return same && (type == SampleType.BYTE ? data instanceof DataBufferByte : data instanceof DataBufferUShort);
    }

    private static Samples wrap(DataBuffer data) {
        return data instanceof DataBufferByte bytes
                ? new Samples.Bytes(bytes.getData())
                : new Samples.Shorts(((DataBufferUShort) data).getData());
    }

    private Samples convert(Raster piece, int row) {
        int width = piece.getWidth();
        if (codes.length < width) {
            codes = new int[width];
            room = Samples.allocate(type, width * channels);
        }
        for (int c = 0; c < channels; c++) {
            piece.getSamples(piece.getMinX(), piece.getMinY() + row, width, 1, c, codes);
            if (room instanceof Samples.Bytes bytes) {
                scale(width, c, bytes.values());
            } else {
                scale(width, c, ((Samples.Shorts) room).values());
            }
        }
        return room;
    }

    private void scale(int width, int channel, byte[] to) {
        for (int i = 0, at = channel; i < width; i++, at += channels) {
            to[at] = (byte) scaled(codes[i], most[channel]);
        }
    }

    private void scale(int width, int channel, short[] to) {
        for (int i = 0, at = channel; i < width; i++, at += channels) {
            to[at] = (short) scaled(codes[i], most[channel]);
        }
    }

    private int scaled(int code, long largest) {
        long unsigned = Math.min(largest, code & 0xffffffffL);
        return (int) ((unsigned * full + largest / 2) / largest) ^ flip;
    }
}
