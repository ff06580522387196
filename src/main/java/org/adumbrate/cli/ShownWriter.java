package org.adumbrate.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.util.Arrays;
import java.util.Locale;
import org.adumbrate.fault.Shown;

/**
 * The one way by which text reaches the terminal, or whatever stands in for it. What is put into a format stays in its line, and
 * no name commands the terminal or turns the direction of the text around it.
 */
final class ShownWriter extends PrintWriter {
    private static final char ESCAPE = '\u001b';

    /**
     * A writer to another.
     *
     * @param colored true if the program colours what it writes, which is done by escapes
     */
    ShownWriter(Writer to, boolean colored) {
        super(new Shower(to, colored), /* autoFlush= */ true);
    }

    @Override
    public PrintWriter format(String format, Object... values) {
        return super.format(format, shown(values));
    }

    @Override
    public PrintWriter format(Locale locale, String format, Object... values) {
        return super.format(locale, format, shown(values));
    }

    private static Object[] shown(Object... values) {
        return Arrays.stream(values)
                .map(value -> value == null || value instanceof Number ? value : Shown.line(value.toString()))
                .toArray();
    }

    private static final class Shower extends FilterWriter {
        private final boolean colored;

        Shower(Writer to, boolean colored) {
            super(to);
            this.colored = colored;
        }

        @Override
        public void write(int c) throws IOException {
            boolean own = c == '\n' || c == '\t' || c == '\r' || (colored && c == ESCAPE);
            if (Shown.isUnfit(c) && !own) {
                out.write(Shown.code(c));
            } else {
                out.write(c);
            }
        }

        @Override
        public void write(char[] text, int from, int length) throws IOException {
            write(new String(text, from, length), 0, length);
        }

        @Override
        public void write(String text, int from, int length) throws IOException {
            if (text.chars().noneMatch(Shown::isUnfit)) {
                out.write(text, from, length);
                return;
            }
            for (int k = from; k < from + length; k++) {
                write(text.charAt(k));
            }
        }
    }
}
