package org.adumbrate.raster.encode;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;

/** Lays out the image file directory of a TIFF or BigTIFF, big end first. Entries must be added in ascending order. */
final class TiffDirectory {
    static final int IMAGE_WIDTH = 256;
    static final int IMAGE_LENGTH = 257;
    static final int BITS_PER_SAMPLE = 258;
    static final int COMPRESSION = 259;
    static final int PHOTOMETRIC = 262;
    static final int STRIP_OFFSETS = 273;
    static final int SAMPLES_PER_PIXEL = 277;
    static final int ROWS_PER_STRIP = 278;
    static final int STRIP_BYTE_COUNTS = 279;
    static final int X_RESOLUTION = 282;
    static final int Y_RESOLUTION = 283;
    static final int PLANAR_CONFIGURATION = 284;
    static final int RESOLUTION_UNIT = 296;
    static final int SOFTWARE = 305;
    static final int PREDICTOR = 317;
    static final int ICC_PROFILE = 34675;

    private static final int ASCII = 2;
    private static final int SHORT = 3;
    private static final int LONG = 4;
    private static final int RATIONAL = 5;
    private static final int UNDEFINED = 7;
    private static final int LONG8 = 16;
    private static final int RESOLUTION_PARTS = 1000;

    private record Entry(int tag, int type, long count, ByteBuffer value) {}

    private final boolean big;
    private final List<Entry> entries = new ArrayList<>();

    TiffDirectory(boolean big) {
        this.big = big;
    }

    /** The file's first bytes, which tell where the directory stands. */
    static ByteBuffer header(boolean big, long directory) {
        ByteBuffer header = ByteBuffer.allocate(big ? 16 : 8).putShort((short) 0x4D4D);
        if (big) {
            header.putShort((short) 43).putShort((short) 8).putShort((short) 0).putLong(directory);
        } else {
            header.putShort((short) 42).putInt((int) directory);
        }
        return header.flip();
    }

    void shorts(int tag, int... values) {
        ByteBuffer value = ByteBuffer.allocate(2 * values.length);
        for (int each : values) {
            value.putShort((short) each);
        }
        entries.add(new Entry(tag, SHORT, values.length, value.flip()));
    }

    void longs(int tag, int value) {
        entries.add(new Entry(tag, LONG, 1, ByteBuffer.allocate(4).putInt(value).flip()));
    }

    void offsets(int tag, long[] values) {
        ByteBuffer value = ByteBuffer.allocate((big ? 8 : 4) * values.length);
        for (long each : values) {
            if (big) {
                value.putLong(each);
            } else {
                value.putInt((int) each);
            }
        }
        entries.add(new Entry(tag, big ? LONG8 : LONG, values.length, value.flip()));
    }

    void rational(int tag, double number) {
        int numerator = (int) Math.round(number * RESOLUTION_PARTS);
        byte[] value = number == Math.rint(number)
                ? ByteBuffer.allocate(8).putInt((int) number).putInt(1).array()
                : ByteBuffer.allocate(8)
                        .putInt(numerator)
                        .putInt(RESOLUTION_PARTS)
                        .array();
        entries.add(new Entry(tag, RATIONAL, 1, ByteBuffer.wrap(value)));
    }

    void ascii(int tag, byte[] text) {
        entries.add(new Entry(
                tag, ASCII, text.length + 1L, ByteBuffer.wrap(java.util.Arrays.copyOf(text, text.length + 1))));
    }

    void undefined(int tag, byte[] value) {
        entries.add(new Entry(tag, UNDEFINED, value.length, ByteBuffer.wrap(value)));
    }

    /** The directory and the values that do not fit into it, for a place in the file. */
    ByteBuffer bytes(long at) {
        int inline = big ? 8 : 4;
        int entrySize = big ? 20 : 12;
        int tableSize = (big ? 8 : 2) + entries.size() * entrySize + inline;
        ByteBuffer table = ByteBuffer.allocate(tableSize);
        ByteArrayOutputStream outside = new ByteArrayOutputStream();
        if (big) {
            table.putLong(entries.size());
        } else {
            table.putShort((short) entries.size());
        }
        for (Entry entry : entries) {
            table.putShort((short) entry.tag).putShort((short) entry.type);
            put(table, entry.count);
            int cell = table.position();
            if (entry.value.remaining() <= inline) {
                table.put(entry.value);
            } else {
                put(table, at + tableSize + outside.size());
                byte[] bytes = new byte[entry.value.remaining()];
                entry.value.get(bytes);
                outside.writeBytes(bytes);
                if ((outside.size() & 1) == 1) {
                    outside.write(0);
                }
            }
            table.position(cell + inline);
        }
        table.position(0);
        return ByteBuffer.allocate(tableSize + outside.size())
                .put(table)
                .put(outside.toByteArray())
                .flip();
    }

    private void put(ByteBuffer table, long value) {
        if (big) {
            table.putLong(value);
        } else {
            table.putInt((int) value);
        }
    }
}
