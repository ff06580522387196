package org.adumbrate.linework.pdf;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.adumbrate.linework.clip.TooIntricateException;

/**
 * Looks at the packed objects of a PDF (ISO 32000-1, 7.5.7 and 7.5.8) before the library does, which unpacks them whole when it
 * opens the file.
 */
final class PdfPacking {
    /** A page of a hundred thousand objects has some 10 MB of them. */
    private static final long MOST_BYTES = 1 << 26;

    /** How far before its data the dictionary of a stream is looked for. */
    private static final int DICTIONARY = 2000;

    private static final int WINDOW = 1 << 20;
    private static final byte[] STREAM = "stream".getBytes(StandardCharsets.US_ASCII);

    private final FileChannel file;
    private long unpacked;

    private PdfPacking(FileChannel file) {
        this.file = file;
    }

    /** @throws TooIntricateException if its packed objects are far too many */
    static void check(Path path) throws IOException {
        try (FileChannel file = FileChannel.open(path)) {
            new PdfPacking(file).check();
        }
    }

    /** Windows overlap, so that a keyword and the dictionary before it are met together. */
    private void check() throws IOException {
        byte[] window = new byte[WINDOW];
        for (long at = 0; at < file.size(); at += WINDOW - DICTIONARY - STREAM.length) {
            int length = Math.max(0, file.read(ByteBuffer.wrap(window), at));
            for (int k = at == 0 ? 0 : DICTIONARY; k + STREAM.length < length; k++) {
                if (isStream(window, k)) {
                    check(window, k, at);
                }
            }
        }
    }

    private static boolean isStream(byte[] window, int at) {
        for (int k = 0; k < STREAM.length; k++) {
            if (window[at + k] != STREAM[k]) {
                return false;
            }
        }
        return at == 0 || window[at - 1] != 'd'; // of endstream
    }

    private void check(byte[] window, int at, long windowAt) throws IOException {
        int from = Math.max(0, at - DICTIONARY);
        String before = new String(window, from, at - from, StandardCharsets.ISO_8859_1);
        String dictionary = before.substring(Math.max(0, before.lastIndexOf(" obj")));
        if (dictionary.contains("/ObjStm") || dictionary.contains("/XRef")) {
            unpack(windowAt + at + STREAM.length);
        }
    }

    /** Counts what a stream unpacks to; one that is packed in another way, or encrypted, is not told from damage here. */
    private void unpack(long from) throws IOException {
        ByteBuffer packed = ByteBuffer.allocate(1 << 13);
        byte[] plain = new byte[1 << 16];
        Inflater inflater = new Inflater();
        try {
            long at = from;
            while (!inflater.finished()) {
                if (inflater.needsInput()) {
                    int count = file.read(packed.clear(), at);
                    if (count <= 0) {
                        return;
                    }
                    int blanks = at == from ? blanks(packed) : 0;
                    inflater.setInput(packed.array(), blanks, count - blanks);
                    at += count;
                }
                unpacked += inflater.inflate(plain);
                if (inflater.needsDictionary()) {
                    return;
                }
                if (unpacked > MOST_BYTES) {
                    throw new TooIntricateException(
                            "has packed objects that unpack to more than " + MOST_BYTES + " bytes");
                }
            }
        } catch (DataFormatException e) {
            // the library will find out, and tell
        } finally {
            inflater.end();
        }
    }

    private static int blanks(ByteBuffer data) {
        int blanks = 0;
        while (blanks < data.position() && Character.isWhitespace(data.get(blanks))) {
            blanks++;
        }
        return blanks;
    }
}
