package org.adumbrate.raster.decode;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.OptionalDouble;
import org.adumbrate.geometry.PixelSize;

/** The head of a BMP: BITMAPFILEHEADER, then BITMAPCOREHEADER or BITMAPINFOHEADER or one of its successors. */
final class BmpHead {
    private static final int LENGTH = 54;
    private static final int CORE = 12;
    private static final int LARGEST_PALETTE = 256;

    /** A run of 255 pixels in two bytes. */
    private static final int MOST_PIXELS_PER_BYTE = 128;

    private BmpHead() {}

    static PluginHead read(SourceFile file) throws IOException {
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file.path())) {
            bytes = in.readNBytes(LENGTH);
        }
        ByteBuffer head = ByteBuffer.wrap(Arrays.copyOf(bytes, LENGTH)).order(ByteOrder.LITTLE_ENDIAN);
        if (bytes.length < 26 || (head.getInt(14) != CORE && bytes.length < LENGTH)) {
            throw file.endsEarly("in its head");
        }
        return head.getInt(14) == CORE ? core(file, head) : info(file, head);
    }

    private static PluginHead core(SourceFile file, ByteBuffer head) throws IOException {
        PixelSize size = file.checkedSize(head.getShort(18) & 0xffff, head.getShort(20) & 0xffff);
        requirePixels(file, head, size, head.getShort(24));
        return new PluginHead(size, OptionalDouble.empty());
    }

    private static PluginHead info(SourceFile file, ByteBuffer head) throws IOException {
        // A negative height means rows from the top down.
        PixelSize size = file.checkedSize(head.getInt(18), Math.abs((long) head.getInt(22)));
        switch (head.getInt(30)) {
            case 0, 3, 6 -> requirePixels(file, head, size, head.getShort(28));
            case 1, 2 -> file.requireBytes(size, size.count() / MOST_PIXELS_PER_BYTE);
            case 4 -> throw file.unsupported("BMP that holds a JPEG");
            case 5 -> throw file.unsupported("BMP that holds a PNG");
            default -> throw file.unsupported("BMP compressed by method " + head.getInt(30));
        }
        if (head.getInt(46) < 0 || head.getInt(46) > LARGEST_PALETTE) {
            throw file.damaged("it states a palette of " + (head.getInt(46) & 0xffffffffL) + " colours");
        }
        return new PluginHead(size, Resolution.dpi(head.getInt(38), head.getInt(42), Resolution.INCH_M));
    }

    private static void requirePixels(SourceFile file, ByteBuffer head, PixelSize size, int bits) throws IOException {
        if (bits < 1 || bits > 32) {
            throw file.damaged("it states " + bits + " bits a pixel");
        }
        long rowBytes = ((long) size.width() * bits + 31) / 32 * 4;
        long pixelsAt = head.getInt(10) & 0xffffffffL;
        if (pixelsAt + rowBytes * size.height() > file.bytes()) {
            throw file.endsEarly(
                    "its rows need " + (pixelsAt + rowBytes * size.height()) + " bytes, it has " + file.bytes());
        }
    }
}
