package org.adumbrate.linework.pdf;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds where a PDF ends (ISO 32000-1, 7.5.5). Mail, tapes and file systems pad files, and some programs write behind the end;
 * none of that belongs to the document. Where objects stand behind the last end mark, the file was cut short: a file that
 * was saved again and again has an end mark for each time. A file that never had one may have lost no more than its tail.
 */
final class PdfEnd {
    private static final int WINDOW = 1 << 16;

    /** Longer than any of the marks with the numbers in it; windows overlap by so much. */
    private static final int OVERLAP = 64;

    /** The end mark; if only that is missing, the place of the cross-reference table, which stands just before it. */
    private static final Pattern END = Pattern.compile("%%EOF|startxref\\s{1,4}\\d{1,20}\\s");

    /** The end of the first part of a linearised file, which is none (ISO 32000-1, F.3.4). */
    private static final Pattern FIRST_PART = Pattern.compile("startxref\\s{1,4}0\\s{1,4}(%%EOF)?");

    /** The head of an object (ISO 32000-1, 7.3.10). */
    private static final Pattern OBJECT = Pattern.compile("\\d{1,10}\\s{1,9}\\d{1,5}\\s{1,9}obj\\b");

    private static final Pattern END_OF_OBJECT = Pattern.compile("\\bendobj\\b");

    /**
     * An end.
     *
     * @param bytes how many belong to the document
     * @param isMarked whether the end mark is there; if not, objects may be missing
     */
    record End(long bytes, boolean isMarked) {}

    private PdfEnd() {}

    /** The end of a file; nothing if it is cut short. */
    static Optional<End> of(Path path) throws IOException {
        try (FileChannel file = FileChannel.open(path)) {
            byte[] bytes = new byte[WINDOW];
            long to = file.size();
            while (to > 0) {
                long from = Math.max(0, to - WINDOW);
                String window = read(file, from, bytes, (int) (to - from));
                int end = last(END, window).map(Matcher::end).orElse(-1);
                if (last(OBJECT, window).map(Matcher::end).orElse(-1) > end) {
                    return withoutMark(file, bytes);
                }
                if (end >= 0) {
                    return Optional.of(new End(from + end, /* isMarked= */ true));
                }
                to = from == 0 ? 0 : from + OVERLAP;
            }
            return Optional.empty();
        }
    }

    /** The end of the last whole object, if no end mark stands anywhere. */
    private static Optional<End> withoutMark(FileChannel file, byte[] bytes) throws IOException {
        long lastObject = -1;
        long lastEnd = -1;
        for (long from = 0; from < file.size(); from += WINDOW - OVERLAP) {
            String window = read(file, from, bytes, (int) Math.min(WINDOW, file.size() - from));
            if (END.matcher(FIRST_PART.matcher(window).replaceAll("")).find()) {
                return Optional.empty();
            }
            lastObject = Math.max(lastObject, from(last(OBJECT, window).map(Matcher::start), from));
            lastEnd = Math.max(lastEnd, from(last(END_OF_OBJECT, window).map(Matcher::end), from));
        }
        long end = lastEnd > lastObject ? file.size() : lastObject;
        return lastEnd < 0 ? Optional.empty() : Optional.of(new End(end, /* isMarked= */ false));
    }

    private static long from(Optional<Integer> found, long windowAt) {
        return found.map(at -> windowAt + at).orElse(-1L);
    }

    private static String read(FileChannel file, long from, byte[] bytes, int count) throws IOException {
        ByteBuffer buffer = ByteBuffer.wrap(bytes, 0, count);
        while (buffer.hasRemaining() && file.read(buffer, from + buffer.position()) >= 0) {
            // goes on until the window is full, or the file ends
        }
        return new String(bytes, 0, buffer.position(), StandardCharsets.ISO_8859_1);
    }

    /** The last match, if there is one. */
    private static Optional<Matcher> last(Pattern pattern, String window) {
        Matcher marks = pattern.matcher(window);
        Optional<Matcher> last = Optional.empty();
        while (marks.find()) {
            last = Optional.of(pattern.matcher(window).region(marks.start(), window.length()));
        }
        last.ifPresent(Matcher::find);
        return last;
    }
}
