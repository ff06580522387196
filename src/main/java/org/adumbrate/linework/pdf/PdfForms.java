package org.adumbrate.linework.pdf;

import java.io.IOException;
import java.util.IdentityHashMap;
import org.apache.pdfbox.cos.COSStream;

/** The content of forms, each checked and unpacked once as long as there is room, for it may be drawn many times. */
final class PdfForms {
    private static final int MOST_BYTES_KEPT = 16_000_000;

    private final IdentityHashMap<COSStream, byte[]> kept = new IdentityHashMap<>();
    private long bytes;

    /** @throws IOException if it is damaged, or far too much */
    byte[] content(COSStream form) throws IOException {
        byte[] content = kept.get(form);
        if (content == null) {
            PdfIntegrity.check(form);
            content = PdfContent.of(form, PdfContent.MOST_BYTES);
            if (bytes + content.length <= MOST_BYTES_KEPT) {
                bytes += content.length;
                kept.put(form, content);
            }
        }
        return content;
    }
}
