package org.adumbrate.raster.encode;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.adumbrate.fault.OutputFault;
import org.adumbrate.output.OutputFile;

/**
 * Writes a TIFF (TIFF 6.0, 1992): strips, deflate with the horizontal predictor, resolution and colour profile; past 4 GiB
 * a BigTIFF (magic 43, 64-bit offsets). The directory stands at the end and the header is completed last.
 */
public final class TiffEncoder implements StripEncoder {
    private static final long CLASSIC_LIMIT = 0xFFFF_0000L;

    private final PictureFormat format;
    private final int stripRows;
    private final OutputFile file;
    private final FileChannel channel;
    private final boolean big;
    private final long[] offsets;
    private final long[] lengths;
    private int strips;
    private long position;

    /**
     * Begins a TIFF beside its target.
     *
     * @param stripRows rows of every strip but the last
     * @throws OutputFault if it cannot be written there
     */
    public TiffEncoder(Path target, PictureFormat format, int stripRows) throws OutputFault {
        this.format = format;
        this.file = OutputFile.begin(target);
        this.channel = file.channel();
        this.stripRows = stripRows;
        int count = (format.size().height() + stripRows - 1) / stripRows;
        this.offsets = new long[count];
        this.lengths = new long[count];
        long atMost = (long) format.rowBytes() * format.size().height() / 1000 * 1001 + 64L * count + 65536;
        this.big = atMost > CLASSIC_LIMIT;
        this.position = big ? 16 : 8;
    }

    @Override
    public Filler filler() {
        Deflating deflating = Deflating.of(format.level());
        int step = format.channels();
        return new StripPacker(format, 0) {
            @Override
            void filter(byte[] row, byte[] strip, int at) {
                if (format.bits() == 8) {
                    Differences.ofBytes(row, step, strip, at);
                } else {
                    Differences.ofShorts(row, step, strip, at);
                }
            }

            @Override
            Packed pack(byte[] strip, int length, boolean last) {
                return new PackedStrip(deflating.wrapped(strip, length), 0, length);
            }
        };
    }

    @Override
    public void take(Strip strip) throws IOException {
        byte[] data = ((PackedStrip) strip).data();
        offsets[strips] = position;
        lengths[strips] = data.length;
        strips++;
        write(ByteBuffer.wrap(data));
        if ((position & 1) == 1) {
            write(ByteBuffer.allocate(1));
        }
    }

    @Override
    public boolean wantsEvenStrips() {
        return true;
    }

    @Override
    public long finish() throws IOException {
        TiffDirectory directory = new TiffDirectory(big);
        boolean grey = format.channels() == 1;
        directory.longs(TiffDirectory.IMAGE_WIDTH, format.size().width());
        directory.longs(TiffDirectory.IMAGE_LENGTH, format.size().height());
        directory.shorts(TiffDirectory.BITS_PER_SAMPLE, repeated(format.bits()));
        directory.shorts(TiffDirectory.COMPRESSION, 8);
        directory.shorts(TiffDirectory.PHOTOMETRIC, grey ? 1 : 2);
        directory.offsets(TiffDirectory.STRIP_OFFSETS, offsets);
        directory.shorts(TiffDirectory.SAMPLES_PER_PIXEL, format.channels());
        directory.longs(TiffDirectory.ROWS_PER_STRIP, stripRows);
        directory.offsets(TiffDirectory.STRIP_BYTE_COUNTS, lengths);
        directory.rational(TiffDirectory.X_RESOLUTION, format.dpi());
        directory.rational(TiffDirectory.Y_RESOLUTION, format.dpi());
        directory.shorts(TiffDirectory.PLANAR_CONFIGURATION, 1);
        directory.shorts(TiffDirectory.RESOLUTION_UNIT, 2);
        directory.ascii(TiffDirectory.SOFTWARE, "Adumbrate".getBytes(StandardCharsets.US_ASCII));
        directory.shorts(TiffDirectory.PREDICTOR, 2);
        directory.undefined(TiffDirectory.ICC_PROFILE, OutputProfile.of(format.channels(), format.transfer()));
        long at = position;
        write(directory.bytes(at));
        ByteBuffer header = TiffDirectory.header(big, at);
        while (header.hasRemaining()) {
            channel.write(header, header.position());
        }
        return file.commit();
    }

    private int[] repeated(int value) {
        int[] values = new int[format.channels()];
        java.util.Arrays.fill(values, value);
        return values;
    }

    private void write(ByteBuffer data) throws IOException {
        try {
            while (data.hasRemaining()) {
                position += channel.write(data, position);
            }
        } catch (IOException e) {
            throw OutputFile.fault(file.target(), e);
        }
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
