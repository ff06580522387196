package org.adumbrate.drawing;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * The frame of a PDF file (ISO 32000-1, 7.5): numbered objects one after the other, then the table of where each begins.
 * Written by hand so that a raster of any size passes through once, into its final place, while it is being made.
 */
final class PdfFile {
    private static final int BEST = 9;
    private static final int BUFFER = 1 << 14;

    private final Counted out;
    private final List<Long> offsets = new ArrayList<>();
    private boolean streaming;

    PdfFile(OutputStream out) throws IOException {
        this.out = new Counted(out);
        // the second line marks the file as binary (7.5.2)
        write("%PDF-1.7\n%\u00e2\u00e3\u00cf\u00d3\n");
    }

    /** A number for an object that is written later. */
    int reserve() {
        offsets.add(0L);
        return offsets.size();
    }

    /** How another object refers to one. */
    static String reference(int number) {
        return number + " 0 R";
    }

    /** Writes an object. */
    void object(int number, String content) throws IOException {
        begin(number);
        write(content + "\nendobj\n");
    }

    /** Writes an object and numbers it. */
    int object(String content) throws IOException {
        int number = reserve();
        object(number, content);
        return number;
    }

    /**
     * Opens a stream whose bytes are given as they are to stand, and whose length is not known yet. Nothing else may be
     * written until it is closed.
     *
     * @param entries the entries of its dictionary besides the length
     */
    OutputStream open(int number, String entries) throws IOException {
        int length = reserve();
        begin(number);
        write("<<" + entries + "/Length " + reference(length) + ">>stream\n");
        streaming = true;
        return new Open(length, out.count);
    }

    /** As {@link #open}, for bytes that are compressed on the way. */
    OutputStream openCompressed(int number, String entries) throws IOException {
        Deflater deflater = new Deflater(BEST);
        return new DeflaterOutputStream(open(number, entries + "/Filter/FlateDecode"), deflater, BUFFER) {
            @Override
            public void close() throws IOException {
                super.close();
                deflater.end();
            }
        };
    }

    /**
     * Writes the table of objects and the trailer. The file's identifier is made of its own bytes, so that equal files have
     * equal ones.
     */
    void finish(int catalog, int info) throws IOException {
        String identifier = String.format(Locale.ROOT, "<%08X%016X>", out.sum.getValue(), out.count);
        long table = out.count;
        StringBuilder text = new StringBuilder("xref\n0 " + (offsets.size() + 1) + "\n0000000000 65535 f \n");
        for (long offset : offsets) {
            text.append(String.format(Locale.ROOT, "%010d 00000 n \n", offset));
        }
        write(text + "trailer\n<</Size " + (offsets.size() + 1) + "/Root " + reference(catalog) + "/Info "
                + reference(info) + "/ID[" + identifier + identifier + "]>>\nstartxref\n" + table + "\n%%EOF\n");
    }

    private void begin(int number) throws IOException {
        if (streaming) {
            throw new IllegalStateException("a stream of the file is still open");
        }
        offsets.set(number - 1, out.count);
        write(number + " 0 obj\n");
    }

    private void write(String text) throws IOException {
        out.write(text.getBytes(StandardCharsets.ISO_8859_1));
    }

    /** Knows how many bytes have gone by, and their check sum. */
    private static final class Counted extends FilterOutputStream {
        private final CRC32 sum = new CRC32();
        private long count;

        Counted(OutputStream out) {
            super(out);
        }

        @Override
        public void write(int b) throws IOException {
            out.write(b);
            sum.update(b);
            count++;
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            out.write(bytes, from, length);
            sum.update(bytes, from, length);
            count += length;
        }
    }

    /** A stream that notes its length in an object of its own when it ends. */
    private final class Open extends FilterOutputStream {
        private final int lengthNumber;
        private final long start;
        private boolean closed;

        Open(int lengthNumber, long start) {
            super(PdfFile.this.out);
            this.lengthNumber = lengthNumber;
            this.start = start;
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            out.write(bytes, from, length);
        }

        @Override
        public void close() throws IOException {
            if (!closed) {
                closed = true;
                streaming = false;
                long length = PdfFile.this.out.count - start;
                PdfFile.this.write("\nendstream\nendobj\n");
                object(lengthNumber, Long.toString(length));
            }
        }
    }
}
