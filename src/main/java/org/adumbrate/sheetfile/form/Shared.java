package org.adumbrate.sheetfile.form;

import java.util.Collection;
import java.util.List;
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
    public String measured(String wanted) {
        return form.measured(wanted);
    }

    @Override
    public Allowed allowed() {
        return name.equals("color") ? Allowed.of(name, List.of("white", "black")) : form.allowed();
    }

    @Override
    public Optional<Form> inner(String step) {
        return form.inner(step);
    }

    @Override
    public Optional<String> unsaid(Node node) {
        return form.unsaid(node);
    }

    @Override
    public List<Field> fields(Collection<String> given) {
        return form.fields(given);
    }

    @Override
    public String restyled(String standing, String wanted) {
        return form.restyled(standing, wanted);
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> shared) {
        if (!shared.containsKey(name)) {
            shared.put(name, form.schema(shared));
        }
        return SchemaJson.object("$ref", "#/$defs/" + name);
    }
}
