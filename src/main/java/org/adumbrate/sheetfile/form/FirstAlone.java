package org.adumbrate.sheetfile.form;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * A mapping whose first value may stand alone for the whole: a file with options, or just the file.
 *
 * @param whole the long way to write it, or several such ways
 * @param mapping the long way whose first value may stand alone
 */
record FirstAlone(Form whole, Mapping mapping) implements Form {
    FirstAlone(Mapping mapping) {
        this(mapping, mapping);
    }

    FirstAlone(Ways ways) {
        this(ways, ways.ways().get(0));
    }

    @Override
    public boolean fits(Node node) {
        return whole.fits(node) || first().fits(node);
    }

    @Override
    public Optional<?> read(Node node, Cursor at) {
        return whole.fits(node) ? whole.read(node, at) : mapping.readFirstAlone(node, at);
    }

    private Form first() {
        return mapping.fields().get(0).form();
    }

    @Override
    public String expected() {
        return first().expected();
    }

    @Override
    public Allowed allowed() {
        return whole.allowed();
    }

    @Override
    public Optional<Form> inner(String step) {
        return whole.inner(step);
    }

    @Override
    public Optional<String> unsaid(Node node) {
        return whole.fits(node)
                ? Optional.empty()
                : Optional.of(mapping.fields().get(0).key());
    }

    @Override
    public List<Field> fields(Collection<String> given) {
        return whole.fields(given);
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> shared) {
        return SchemaJson.object("anyOf", List.of(first().schema(shared), whole.schema(shared)));
    }
}
