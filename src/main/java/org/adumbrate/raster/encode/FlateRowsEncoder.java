package org.adumbrate.raster.encode;

import java.io.IOException;
import java.io.OutputStream;

/**
 * Writes rows as one zlib stream (RFC 1950), each row led by a PNG filter mark (PNG third edition, section 9): the image
 * data of a PNG, and of a PDF image with {@code /FlateDecode} and {@code /Predictor 15}. Strips are compressed apart and
 * joined at byte edges.
 */
public final class FlateRowsEncoder implements StripEncoder {
    private static final int FILTER_SUB = 1;
    private static final int BARE_OVERHEAD = 6;

    private final PictureFormat format;
    private final OutputStream out;
    private int checksum = 1;
    private long bytes;

    /**
     * @param format what is written
     * @param out takes the stream, and is closed when it is complete or given up
     */
    public FlateRowsEncoder(PictureFormat format, OutputStream out) {
        this.format = format;
        this.out = out;
    }

    @Override
    public Filler filler() {
        Deflating deflating = Deflating.of(format.level());
        int step = format.channels() * format.bits() / 8;
        return new StripPacker(format, 1) {
            @Override
            void filter(byte[] row, byte[] strip, int at) {
                strip[at - 1] = FILTER_SUB;
                Differences.ofBytes(row, step, strip, at);
            }

            @Override
            Packed pack(byte[] strip, int length, boolean last) {
                java.util.zip.Adler32 sum = new java.util.zip.Adler32();
                sum.update(strip, 0, length);
                byte[] data = deflating.compress(strip, length, last);
                return new PackedStrip(data, (int) sum.getValue(), length);
            }
        };
    }

    @Override
    public void take(Strip strip) throws IOException {
        PackedStrip piece = (PackedStrip) strip;
        if (bytes == 0) {
            out.write(0x78);
            out.write(0x01);
        }
        out.write(piece.data());
        checksum = Adler.joined(checksum, piece.checksum(), piece.length());
        bytes += piece.data().length;
    }

    @Override
    public long finish() throws IOException {
        for (int shift = 24; shift >= 0; shift -= 8) {
            out.write(checksum >>> shift);
        }
        out.close();
        return bytes + BARE_OVERHEAD;
    }

    @Override
    public void close() throws IOException {
        out.close();
    }
}
