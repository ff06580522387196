package org.adumbrate.raster.decode.library;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import javax.imageio.stream.ImageInputStreamImpl;
import org.adumbrate.raster.decode.source.SourceFile;

/** Bytes in memory followed by the rest of a file, as one stream for an image library; buffered. */
public final class SplicedInput extends ImageInputStreamImpl {
    private final ByteBuffer head;
    private final RandomAccessFile file;
    private final long tailAt;
    private final byte[] window = new byte[1 << 15];
    private long windowAt;
    private int windowLength;
    private boolean ranOut;

    /**
     * @param head the bytes that come first
     * @param source the file
     * @param tailAt where in it the rest begins
     */
    public SplicedInput(ByteBuffer head, SourceFile source, long tailAt) throws IOException {
        this.head = head;
        this.file = new RandomAccessFile(source.path().toFile(), "r");
        this.tailAt = tailAt;
    }

    /** A file alone. */
    public SplicedInput(SourceFile source) throws IOException {
        this(ByteBuffer.allocate(0), source, 0);
    }

    /** Whether more was asked for than there is. */
    public boolean ranOut() {
        return ranOut;
    }

    @Override
    public long length() {
        try {
            return head.limit() + file.length() - tailAt;
        } catch (IOException e) {
            return -1;
        }
    }

    @Override
    public int read() throws IOException {
        checkClosed();
        bitOffset = 0;
        long at = tailAt + streamPos - head.limit();
        if (streamPos >= head.limit() && at >= windowAt && at < windowAt + windowLength) {
            streamPos++;
            return window[(int) (at - windowAt)] & 0xff;
        }
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
        checkClosed();
        bitOffset = 0;
        int count;
        if (streamPos < head.limit()) {
            count = (int) Math.min(length, head.limit() - streamPos);
            head.get((int) streamPos, into, offset, count);
        } else {
            count = readFile(tailAt + streamPos - head.limit(), into, offset, length);
        }
        if (count < 0) {
            ranOut = true;
            return -1;
        }
        streamPos += count;
        return count;
    }

    private int readFile(long at, byte[] into, int offset, int length) throws IOException {
        boolean within = at >= windowAt && at < windowAt + windowLength;
        if (!within && length >= window.length) {
            file.seek(at);
            return file.read(into, offset, length);
        }
        if (!within) {
            file.seek(at);
            windowAt = at;
            windowLength = Math.max(0, file.read(window));
        }
        int from = (int) (at - windowAt);
        int count = Math.min(length, windowLength - from);
        System.arraycopy(window, from, into, offset, Math.max(0, count));
        return count > 0 || length == 0 ? count : -1;
    }

    @Override
    public void close() throws IOException {
        super.close();
        file.close();
    }
}
