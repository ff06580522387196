package org.adumbrate.linework.pdf;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds where a PDF ends (ISO 32000-1, 7.5.5). Mail, tapes and file systems pad files, and some programs write behind the end;
 * none of that belongs to the document. Where objects stand behind the last end mark, the file was cut short: a file that
 * was saved again and again has an end mark for each time.
 */
final class PdfEnd {
    private static final int WINDOW = 1 << 16;

    /** Longer than any of the marks with the numbers in it; windows overlap by so much. */
    private static final int OVERLAP = 64;

    /** The end mark; if only that is missing, the place of the cross-reference table, which stands just before it. */
    private static final Pattern END = Pattern.compile("%%EOF|startxref\\s{1,4}\\d{1,20}\\s");

    /** The head of an object (ISO 32000-1, 7.3.10). */
    private static final Pattern OBJECT = Pattern.compile("\\d\\s{1,9}\\d{1,5}\\s{1,9}obj\\b");

    private PdfEnd() {}

    /** The number of bytes up to the end of the last end mark; nothing if the file is cut short. */
    static OptionalLong of(Path path) throws IOException {
        try (FileChannel file = FileChannel.open(path)) {
            byte[] bytes = new byte[WINDOW];
            long to = file.size();
            while (to > 0) {
                long from = Math.max(0, to - WINDOW);
                String window = read(file, from, bytes, (int) (to - from));
                int end = last(END, window);
                if (last(OBJECT, window) > end) {
                    return OptionalLong.empty();
                }
                if (end >= 0) {
                    return OptionalLong.of(from + end);
                }
                to = from == 0 ? 0 : from + OVERLAP;
            }
            return OptionalLong.empty();
        }
    }

    private static String read(FileChannel file, long from, byte[] bytes, int count) throws IOException {
        ByteBuffer buffer = ByteBuffer.wrap(bytes, 0, count);
        while (buffer.hasRemaining() && file.read(buffer, from + buffer.position()) >= 0) {
            // goes on until the window is full, or the file ends
        }
        return new String(bytes, 0, buffer.position(), StandardCharsets.ISO_8859_1);
    }

    /** Where the last match ends; -1 if there is none. */
    private static int last(Pattern pattern, String window) {
        int end = -1;
        Matcher marks = pattern.matcher(window);
        while (marks.find()) {
            end = marks.end();
        }
        return end;
    }
}
