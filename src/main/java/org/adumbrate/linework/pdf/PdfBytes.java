package org.adumbrate.linework.pdf;

import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.io.RandomAccessReadBufferedFile;

/** The bytes of a PDF without what stands behind its end, where the library would look for the cross-reference table in vain. */
final class PdfBytes extends RandomAccessReadBufferedFile {
    private final long end;

    /** @param end the number of bytes that belong to the document */
    PdfBytes(Path file, long end) throws IOException {
        super(file);
        this.end = end;
    }

    @Override
    public long length() {
        return end;
    }

    @Override
    public boolean isEOF() throws IOException {
        return getPosition() >= end;
    }

    @Override
    public int read() throws IOException {
        return isEOF() ? -1 : super.read();
    }

    @Override
    public int read(byte[] bytes, int from, int count) throws IOException {
        return isEOF() ? -1 : super.read(bytes, from, (int) Math.min(count, end - getPosition()));
    }
}
