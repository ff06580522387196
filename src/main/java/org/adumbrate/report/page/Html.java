package org.adumbrate.report.page;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Base64;
import java.util.Deque;
import java.util.Set;
import org.adumbrate.fault.Shown;

/** Writes HTML, with SVG in it, element by element; text and attributes are escaped. */
final class Html {
    /** Elements of HTML that have no end (HTML Living Standard, 13.1.2). */
    private static final Set<String> VOID = Set.of("meta", "img", "input", "br", "col");

    private final OutputStream out;
    private final Deque<String> open = new ArrayDeque<>();

    Html(OutputStream out) {
        this.out = out;
    }

    /** Opens an element; attributes are names and values by turns. */
    Html open(String name, String... attributes) throws IOException {
        tag(name, attributes);
        raw(">");
        open.push(name);
        return this;
    }

    /** Closes the element that was opened last. */
    Html close() throws IOException {
        return raw("</" + open.pop() + ">");
    }

    /** Closes it and begins a new line. */
    Html closeLine() throws IOException {
        return close().raw("\n");
    }

    /** An element without content. */
    Html empty(String name, String... attributes) throws IOException {
        tag(name, attributes);
        return raw(VOID.contains(name) ? ">\n" : "/>\n");
    }

    /** An element with text in it. */
    Html element(String name, String text, String... attributes) throws IOException {
        return open(name, attributes).text(text).closeLine();
    }

    /** Text. */
    Html text(String text) throws IOException {
        return raw(escaped(text));
    }

    /** What is HTML already. */
    Html raw(String html) throws IOException {
        out.write(html.getBytes(StandardCharsets.UTF_8));
        return this;
    }

    /** An {@code img} that holds its picture. */
    Html picture(Picture picture, String alt, String... attributes) throws IOException {
        tag("img", attributes);
        raw(" width=\"" + picture.size().width() + "\" height=\""
                + picture.size().height() + "\" alt=\"");
        text(alt).raw("\" src=\"").data(picture.png());
        return raw("\">\n");
    }

    /** A PNG as a URI that holds all of it (RFC 2397). */
    Html data(Picture.Png png) throws IOException {
        raw("data:image/png;base64,");
        try (InputStream in = png.open();
                OutputStream encoded = Base64.getEncoder().wrap(keptOpen())) {
            in.transferTo(encoded);
        }
        return this;
    }

    private OutputStream keptOpen() {
        return new FilterOutputStream(out) {
            @Override
            public void write(byte[] bytes, int from, int length) throws IOException {
                out.write(bytes, from, length);
            }

            @Override
            public void close() {
                // whoever opened it closes it
            }
        };
    }

    private void tag(String name, String... attributes) throws IOException {
        raw("<" + name);
        for (int k = 0; k < attributes.length; k += 2) {
            raw(" " + attributes[k] + "=\"" + escaped(attributes[k + 1]) + "\"");
        }
    }

    static String escaped(String text) {
        return Shown.lines(text)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
