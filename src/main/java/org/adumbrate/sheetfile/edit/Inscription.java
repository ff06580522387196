package org.adumbrate.sheetfile.edit;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.form.Form;
import org.adumbrate.sheetfile.form.Steps;
import org.adumbrate.sheetfile.yaml.TextPart;
import org.adumbrate.sheetfile.yaml.TextParts;
import org.snakeyaml.engine.v2.nodes.Tag;

/** How values are written: with quotes where they need them or where quotes stand, in brackets and braces on one line. */
final class Inscription {
    private static final Set<String> NOT_TEXTS = Set.of("number", "integer", "flag");

    private Inscription() {}

    /** A value on one line, as it may stand anywhere. */
    static String flow(TextPart value, Form form) {
        return switch (value.kind()) {
            case LIST -> items(value, leaf(form, value));
            case MAPPING ->
                value.entries().stream()
                        .map(entry -> entry(entry, leaf(form, value), true))
                        .collect(Collectors.joining(", ", "{ ", " }"))
                        .replace("{  }", "{}");
            default -> scalar(value.text(), leaf(form, value), TextPart.Style.PLAIN, true);
        };
    }

    private static String items(TextPart value, Form form) {
        StringBuilder text = new StringBuilder("[");
        for (int k = 0; k < value.items().size(); k++) {
            Form item = form.inner(Steps.item(k)).orElse(form);
            text.append(k == 0 ? "" : ", ").append(flow(value.items().get(k), item));
        }
        return text.append(']').toString();
    }

    /** A key with its value on one line. */
    static String entry(TextPart.Entry entry, Form form, boolean inFlow) {
        String key = entry.key().text();
        Form inner = form.inner(key).orElse(form);
        TextPart value = entry.value();
        String written = value.isCollection()
                ? flow(value, inner)
                : scalar(value.text(), leaf(inner, value), TextPart.Style.PLAIN, inFlow);
        return key(key, inFlow) + ": " + written;
    }

    /** A key, which is a text whatever it looks like. */
    static String key(String key, boolean inFlow) {
        return isPlain(key, inFlow) ? key : quoted(key);
    }

    /** The form of a scalar that may stand alone for a list or a mapping. */
    static Form leaf(Form form, TextPart value) {
        Form leaf = form;
        Optional<String> unsaid = leaf.unsaid(value.node());
        while (unsaid.isPresent()) {
            leaf = leaf.inner(unsaid.get()).orElseThrow();
            unsaid = leaf.unsaid(value.node());
        }
        return leaf;
    }

    /**
     * A scalar.
     *
     * @param style the style that stands there; quotes stay
     * @param inFlow true within brackets
     */
    static String scalar(String text, Form form, TextPart.Style style, boolean inFlow) {
        boolean hasControls = text.chars().anyMatch(c -> Character.isISOControl(c) || c == '\u2028' || c == '\u2029');
        if (style == TextPart.Style.SINGLE && !hasControls) {
            return "'" + text.replace("'", "''") + "'";
        }
        boolean isText = !NOT_TEXTS.contains(form.allowed().type());
        boolean needsQuotes = style == TextPart.Style.DOUBLE
                || hasControls
                || (isText && !TextParts.tag(text).equals(Tag.STR));
        return !needsQuotes && isPlain(text, inFlow) ? text : quoted(text);
    }

    /** What YAML will take a written scalar for. */
    static Tag tag(String written) {
        return written.startsWith("\"") || written.startsWith("'") ? Tag.STR : TextParts.tag(written);
    }

    /** True for a text that reads as itself without quotes. */
    private static boolean isPlain(String text, boolean inFlow) {
        if (text.isEmpty() || text.chars().anyMatch(Character::isISOControl)) {
            return false;
        }
        String sample = inFlow ? "[" + text + "]" : "k: " + text + "\n";
        try {
            TextPart root = TextParts.of(Path.of("value"), sample).orElseThrow();
            TextPart found =
                    inFlow ? root.items().get(0) : root.entries().get(0).value();
            return found.kind() == TextPart.Kind.SCALAR
                    && found.style() == TextPart.Style.PLAIN
                    && found.text().equals(text)
                    && found.to() - found.content() == text.length();
        } catch (SheetFileFault e) {
            return false;
        }
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().forEach(c -> {
            if (c == '"' || c == '\\') {
                quoted.append('\\').appendCodePoint(c);
            } else if (Character.isISOControl(c) || c == 0x2028 || c == 0x2029 || c == 0xFEFF) {
                quoted.append("\\u%04x".formatted(c));
            } else {
                quoted.appendCodePoint(c);
            }
        });
        return quoted.append('"').toString();
    }
}
