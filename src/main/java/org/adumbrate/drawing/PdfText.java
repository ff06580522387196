package org.adumbrate.drawing;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;

/** Text strings of PDF (ISO 32000-1, 7.9.2.2). */
final class PdfText {
    private PdfText() {}

    /** A text as it stands in the file: as it is where it is plain, as UTF-16 in hexadecimal digits where it is not. */
    static String of(String text) {
        if (text.matches("[ -~]*")) {
            return "(" + text.replaceAll("([\\\\()])", "\\\\$1") + ")";
        }
        return "<FEFF" + HexFormat.of().withUpperCase().formatHex(text.getBytes(StandardCharsets.UTF_16BE)) + ">";
    }
}
