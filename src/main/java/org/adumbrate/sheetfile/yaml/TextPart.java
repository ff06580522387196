package org.adumbrate.sheetfile.yaml;

import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * A piece of a text as it stands there, with exact places, counted in chars of the text. Other than nodes, parts know aliases.
 *
 * @param kind what it is
 * @param from where it begins, with its anchor
 * @param content where it begins without its anchor
 * @param to where it ends: behind its last character, or that of its last leaf; where it began, if it is empty
 * @param style how it is written
 * @param text of a scalar: what it says
 * @param items of a list
 * @param entries of a mapping, in their order, also those that are given twice
 * @param target of an alias: what it stands for
 * @param node the same for those who read; that of what it stands for, where it is an alias
 */
public record TextPart(
        Kind kind,
        int from,
        int content,
        int to,
        Style style,
        String text,
        List<TextPart> items,
        List<Entry> entries,
        Optional<TextPart> target,
        Node node) {
    /** What a part may be. */
    public enum Kind {
        /** A single value. */
        SCALAR,
        /** Items. */
        LIST,
        /** Keys with values. */
        MAPPING,
        /** A name of another part. */
        ALIAS
    }

    /** How a part is written. */
    public enum Style {
        /** A scalar without quotes, or nothing at all. */
        PLAIN,
        /** In single quotes. */
        SINGLE,
        /** In double quotes. */
        DOUBLE,
        /** A scalar, list or mapping in lines of its own, by indentation. */
        BLOCK,
        /** In brackets. */
        FLOW
    }

    /** A key with its value. */
    public record Entry(TextPart key, TextPart value) {}

    /** True where nothing is written at all, as after {@code key:}. */
    public boolean isNothing() {
        return kind == Kind.SCALAR && style == Style.PLAIN && content == to;
    }

    /** What it stands for, if it is an alias; otherwise itself. */
    public TextPart meant() {
        return target.orElse(this);
    }

    /** The entry of a key, the first if it is given twice. */
    public Optional<Entry> entry(String key) {
        return entries.stream().filter(entry -> entry.key().text().equals(key)).findFirst();
    }

    /** True for a list or a mapping. */
    public boolean isCollection() {
        return kind == Kind.LIST || kind == Kind.MAPPING;
    }
}
