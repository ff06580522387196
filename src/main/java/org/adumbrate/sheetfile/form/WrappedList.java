package org.adumbrate.sheetfile.form;

import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * A record whose only component is a list, written as that list.
 *
 * @param type the record
 * @param list the form of the list
 */
record WrappedList(Class<?> type, Many list) implements Form {
    @Override
    public boolean fits(Node node) {
        return list.fits(node);
    }

    @Override
    public Optional<?> read(Node node, Cursor at) {
        return list.read(node, at).flatMap(items -> at.make(type, items));
    }

    @Override
    public String expected() {
        return list.expected();
    }

    @Override
    public Allowed allowed() {
        return list.allowed();
    }

    @Override
    public Optional<Form> inner(String step) {
        return list.inner(step);
    }

    @Override
    public Optional<String> unsaid(Node node) {
        return list.unsaid(node);
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> shared) {
        return list.schema(shared);
    }
}
