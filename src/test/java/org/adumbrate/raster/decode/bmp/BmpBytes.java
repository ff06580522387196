package org.adumbrate.raster.decode.bmp;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import org.adumbrate.raster.decode.Pattern;

/** Builds BMP files byte by byte. */
public final class BmpBytes {
    private BmpBytes() {}

    /** The 8-bit pattern as a BMP. */
    public static byte[] colourBitmap() {
        return colourBitmap(false);
    }

    static byte[] colourBitmap(boolean topDown) {
        int rowBytes = (3 * Pattern.WIDTH + 3) / 4 * 4;
        byte[] rows = new byte[rowBytes * Pattern.HEIGHT];
        for (int y = 0; y < Pattern.HEIGHT; y++) {
            int row = topDown ? y : Pattern.HEIGHT - 1 - y;
            for (int i = 0; i < 3 * Pattern.WIDTH; i++) {
                rows[row * rowBytes + i] = (byte) Pattern.code8(i / 3, y, 2 - i % 3);
            }
        }
        return bmp(24, 0, topDown, new byte[0], rows);
    }

    /** A BITMAPINFOHEADER with what follows it. */
    static byte[] bmp(int bits, int compression, boolean topDown, byte[] tables, byte[] rows) {
        int at = 54 + tables.length;
        return ByteBuffer.allocate(at + rows.length)
                .order(ByteOrder.LITTLE_ENDIAN)
                .put((byte) 'B')
                .put((byte) 'M')
                .putInt(at + rows.length)
                .putInt(0)
                .putInt(at)
                .putInt(40)
                .putInt(Pattern.WIDTH)
                .putInt(topDown ? -Pattern.HEIGHT : Pattern.HEIGHT)
                .putShort((short) 1)
                .putShort((short) bits)
                .putInt(compression)
                .putInt(rows.length)
                .putInt(11811)
                .putInt(11811)
                .putInt(bits <= 8 ? tables.length / 4 : 0)
                .putInt(0)
                .put(tables)
                .put(rows)
                .array();
    }
}
