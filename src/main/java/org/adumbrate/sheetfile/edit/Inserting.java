package org.adumbrate.sheetfile.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.sheetfile.form.Field;
import org.adumbrate.sheetfile.form.Form;
import org.adumbrate.sheetfile.form.Steps;
import org.adumbrate.sheetfile.yaml.TextPart;

/** The splices that add keys to mappings and items to lists, in lines of their own or within brackets as the others are. */
record Inserting(Lines lines) {
    private static final String STEP = "  ";

    /** A key where the order of the schema has it, or behind the last one. */
    Splice entry(Route at, TextPart.Entry entry) throws Unfit {
        TextPart mapping = at.part().meant();
        Optional<TextPart.Entry> before = before(mapping, at.form(), entry.key().text());
        TextPart first =
                mapping.entries().isEmpty() ? mapping : mapping.entries().get(0).key();
        if (mapping.style() == TextPart.Style.FLOW) {
            String written = Inscription.entry(entry, at.form(), true);
            return mapping.entries().isEmpty()
                    ? new Splice(mapping.content(), mapping.to(), "{ " + written + " }")
                    : before.isPresent()
                            ? behind(mapping, before.get().value().to(), written)
                            : Splice.in(first.from(), written + ", ");
        }
        int column = mapping.content();
        String indent = lines.indent(column);
        List<String> written = written(entry, at.form(), at.isInFlow());
        if (before.isPresent()) {
            return below(before.get().value(), indent, written);
        }
        String ending = lines.ending(column);
        return Splice.in(first.from(), String.join(ending + indent, written) + ending + indent);
    }

    /** The last of the keys that the schema has before a key; the last of all where the schema has none of them. */
    private static Optional<TextPart.Entry> before(TextPart mapping, Form form, String key) {
        List<String> given =
                mapping.entries().stream().map(entry -> entry.key().text()).toList();
        List<String> order = form.fields(given).stream().map(Field::key).toList();
        int rank = order.indexOf(key);
        List<TextPart.Entry> all = mapping.entries();
        for (int k = all.size() - 1; k >= 0; k--) {
            int other = order.indexOf(given.get(k));
            if (rank < 0 || other < 0 || other < rank) {
                return Optional.of(all.get(k));
            }
        }
        return Optional.empty();
    }

    /** An item before that of an index, or behind the last. */
    Splice item(Route at, int index, TextPart value) throws Unfit {
        TextPart list = at.part().meant();
        Form form = at.form().inner(Steps.item(index)).orElseThrow();
        String written = written(value, form, true);
        int count = list.items().size();
        if (list.style() == TextPart.Style.FLOW) {
            return count == 0
                    ? new Splice(list.content(), list.to(), "[" + written + "]")
                    : index < count
                            ? Splice.in(list.items().get(index).from(), written + ", ")
                            : behind(list, list.items().get(count - 1).to(), written);
        }
        String indent = lines.indent(list.content());
        if (index == count) {
            return below(list.items().get(count - 1), indent, List.of("- " + written));
        }
        int dash = new Dashes(lines, list).at(index);
        return Splice.in(dash, "- " + written + lines.ending(dash) + indent);
    }

    /** What is wanted where a key has no value yet. */
    Splice within(Route at, TextPart value) throws Unfit {
        TextPart nothing = at.part();
        boolean isKeyed = at.last()
                .filter(turn -> turn.holder().kind() == TextPart.Kind.MAPPING)
                .isPresent();
        if (at.isInFlow() || !isKeyed || !lines.isDone(nothing.to())) {
            return Replacing.of(lines, nothing, Inscription.flow(value, at.form()));
        }
        Route.Turn turn = at.last().orElseThrow();
        String indent =
                lines.indent(turn.holder().entries().get(turn.index()).key().from()) + STEP;
        String ending = lines.ending(nothing.to());
        StringBuilder text = new StringBuilder();
        for (String line : below(value, at.form())) {
            text.append(ending).append(indent).append(line);
        }
        return Splice.in(lines.end(nothing.to()), text.toString());
    }

    private static String written(TextPart value, Form form, boolean inFlow) {
        return value.isCollection()
                ? Inscription.flow(value, form)
                : Inscription.scalar(value.text(), Inscription.leaf(form, value), TextPart.Style.PLAIN, inFlow);
    }

    /** A key with its value in as many lines as it takes: a mapping of mappings and a list of mappings stand below their key. */
    private static List<String> written(TextPart.Entry entry, Form form, boolean inFlow) {
        TextPart value = entry.value();
        if (inFlow || !isDeep(value)) {
            return List.of(Inscription.entry(entry, form, inFlow));
        }
        List<String> written = new ArrayList<>();
        written.add(Inscription.key(entry.key().text(), false) + ":");
        below(value, form.inner(entry.key().text()).orElse(form)).forEach(line -> written.add(STEP + line));
        return written;
    }

    private static List<String> below(TextPart value, Form form) {
        List<String> written = new ArrayList<>();
        for (int k = 0; k < value.items().size(); k++) {
            Form item = form.inner(Steps.item(k)).orElse(form);
            written.add("- " + written(value.items().get(k), item, true));
        }
        value.entries().forEach(entry -> written.addAll(written(entry, form, false)));
        return written;
    }

    private static boolean isDeep(TextPart value) {
        return value.items().stream().anyMatch(item -> item.kind() == TextPart.Kind.MAPPING)
                || value.entries().stream()
                        .anyMatch(entry -> entry.value().kind() == TextPart.Kind.MAPPING || isDeep(entry.value()));
    }

    private Splice below(TextPart last, String indent, List<String> written) throws Unfit {
        if (!lines.isDone(last.to()) && last.to() < lines.end(last.to())) {
            throw new Unfit(
                    last.to(),
                    "something stands behind this in its line, so that nothing can be added; write it by hand");
        }
        String ending = lines.ending(last.to());
        StringBuilder text = new StringBuilder();
        written.forEach(line -> text.append(ending).append(indent).append(line));
        return Splice.in(lines.end(last.to()), text.toString());
    }

    /** Behind an item within brackets; on a line of its own where each item has one. */
    private Splice behind(TextPart collection, int last, String written) {
        int inside = lines.skip(collection.content() + 1);
        int count = Math.max(collection.items().size(), collection.entries().size());
        int begin = count < 2
                ? inside
                : collection.kind() == TextPart.Kind.LIST
                        ? collection.items().get(count - 1).from()
                        : collection.entries().get(count - 1).key().from();
        boolean isOwnLine =
                lines.isBlank(lines.start(begin), begin) && lines.start(begin) > collection.content() && begin <= last;
        return Splice.in(
                last,
                "," + (isOwnLine ? lines.ending(last) + lines.text().substring(lines.start(begin), begin) : " ")
                        + written);
    }
}
