package org.adumbrate.raster.decode;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.OptionalDouble;
import org.adumbrate.raster.Orientation;

/**
 * The first directory of an Exif block (JEITA CP-3451: a TIFF header and directory): orientation and resolution. A block
 * that makes no sense says nothing, as it would be wrong to refuse a picture for it.
 *
 * @param orientation how to turn the picture
 * @param dpi its resolution, if stated
 */
record ExifBlock(Orientation orientation, OptionalDouble dpi) {
    /** No block. */
    static final ExifBlock NONE = new ExifBlock(Orientation.TOP_LEFT, OptionalDouble.empty());

    private static final int ORIENTATION = 0x0112;
    private static final int X_RESOLUTION = 0x011A;
    private static final int Y_RESOLUTION = 0x011B;
    private static final int RESOLUTION_UNIT = 0x0128;
    private static final int CENTIMETRE = 3;
    private static final int TYPE_SHORT = 3;
    private static final int TYPE_RATIONAL = 5;
    private static final int ENTRY = 12;

    /** Reads a block, from its byte-order mark on. */
    static ExifBlock read(byte[] block) {
        if (block.length < 8 || block[0] != block[1] || (block[0] != 'I' && block[0] != 'M')) {
            return NONE;
        }
        ByteBuffer data =
                ByteBuffer.wrap(block).order(block[0] == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int directory = data.getInt(4);
        if (data.getShort(2) != 42 || directory < 8 || directory > block.length - 2) {
            return NONE;
        }
        return readDirectory(data, directory);
    }

    private static ExifBlock readDirectory(ByteBuffer data, int directory) {
        int orientation = 1;
        double x = 0;
        double y = 0;
        double unitsPerInch = 1;
        int entries = data.getShort(directory) & 0xffff;
        for (int i = 0; i < entries && directory + 2 + (i + 1) * ENTRY <= data.limit(); i++) {
            int entry = directory + 2 + i * ENTRY;
            switch (data.getShort(entry) & 0xffff) {
                case ORIENTATION -> orientation = shortAt(data, entry);
                case X_RESOLUTION -> x = rationalAt(data, entry);
                case Y_RESOLUTION -> y = rationalAt(data, entry);
                case RESOLUTION_UNIT -> unitsPerInch = shortAt(data, entry) == CENTIMETRE ? Resolution.INCH_CM : 1;
                default -> {
                    // Not of use here.
                }
            }
        }
        return new ExifBlock(Orientation.ofExif(orientation), Resolution.dpi(x, y, unitsPerInch));
    }

    private static int shortAt(ByteBuffer data, int entry) {
        return data.getShort(entry + 2) == TYPE_SHORT ? data.getShort(entry + 8) & 0xffff : 0;
    }

    private static double rationalAt(ByteBuffer data, int entry) {
        int place = data.getInt(entry + 8);
        if (data.getShort(entry + 2) != TYPE_RATIONAL || place < 0 || place > data.limit() - 8) {
            return 0;
        }
        long below = data.getInt(place + 4) & 0xffffffffL;
        return below == 0 ? 0 : (double) (data.getInt(place) & 0xffffffffL) / below;
    }
}
