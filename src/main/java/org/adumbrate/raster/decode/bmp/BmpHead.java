package org.adumbrate.raster.decode.bmp;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.OptionalDouble;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.decode.icc.EmbeddedProfile;
import org.adumbrate.raster.decode.metadata.Resolution;
import org.adumbrate.raster.decode.source.SourceFile;

/**
 * The head of a BMP: BITMAPFILEHEADER, then BITMAPCOREHEADER, or BITMAPINFOHEADER or one of its successors up to
 * BITMAPV5HEADER (Microsoft, <em>Windows GDI: Bitmap Header Types</em>), or that of OS/2 2.x.
 *
 * @param size its size
 * @param topDown whether its first row is the upper one
 * @param bits of a pixel
 * @param packing how its pixels are packed
 * @param pixelsAt where they begin
 * @param masks which bits of a pixel of 16 or 32 hold red, green, blue and alpha
 * @param palette red, green and blue of each entry; empty for pixels that hold their colour
 * @param dpi its resolution, if stated
 * @param profile the colour profile that a BITMAPV5HEADER may carry
 */
@SuppressWarnings("ArrayRecordComponent") // compared by nobody
record BmpHead(
        PixelSize size,
        boolean topDown,
        int bits,
        Packing packing,
        long pixelsAt,
        int[] masks,
        byte[] palette,
        OptionalDouble dpi,
        EmbeddedProfile profile) {
    private static final int FILE_HEADER = 14;
    private static final int CORE = 12;
    private static final int INFO = 40;
    private static final int MASKS = 52;
    private static final int ALPHA_MASK = 56;
    private static final int SHORT_OS_2 = 16;
    private static final int OS_2 = 64;
    private static final int LONGEST = 124;
    private static final int LARGEST_PALETTE = 256;
    private static final int LARGEST_PROFILE = 1 << 24;
    private static final int EMBEDDED = 0x4D424544;
    private static final int MOST_PIXELS_PER_BYTE = 128;
    private static final int[] MASKS_OF_16 = {0x7c00, 0x03e0, 0x001f, 0};
    private static final int[] MASKS_OF_32 = {0xff0000, 0xff00, 0xff, 0};

    /** How pixels are packed. */
    enum Packing {
        PLAIN,
        /** Runs of bytes. */
        RUNS_OF_8,
        /** Runs of pairs of half a byte. */
        RUNS_OF_4
    }

    static BmpHead read(SourceFile file) throws IOException {
        byte[] bytes;
        int most = FILE_HEADER + LONGEST + 4 * LARGEST_PALETTE;
        try (InputStream in = Files.newInputStream(file.path())) {
            bytes = in.readNBytes(most);
        }
        ByteBuffer head = ByteBuffer.wrap(Arrays.copyOf(bytes, most)).order(ByteOrder.LITTLE_ENDIAN);
        if (bytes.length < FILE_HEADER + CORE || (head.getInt(14) != CORE && bytes.length < FILE_HEADER + INFO)) {
            throw file.endsEarly("in its head");
        }
        int length = head.getInt(14);
        if (length == CORE) {
            return core(file, head);
        }
        if (length < SHORT_OS_2 || length > LONGEST) {
            throw file.damaged("its head cannot be read as BMP (it is " + (length & 0xffffffffL) + " bytes long)");
        }
        return info(file, head, fields(head));
    }

    /** The head's fields; one of OS/2 2.x may end after any of them, and the rest is 0. */
    private static ByteBuffer fields(ByteBuffer head) {
        byte[] bytes = new byte[head.limit()];
        head.get(0, bytes);
        int end = FILE_HEADER + head.getInt(14);
        Arrays.fill(bytes, end, Math.max(end, FILE_HEADER + INFO), (byte) 0);
        return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }

    private static BmpHead core(SourceFile file, ByteBuffer head) throws IOException {
        PixelSize size = file.checkedSize(head.getShort(18) & 0xffff, head.getShort(20) & 0xffff);
        int bits = head.getShort(24);
        requirePixels(file, head, size, bits);
        byte[] palette = palette(file, head, FILE_HEADER + CORE, 3, bits, 1 << Math.min(8, bits));
        return new BmpHead(
                size,
                false,
                bits,
                Packing.PLAIN,
                pixelsAt(head),
                MASKS_OF_32.clone(),
                palette,
                OptionalDouble.empty(),
                EmbeddedProfile.NONE);
    }

    private static BmpHead info(SourceFile file, ByteBuffer head, ByteBuffer fields) throws IOException {
        // A negative height means rows from the top down.
        PixelSize size = file.checkedSize(fields.getInt(18), Math.abs((long) fields.getInt(22)));
        int bits = fields.getShort(28);
        Packing packing = packing(file, fields);
        if (packing == Packing.PLAIN) {
            requirePixels(file, head, size, bits);
        } else {
            file.requireBytes(size, size.count() / MOST_PIXELS_PER_BYTE);
        }
        int colours = fields.getInt(46);
        if (colours < 0 || (colours > LARGEST_PALETTE && bits <= 8)) {
            throw file.damaged("it states a palette of " + (colours & 0xffffffffL) + " colours");
        }
        int most = colours == 0 ? 1 << Math.min(8, bits) : colours;
        int paletteAt = FILE_HEADER + head.getInt(14);
        return new BmpHead(
                size,
                fields.getInt(22) < 0,
                bits,
                packing,
                pixelsAt(head),
                masks(file, head, fields.getInt(30), bits),
                palette(file, head, paletteAt, 4, bits, most),
                Resolution.dpi(fields.getInt(38), fields.getInt(42), Resolution.INCH_M),
                profile(file, head));
    }

    private static Packing packing(SourceFile file, ByteBuffer head) throws IOException {
        int method = head.getInt(30);
        int bits = head.getShort(28);
        boolean os2 = head.getInt(14) == OS_2;
        return switch (method) {
            case 0 -> Packing.PLAIN;
            case 1 -> fitting(file, Packing.RUNS_OF_8, bits, 8);
            case 2 -> fitting(file, Packing.RUNS_OF_4, bits, 4);
            case 3 -> {
                if (os2) {
                    throw file.unsupported("BMP compressed as a fax");
                }
                if (bits != 16 && bits != 32) {
                    throw file.damaged("its head cannot be read as BMP (masks for " + bits + " bits)");
                }
                yield Packing.PLAIN;
            }
            case 6 -> Packing.PLAIN;
            case 4 -> throw file.unsupported(os2 ? "BMP in runs of 24 bits" : "BMP that holds a JPEG");
            case 5 -> throw file.unsupported("BMP that holds a PNG");
            default -> throw file.unsupported("BMP compressed by method " + method);
        };
    }

    private static Packing fitting(SourceFile file, Packing packing, int bits, int needed) throws IOException {
        if (bits != needed) {
            throw file.damaged("its runs are of " + needed + " bits, its pixels of " + bits);
        }
        return packing;
    }

    /**
     * Masks count where the method says so (BI_BITFIELDS, BI_ALPHABITFIELDS). Otherwise 16 bits are 5 for each colour, and of
     * 32 the highest byte is not used (BITMAPINFOHEADER, biBitCount): it is no alpha, whatever stands in it.
     */
    private static int[] masks(SourceFile file, ByteBuffer head, int method, int bits) throws IOException {
        if (method != 3 && method != 6) {
            return bits == 16 ? MASKS_OF_16.clone() : MASKS_OF_32.clone();
        }
        int length = head.getInt(14);
        boolean alpha = method == 6 || length >= ALPHA_MASK;
        int at = FILE_HEADER + INFO;
        int[] masks = {head.getInt(at), head.getInt(at + 4), head.getInt(at + 8), alpha ? head.getInt(at + 12) : 0};
        boolean within = length >= MASKS || pixelsAt(head) >= at + (alpha ? 16 : 12);
        boolean sound = within && (masks[0] | masks[1] | masks[2]) != 0;
        for (int mask : masks) {
            int run = mask == 0 ? 0 : mask >>> Integer.numberOfTrailingZeros(mask);
            sound &= (run & run + 1) == 0;
        }
        if (!sound) {
            throw file.damaged("its head cannot be read as BMP (its masks make no sense)");
        }
        return masks;
    }

    private static byte[] palette(SourceFile file, ByteBuffer head, int at, int entry, int bits, int most)
            throws IOException {
        if (bits > 8) {
            return new byte[0];
        }
        // A head may leave out the last entries, and let the pixels begin.
        int count = (int) Math.min(most, (pixelsAt(head) - at) / entry);
        if (count < 1 || at + entry * count > file.bytes()) {
            throw file.damaged("its head cannot be read as BMP (it has no palette)");
        }
        byte[] palette = new byte[3 * count];
        for (int i = 0; i < palette.length; i++) {
            palette[i] = head.get(at + i / 3 * entry + 2 - i % 3);
        }
        return palette;
    }

    private static EmbeddedProfile profile(SourceFile file, ByteBuffer head) throws IOException {
        if (head.getInt(14) < LONGEST || head.getInt(FILE_HEADER + 56) != EMBEDDED) {
            return EmbeddedProfile.NONE;
        }
        long at = FILE_HEADER + (head.getInt(FILE_HEADER + 112) & 0xffffffffL);
        long length = head.getInt(FILE_HEADER + 116) & 0xffffffffL;
        if (length > LARGEST_PROFILE || at + length > file.bytes()) {
            return EmbeddedProfile.of(new byte[0]);
        }
        try (InputStream in = Files.newInputStream(file.path())) {
            in.skipNBytes(at);
            return EmbeddedProfile.of(in.readNBytes((int) length));
        }
    }

    private static long pixelsAt(ByteBuffer head) {
        return head.getInt(10) & 0xffffffffL;
    }

    private static void requirePixels(SourceFile file, ByteBuffer head, PixelSize size, int bits) throws IOException {
        if (bits < 1 || bits > 32) {
            throw file.damaged("it states " + bits + " bits a pixel");
        }
        if (bits > 8 ? bits % 8 != 0 : Integer.bitCount(bits) != 1) {
            throw file.damaged("its head cannot be read as BMP (it has " + bits + " bits a pixel)");
        }
        if (pixelsAt(head) < FILE_HEADER + head.getInt(14)) {
            throw file.damaged("its head cannot be read as BMP (its pixels begin within it)");
        }
        long end = pixelsAt(head) + rowBytes(size.width(), bits) * size.height();
        if (end > file.bytes()) {
            throw file.endsEarly("its rows need " + end + " bytes, it has " + file.bytes());
        }
    }

    private static long rowBytes(int width, int bits) {
        return ((long) width * bits + 31) / 32 * 4;
    }

    /** Bytes of a plain row, which ends at a multiple of four. */
    int rowBytes() {
        return (int) rowBytes(size.width(), bits);
    }
}
