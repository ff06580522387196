package org.adumbrate.sheetfile.form;

import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * A form that occurs in many places, and so is told once in the JSON Schema.
 *
 * @param name what the schema calls it
 * @param form the form
 */
record Shared(String name, Form form) implements Form {
    @Override
    public boolean fits(Node node) {
        return form.fits(node);
    }

    @Override
    public Optional<?> read(Node node, Cursor at) {
        return form.read(node, at);
    }

    @Override
    public String expected() {
        return form.expected();
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> shared) {
        if (!shared.containsKey(name)) {
            shared.put(name, form.schema(shared));
        }
        return SchemaJson.object("$ref", "#/$defs/" + name);
    }
}
