package org.adumbrate.sheetfile.form;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.sheetfile.complaint.Place;
import org.adumbrate.sheetfile.complaint.Wording;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * A mapping whose keys are names that the sheet file gives: pens, veils, floors.
 *
 * @param item the form of each value
 */
record Named(Form item) implements Form {
    @Override
    public boolean fits(Node node) {
        return node instanceof MappingNode;
    }

    @Override
    public Optional<?> read(Node node, Cursor at) {
        if (!(node instanceof MappingNode mapping)) {
            return at.unexpected(node, expected());
        }
        Map<String, Object> values = new LinkedHashMap<>();
        Keys keys = Keys.of(mapping, at);
        keys.entries().forEach((name, entry) -> {
            if (!Text.NAME.pattern().matcher(name).matches()) {
                at.complainAt(
                        Place.of(entry.getKeyNode()),
                        Wording.quoted(name) + " is no name; expected " + Text.NAME.expected());
            }
            Cursor there = at.key(name, entry);
            there.read(item, entry.getValueNode()).ifPresent(value -> values.put(name, value));
        });
        return values.size() == mapping.getValue().size()
                ? Optional.of(Collections.unmodifiableMap(values))
                : Optional.empty();
    }

    @Override
    public String expected() {
        return "names, each with " + item.expected();
    }

    @Override
    public Allowed allowed() {
        return Allowed.of("names", List.of());
    }

    @Override
    public Optional<Form> inner(String step) {
        return Text.NAME.pattern().matcher(step).matches() ? Optional.of(item) : Optional.empty();
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> shared) {
        return SchemaJson.object(
                "type", "object",
                "propertyNames",
                        SchemaJson.object("pattern", Text.NAME.schema(shared).get("pattern")),
                "additionalProperties", item.schema(shared));
    }
}
