package org.adumbrate.raster.decode.bmp;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import org.adumbrate.fault.InputFault;
import org.adumbrate.raster.decode.source.SourceFile;

/**
 * Unpacks the runs of a BMP (BI_RLE8 and BI_RLE4; Microsoft, <em>Bitmap Compression</em>), row by row from the bottom up.
 * Pixels that a move passes over are of the first colour of the palette.
 */
final class BmpRuns {
    private static final int END_OF_ROW = 0;
    private static final int END = 1;
    private static final int MOVE = 2;

    private final SourceFile file;
    private final BmpHead head;
    private final InputStream in;
    /** Of a row; some writers fill it up to a multiple of four, as a plain row is. */
    private final byte[] codes;

    private int column;
    private int emptyRows;
    private boolean ended;
    private int row;

    /** @param in stands at the first run */
    BmpRuns(SourceFile file, BmpHead head, InputStream in) {
        this.file = file;
        this.head = head;
        this.in = in;
        this.codes = new byte[(head.size().width() + 3) / 4 * 4];
    }

    /** The next row, packed as a plain one is. */
    void next(byte[] packed) throws IOException {
        Arrays.fill(codes, (byte) 0);
        if (emptyRows > 0) {
            emptyRows--;
        }
        if (emptyRows == 0 && !ended) {
            unpack();
        }
        row++;
        pack(packed);
    }

    private void unpack() throws IOException {
        boolean within = true;
        while (within) {
            int count = read();
            int value = read();
            if (count > 0) {
                run(count, value);
            } else if (value > MOVE) {
                apart(value);
            } else {
                within = !endsRow(value);
            }
        }
    }

    /** Whether what comes belongs to a row further up. */
    private boolean endsRow(int escape) throws IOException {
        if (escape == MOVE) {
            column += read();
            emptyRows = read();
            if (column > codes.length || row + emptyRows >= head.size().height()) {
                throw noSense("a move leads out of it");
            }
            return emptyRows > 0;
        }
        ended = escape == END;
        column = escape == END_OF_ROW ? 0 : column;
        return true;
    }

    private void run(int count, int value) throws IOException {
        require(count);
        for (int k = 0; k < count; k++) {
            codes[column++] = code(value, k);
        }
    }

    /** Codes one by one, filled up to an even number of bytes. */
    private void apart(int count) throws IOException {
        require(count);
        int value = 0;
        boolean whole = head.packing() == BmpHead.Packing.RUNS_OF_8;
        for (int k = 0; k < count; k++) {
            value = whole || k % 2 == 0 ? read() : value;
            codes[column++] = code(value, k);
        }
        int bytes = whole ? count : (count + 1) / 2;
        if (bytes % 2 == 1) {
            read();
        }
    }

    private byte code(int value, int place) {
        if (head.packing() == BmpHead.Packing.RUNS_OF_8) {
            return (byte) value;
        }
        return (byte) (place % 2 == 0 ? value >> 4 : value & 15);
    }

    private void require(int count) throws IOException {
        if (count > codes.length - column) {
            throw noSense("a run leads out of a row");
        }
    }

    private InputFault noSense(String why) {
        return file.damaged("its data cannot be unpacked after " + row + " of "
                + head.size().height() + " rows (" + why + ")");
    }

    private void pack(byte[] packed) {
        if (head.bits() == 8) {
            System.arraycopy(codes, 0, packed, 0, Math.min(packed.length, codes.length));
            return;
        }
        Arrays.fill(packed, (byte) 0);
        for (int x = 0; x < head.size().width(); x++) {
            packed[x / 2] |= (byte) (x % 2 == 0 ? codes[x] << 4 : codes[x]);
        }
    }

    private int read() throws IOException {
        int value = in.read();
        if (value < 0) {
            throw file.endsEarly("after " + row + " of " + head.size().height() + " rows");
        }
        return value;
    }
}
