package org.adumbrate.raster.decode.png;

import java.io.Closeable;
import java.io.IOException;
import java.util.Arrays;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.adumbrate.raster.decode.source.SourceFile;

/** The rows of a PNG's image data, inflated and with their filters undone. */
final class PngScanlines implements Closeable {
    private final SourceFile file;
    private final PngChunks chunks;
    private final int step;
    private final Inflater inflater = new Inflater();
    private final byte[] packed = new byte[1 << 15];
    private byte[] row;
    private byte[] above;

    /**
     * @param chunks stands within the first chunk of image data
     * @param longest bytes of the longest row
     * @param step distance in bytes to the pixel before
     */
    PngScanlines(SourceFile file, PngChunks chunks, int longest, int step) {
        this.file = file;
        this.chunks = chunks;
        this.step = step;
        this.row = new byte[longest + 1];
        this.above = new byte[longest + 1];
    }

    /** Begins a pass: its first row has none above. */
    void begin() {
        Arrays.fill(row, (byte) 0);
    }

    /**
     * The next row, valid until the next call but one: bytes 1 to {@code length}.
     *
     * @param length its bytes
     * @param number what to call it in a fault, from 0
     */
    byte[] next(int length, int number) throws IOException {
        byte[] swapped = above;
        above = row;
        row = swapped;
        try {
            inflate(length + 1, number);
        } catch (DataFormatException e) {
            throw file.damaged("its image data cannot be unpacked from row " + number + " on", e);
        }
        if (!PngFilter.undo(row, above, length, step)) {
            throw file.damaged("its row " + number + " names a filter that PNG does not have");
        }
        return row;
    }

    private void inflate(int count, int number) throws IOException, DataFormatException {
        int done = 0;
        while (done < count) {
            int got = inflater.inflate(row, done, count - done);
            done += got;
            if (got == 0 && !inflater.needsInput()) {
                throw file.endsEarly("in the image data of row " + number);
            }
            if (got == 0) {
                feed(number);
            }
        }
    }

    private void feed(int number) throws IOException {
        int count = chunks.read(packed);
        while (count == 0) {
            chunks.next();
            if (!chunks.type().equals("IDAT")) {
                throw file.endsEarly("in the image data of row " + number);
            }
            count = chunks.read(packed);
        }
        inflater.setInput(packed, 0, count);
    }

    /** Reads what is left of the image data, so that its checksums have all been checked. */
    void finish() throws IOException {
        try {
            byte[] rest = new byte[64];
            while (!inflater.finished() && inflater.inflate(rest) == 0 && !inflater.finished()) {
                if (!inflater.needsInput() || chunks.left() == 0) {
                    break;
                }
                inflater.setInput(packed, 0, chunks.read(packed));
            }
        } catch (DataFormatException e) {
            throw file.damaged("the checksum of its image data is wrong", e);
        }
        while (chunks.left() > 0) {
            chunks.read(packed);
        }
    }

    @Override
    public void close() throws IOException {
        inflater.end();
        chunks.close();
    }
}
