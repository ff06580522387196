package org.adumbrate.raster.decode.metadata;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import org.adumbrate.raster.decode.source.SourceFile;

/** The bytes of a TIFF, in a file or in memory, read here and there. */
final class TiffBytes {
    private final SourceFile file;
    private final FileChannel channel;
    private final ByteBuffer memory;
    private final long length;

    TiffBytes(SourceFile file, FileChannel channel) throws IOException {
        this.file = file;
        this.channel = channel;
        this.memory = ByteBuffer.allocate(0);
        this.length = channel.size();
    }

    TiffBytes(SourceFile file, ByteBuffer memory) {
        this.file = file;
        this.channel = null;
        this.memory = memory;
        this.length = memory.limit();
    }

    /** How many there are. */
    long length() {
        return length;
    }

    /** Some of them. */
    ByteBuffer read(long at, int count) throws IOException {
        if (at < 0 || count > length || at > length - count) {
            throw file.endsEarly("before its directory or what that points to");
        }
        ByteBuffer bytes = ByteBuffer.allocate(count);
        if (channel == null) {
            return bytes.put(0, memory, (int) at, count);
        }
        while (bytes.hasRemaining()) {
            if (channel.read(bytes, at + bytes.position()) < 0) {
                throw file.endsEarly("in its directory");
            }
        }
        return bytes.rewind();
    }
}
