package org.adumbrate.raster;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.output.TemporaryFile;

/** Keeps every row in a temporary file, for rasters that are needed whole and are larger than memory allows. */
final class SpillStore implements RowStore {
    private final int channels;
    private final SampleType type;
    private final long rowBytes;
    private final FileChannel file;

    SpillStore(PixelSize size, int channels, SampleType type) throws IOException {
        this.channels = channels;
        this.type = type;
        this.rowBytes = (long) size.width() * channels * type.bytes();
        this.file = TemporaryFile.open();
    }

    @Override
    public void put(int x, int y, int pixels, Samples samples, int offset) {
        int count = pixels * channels;
        ByteBuffer bytes = ByteBuffer.allocate(count * type.bytes());
        if (samples instanceof Samples.Bytes run) {
            bytes.put(run.values(), offset, count);
        } else if (samples instanceof Samples.Shorts run) {
            bytes.asShortBuffer().put(run.values(), offset, count);
        } else if (samples instanceof Samples.Floats run) {
            bytes.asFloatBuffer().put(run.values(), offset, count);
        }
        bytes.rewind().limit(bytes.capacity());
        long at = y * rowBytes + (long) x * channels * type.bytes();
        try {
            while (bytes.hasRemaining()) {
                at += file.write(bytes, at);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(TemporaryFile.fault(e));
        }
    }

    @Override
    public void decode(LightDecoder decoder, int x, int y, int pixels, float[] light, int at) {
        int count = pixels * channels;
        ByteBuffer bytes = ByteBuffer.allocate(count * type.bytes());
        long from = y * rowBytes + (long) x * channels * type.bytes();
        try {
            while (bytes.hasRemaining()) {
                int got = file.read(bytes, from + bytes.position());
                if (got < 0) {
                    throw new UncheckedIOException(new IOException("row " + y + " was never decoded"));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(TemporaryFile.fault(e));
        }
        bytes.flip();
        Samples samples = Samples.allocate(type, count);
        if (samples instanceof Samples.Bytes run) {
            bytes.get(run.values());
        } else if (samples instanceof Samples.Shorts run) {
            bytes.asShortBuffer().get(run.values());
        } else if (samples instanceof Samples.Floats run) {
            bytes.asFloatBuffer().get(run.values());
        }
        decoder.decode(samples, 0, pixels, light, at);
    }

    @Override
    public void close() {
        try {
            file.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
