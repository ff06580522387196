package org.adumbrate.raster.encode;

import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.zip.CRC32;
import org.adumbrate.fault.OutputFault;
import org.adumbrate.geometry.Length;
import org.adumbrate.output.OutputFile;

/** Writes a PNG (W3C, third edition, 2025) with its resolution and colour profile. */
public final class PngEncoder implements StripEncoder {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};

    /** Puts a whole PNG where it belongs. */
    private interface Commit {
        long run() throws IOException;
    }

    private final OutputStream out;
    private final Commit commit;
    private final Closeable target;
    private final FlateRowsEncoder rows;

    /**
     * Begins a PNG beside its target.
     *
     * @throws OutputFault if it cannot be written there
     */
    public PngEncoder(Path target, PictureFormat format) throws IOException {
        this(OutputFile.begin(target), format);
    }

    private PngEncoder(OutputFile file, PictureFormat format) throws IOException {
        this(file.stream(), file::commit, file, format);
    }

    private PngEncoder(OutputStream out, Commit commit, Closeable target, PictureFormat format) throws IOException {
        this.out = out;
        this.commit = commit;
        this.target = target;
        this.rows = new FlateRowsEncoder(format, new DataChunks());
        try {
            writeHead(format);
        } catch (IOException e) {
            target.close();
            throw e;
        }
    }

    /** Begins a PNG in memory. */
    public static PngEncoder into(ByteArrayOutputStream memory, PictureFormat format) throws IOException {
        return new PngEncoder(memory, memory::size, memory, format);
    }

    private void writeHead(PictureFormat format) throws IOException {
        out.write(SIGNATURE);
        boolean grey = format.channels() == 1;
        ByteBuffer header = ByteBuffer.allocate(13)
                .putInt(format.size().width())
                .putInt(format.size().height())
                .put((byte) format.bits())
                .put((byte) (grey ? 0 : 2));
        chunk("IHDR", header.array(), 13);
        boolean linear = format.transfer() == Transfer.LINEAR;
        String called = linear ? "Linear light" : grey ? "Grey with the sRGB curve" : "sRGB";
        byte[] name = called.getBytes(StandardCharsets.ISO_8859_1);
        byte[] profile = OutputProfile.of(format.channels(), format.transfer());
        byte[] packed = Deflating.of(9).wrapped(profile, profile.length);
        ByteBuffer icc = ByteBuffer.allocate(name.length + 2 + packed.length)
                .put(name)
                .putShort((short) 0)
                .put(packed);
        chunk("iCCP", icc.array(), icc.capacity());
        int perMetre = (int) Math.round(format.dpi() * 1000 / Length.MM_PER_INCH);
        ByteBuffer resolution =
                ByteBuffer.allocate(9).putInt(perMetre).putInt(perMetre).put((byte) 1);
        chunk("pHYs", resolution.array(), 9);
    }

    private void chunk(String type, byte[] data, int length) throws IOException {
        byte[] name = type.getBytes(StandardCharsets.US_ASCII);
        CRC32 sum = new CRC32();
        sum.update(name);
        sum.update(data, 0, length);
        out.write(ByteBuffer.allocate(8).putInt(length).put(name).array());
        out.write(data, 0, length);
        out.write(ByteBuffer.allocate(4).putInt((int) sum.getValue()).array());
    }

    /** Gathers image data into chunks of a fair size. */
    private final class DataChunks extends OutputStream {
        private final byte[] buffer = new byte[1 << 18];
        private int filled;

        @Override
        public void write(int b) throws IOException {
            buffer[filled++] = (byte) b;
            flushIfFull();
        }

        @Override
        public void write(byte[] data, int from, int count) throws IOException {
            for (int done = 0; done < count; ) {
                int some = Math.min(count - done, buffer.length - filled);
                System.arraycopy(data, from + done, buffer, filled, some);
                filled += some;
                done += some;
                flushIfFull();
            }
        }

        private void flushIfFull() throws IOException {
            if (filled == buffer.length) {
                end();
            }
        }

        private void end() throws IOException {
            if (filled > 0) {
                chunk("IDAT", buffer, filled);
                filled = 0;
            }
        }

        @Override
        public void close() throws IOException {
            end();
        }
    }

    @Override
    public Filler filler() {
        return rows.filler();
    }

    @Override
    public void take(Strip strip) throws IOException {
        rows.take(strip);
    }

    @Override
    public long finish() throws IOException {
        rows.finish();
        chunk("IEND", new byte[0], 0);
        return commit.run();
    }

    @Override
    public void close() throws IOException {
        target.close();
    }
}
