package org.adumbrate.raster.decode;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import javax.imageio.stream.ImageInputStreamImpl;

/** Bytes in memory followed by the rest of a file, as one stream for an image library. */
final class SplicedInput extends ImageInputStreamImpl {
    private final ByteBuffer head;
    private final RandomAccessFile file;
    private final long tailAt;
    private boolean ranOut;

    /**
     * @param head the bytes that come first
     * @param source the file
     * @param tailAt where in it the rest begins
     */
    SplicedInput(ByteBuffer head, SourceFile source, long tailAt) throws IOException {
        this.head = head;
        this.file = new RandomAccessFile(source.path().toFile(), "r");
        this.tailAt = tailAt;
    }

    /** Whether more was asked for than there is. */
    boolean ranOut() {
        return ranOut;
    }

    @Override
    public int read() throws IOException {
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
            file.seek(tailAt + streamPos - head.limit());
            count = file.read(into, offset, length);
        }
        if (count < 0) {
            ranOut = true;
            return -1;
        }
        streamPos += count;
        return count;
    }

    @Override
    public void close() throws IOException {
        super.close();
        file.close();
    }
}
