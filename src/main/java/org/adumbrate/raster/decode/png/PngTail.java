package org.adumbrate.raster.decode.png;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import org.adumbrate.raster.decode.source.SourceFile;

/**
 * Looks behind the image data of a PNG for chunks that say how the picture is to be seen: text and Exif may stand there too (3rd
 * edition, table 7). What is broken there ends the search; that the data is sound is found when it is read.
 */
final class PngTail {
    private static final int LONGEST = 1 << 24;
    private static final int FRAME = 12;

    private final SourceFile file;
    private final FileChannel channel;
    private final Taker taker;

    /** Takes a chunk. */
    @FunctionalInterface
    interface Taker {
        void take(String type, byte[] body) throws IOException;
    }

    private PngTail(SourceFile file, FileChannel channel, Taker taker) {
        this.file = file;
        this.channel = channel;
        this.taker = taker;
    }

    /**
     * Goes through the chunks.
     *
     * @param from where the first chunk of image data begins
     */
    static void read(SourceFile file, long from, Taker taker) throws IOException {
        try (FileChannel channel = FileChannel.open(file.path())) {
            new PngTail(file, channel, taker).read(from);
        }
    }

    private void read(long from) throws IOException {
        long at = from;
        while (file.bytes() - at >= FRAME) {
            byte[] head = bytes(at, 8);
            long length = ByteBuffer.wrap(head).getInt() & 0xffffffffL;
            String type = new String(head, 4, 4, StandardCharsets.ISO_8859_1);
            if (length > file.bytes() - at - FRAME || type.equals("IEND")) {
                return;
            }
            if (length <= LONGEST && (type.equals("eXIf") || PngText.isText(type))) {
                taker.take(type, bytes(at + 8, (int) length));
            }
            at += length + FRAME;
        }
    }

    private byte[] bytes(long at, int count) throws IOException {
        byte[] array = new byte[count];
        ByteBuffer bytes = ByteBuffer.wrap(array);
        while (bytes.hasRemaining()) {
            if (channel.read(bytes, at + bytes.position()) < 0) {
                throw file.endsEarly("within a chunk");
            }
        }
        return array;
    }
}
