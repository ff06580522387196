package org.adumbrate.raster.decode.tiff;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.SortedMap;
import java.util.TreeMap;
import org.adumbrate.raster.decode.metadata.TiffFields;
import org.adumbrate.raster.decode.metadata.TiffTag;

/**
 * A head for the image library to read in place of the file's own, as a BigTIFF: only the fields that concern the pixels,
 * each found sound before. So no field can mislead the library into asking for memory or into managing colour.
 */
final class TiffHead {
    private static final int SHORT = 3;
    private static final int LONG = 4;
    private static final int UNDEFINED = 7;
    private static final int LONG8 = 16;
    private static final int VERSION = 43;
    private static final int HEADER = 16;
    private static final int ENTRY = 20;
    private static final int INLINE = 8;
    private static final int[] COPIED = {
        TiffTag.WIDTH,
        TiffTag.HEIGHT,
        TiffTag.BITS_PER_SAMPLE,
        TiffTag.COMPRESSION,
        TiffTag.PHOTOMETRIC,
        TiffTag.FILL_ORDER,
        TiffTag.SAMPLES_PER_PIXEL,
        TiffTag.ROWS_PER_STRIP,
        TiffTag.PLANAR_CONFIGURATION,
        TiffTag.T4_OPTIONS,
        TiffTag.T6_OPTIONS,
        TiffTag.PREDICTOR,
        TiffTag.COLOR_MAP,
        TiffTag.TILE_WIDTH,
        TiffTag.TILE_HEIGHT,
        TiffTag.INK_SET,
        TiffTag.EXTRA_SAMPLES,
        TiffTag.SAMPLE_FORMAT
    };

    private final ByteOrder order;
    private final SortedMap<Integer, Integer> types = new TreeMap<>();
    private final SortedMap<Integer, byte[]> values = new TreeMap<>();

    private TiffHead(ByteOrder order) {
        this.order = order;
    }

    /** The head, to be followed by the whole file; its offsets count from the beginning of both together. */
    static ByteBuffer build(TiffFields fields, TiffBlocks blocks) throws IOException {
        TiffHead head = new TiffHead(fields.order());
        for (int tag : COPIED) {
            if (fields.has(tag)) {
                long[] numbers = fields.numbers(tag);
                head.put(tag, Arrays.stream(numbers).allMatch(n -> n <= 0xffff) ? SHORT : LONG, numbers);
            }
        }
        if (fields.has(TiffTag.JPEG_TABLES)) {
            head.types.put(TiffTag.JPEG_TABLES, UNDEFINED);
            head.values.put(TiffTag.JPEG_TABLES, fields.bytes(TiffTag.JPEG_TABLES));
        }
        head.put(blocks.countsTag(), LONG8, fields.numbers(blocks.countsTag()));
        long[] offsets = fields.numbers(blocks.offsetsTag());
        head.put(blocks.offsetsTag(), LONG8, offsets);
        int length = head.length();
        head.put(
                blocks.offsetsTag(),
                LONG8,
                Arrays.stream(offsets).map(at -> at + length).toArray());
        return head.write(length);
    }

    private void put(int tag, int type, long[] numbers) {
        ByteBuffer data = ByteBuffer.allocate(numbers.length * size(type)).order(order);
        for (long number : numbers) {
            switch (type) {
                case SHORT -> data.putShort((short) number);
                case LONG -> data.putInt((int) number);
                default -> data.putLong(number);
            }
        }
        types.put(tag, type);
        values.put(tag, data.array());
    }

    private static int size(int type) {
        return switch (type) {
            case SHORT -> 2;
            case LONG -> 4;
            case LONG8 -> 8;
            default -> 1;
        };
    }

    private int length() {
        int length = directoryEnd();
        for (byte[] value : values.values()) {
            length += value.length > INLINE ? padded(value.length) : 0;
        }
        return length;
    }

    private int directoryEnd() {
        return HEADER + 8 + ENTRY * values.size() + 8;
    }

    private static int padded(int length) {
        return (length + 7) / 8 * 8;
    }

    private ByteBuffer write(int length) {
        ByteBuffer out = ByteBuffer.allocate(length).order(order);
        byte letter = (byte) (order == ByteOrder.BIG_ENDIAN ? 'M' : 'I');
        out.put(letter)
                .put(letter)
                .putShort((short) VERSION)
                .putShort((short) 8)
                .putShort((short) 0);
        out.putLong(HEADER).putLong(values.size());
        int outside = directoryEnd();
        for (int tag : values.keySet()) {
            byte[] value = values.get(tag);
            out.putShort((short) tag)
                    .putShort(types.get(tag).shortValue())
                    .putLong(value.length / size(types.get(tag)));
            if (value.length <= INLINE) {
                out.put(Arrays.copyOf(value, INLINE));
            } else {
                out.putLong(outside);
                out.put(outside, value);
                outside += padded(value.length);
            }
        }
        return out.rewind().asReadOnlyBuffer();
    }
}
