package org.adumbrate.raster.decode.metadata;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.util.HashMap;
import java.util.Map;
import org.adumbrate.fault.InputFault;
import org.adumbrate.raster.decode.source.SourceFile;

/**
 * The fields of the first directory of a TIFF, classic (TIFF 6.0, section 2) or BigTIFF; of those that {@link TiffTag} names,
 * the others being no concern of the picture.
 */
public final class TiffFields {
    private static final int BYTE = 1;
    private static final int SHORT = 3;
    private static final int LONG = 4;
    private static final int RATIONAL = 5;
    private static final int UNDEFINED = 7;

    /** A field as long as this holds a profile, or the places of millions of strips. */
    private static final long LONGEST_FIELD = 1 << 25;

    private static final int LONG8 = 16;

    /** Bytes of a value of each type, by the type's number; 0 for a number that is no type. */
    private static final int[] TYPE_SIZES = {0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8, 4, 0, 0, 8, 8, 8};

    private final SourceFile file;
    private final ByteOrder order;
    private final Map<Integer, Field> fields = new HashMap<>();

    /** A field's values are kept in the order of the file. */
    private record Field(int type, ByteBuffer data) {}

    private TiffFields(SourceFile file, ByteOrder order) {
        this.file = file;
        this.order = order;
    }

    /** Reads them from a file. */
    public static TiffFields read(SourceFile file) throws IOException {
        try (FileChannel channel = FileChannel.open(file.path())) {
            return read(file, new TiffBytes(file, channel));
        }
    }

    /** Reads them from a block that stands by itself within a file. */
    public static TiffFields read(SourceFile file, byte[] block) throws IOException {
        return read(file, new TiffBytes(file, ByteBuffer.wrap(block)));
    }

    private static TiffFields read(SourceFile file, TiffBytes bytes) throws IOException {
        ByteBuffer start = bytes.read(0, 8);
        ByteOrder order = start.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN;
        boolean big = start.order(order).getShort(2) == 43;
        long directory = big
                ? bytes.read(8, 8).order(order).getLong()
                : start.order(order).getInt(4) & 0xffffffffL;
        int width = big ? 8 : 2;
        ByteBuffer head = bytes.read(directory, width).order(order);
        long count = big ? head.getLong() : head.getShort() & 0xffff;
        int entry = big ? 20 : 12;
        if (count < 1 || count > 0xffff) {
            throw file.damaged("its directory has " + count + " fields");
        }
        ByteBuffer entries = bytes.read(directory + width, (int) count * entry);
        TiffFields found = new TiffFields(file, order);
        for (int i = 0; i < count; i++) {
            found.take(bytes, entries.slice(i * entry, entry).order(order), big);
        }
        return found;
    }

    private void take(TiffBytes bytes, ByteBuffer entry, boolean big) throws IOException {
        int tag = entry.getShort() & 0xffff;
        int type = entry.getShort() & 0xffff;
        if (!TiffTag.concernsThePicture(tag) || fields.containsKey(tag)) {
            return;
        }
        int size = type < TYPE_SIZES.length ? TYPE_SIZES[type] : 0;
        long count = big ? entry.getLong() : entry.getInt() & 0xffffffffL;
        if (size == 0 || count < 1 || count > bytes.length() / size) {
            throw file.damaged("its field " + tag + " has " + count + " values of type " + type);
        }
        if (count * size > LONGEST_FIELD) {
            throw file.damaged("its field " + tag + " is " + count * size + " bytes long");
        }
        int length = (int) (count * size);
        int inline = big ? 8 : 4;
        ByteBuffer data = length <= inline
                ? entry.slice(entry.position(), length)
                : bytes.read(big ? entry.getLong() : entry.getInt() & 0xffffffffL, length);
        fields.put(tag, new Field(type, data.order(order)));
    }

    /** The order of bytes in the whole file. */
    public ByteOrder order() {
        return order;
    }

    /** Whether there is such a field. */
    public boolean has(int tag) {
        return fields.containsKey(tag);
    }

    /** The bytes of a field's values, in the order of the file; none if there is no such field. */
    public byte[] bytes(int tag) {
        Field field = fields.get(tag);
        byte[] bytes = new byte[field == null ? 0 : field.data().limit()];
        if (field != null) {
            field.data().get(0, bytes);
        }
        return bytes;
    }

    /** The first value of a field of whole numbers. */
    public long number(int tag, long otherwise) throws InputFault {
        long[] values = numbers(tag);
        return values.length == 0 ? otherwise : values[0];
    }

    /** The values of a field of whole numbers; none if there is no such field. */
    public long[] numbers(int tag) throws InputFault {
        Field field = fields.get(tag);
        if (field == null) {
            return new long[0];
        }
        ByteBuffer data = field.data();
        long[] values = new long[data.limit() / TYPE_SIZES[field.type()]];
        for (int i = 0; i < values.length; i++) {
            values[i] = switch (field.type()) {
                case BYTE, UNDEFINED -> data.get(i) & 0xff;
                case SHORT -> data.getShort(2 * i) & 0xffff;
                case LONG -> data.getInt(4 * i) & 0xffffffffL;
                case LONG8 -> data.getLong(8 * i);
                default -> throw file.damaged("its field " + tag + " holds no whole numbers");
            };
        }
        return values;
    }

    /** The value of a field that holds one fraction; 0 if there is none. */
    double fraction(int tag) {
        Field field = fields.get(tag);
        if (field == null || field.type() != RATIONAL || field.data().getInt(4) == 0) {
            return 0;
        }
        return (double) (field.data().getInt(0) & 0xffffffffL) / (field.data().getInt(4) & 0xffffffffL);
    }
}
