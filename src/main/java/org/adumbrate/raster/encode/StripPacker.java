package org.adumbrate.raster.encode;

import org.adumbrate.raster.LightSink;

/** Quantises the rows of a strip into bytes, big end first, each row led by room for a filter's mark if one is wanted. */
abstract class StripPacker implements LightSink.Filler {
    private final PictureFormat format;
    private final Quantizer quantizer;
    private final int lead;
    private final short[] wide;
    private final byte[] plain;
    private byte[] bytes = new byte[0];
    private int y;
    private int rows;
    private int filled;

    /** @param lead bytes that stand before each row */
    StripPacker(PictureFormat format, int lead) {
        this.format = format;
        this.quantizer = new Quantizer(format.dithered());
        this.lead = lead;
        this.plain = new byte[format.rowBytes()];
        this.wide = new short[format.bits() == 16 ? format.window().width() * format.channels() : 0];
    }

    @Override
    public void begin(int firstRow, int rowCount) {
        y = firstRow;
        rows = rowCount;
        filled = 0;
        int length = Math.multiplyExact(rowCount, lead + format.rowBytes());
        if (bytes.length < length) {
            bytes = new byte[length];
        }
    }

    @Override
    public void row(float[] light) {
        int count = format.window().width() * format.channels();
        int at = filled * (lead + format.rowBytes()) + lead;
        if (format.bits() == 8) {
            quantizer.toBytes(light, count, format.channels(), format.window().left(), y + filled, plain);
        } else {
            if (format.transfer() == Transfer.LINEAR) {
                Quantizer.toShares(light, count, wide);
            } else {
                Quantizer.toShorts(light, count, wide);
            }
            for (int k = 0; k < count; k++) {
                plain[2 * k] = (byte) (wide[k] >>> 8);
                plain[2 * k + 1] = (byte) wide[k];
            }
        }
        filter(plain, bytes, at);
        filled++;
    }

    /** Prepares a row for compression: from {@code plain} into the strip, where it begins at {@code at}. */
    abstract void filter(byte[] row, byte[] strip, int at);

    @Override
    public StripEncoder.Packed end() {
        if (filled != rows) {
            throw new IllegalStateException("a strip of " + rows + " rows got " + filled);
        }
        boolean last = y + rows == format.window().bottom();
        return pack(bytes, rows * (lead + format.rowBytes()), last);
    }

    /** Compresses the strip's bytes. */
    abstract StripEncoder.Packed pack(byte[] strip, int length, boolean last);
}
