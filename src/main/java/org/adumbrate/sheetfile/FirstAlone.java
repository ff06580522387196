package org.adumbrate.sheetfile;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * A mapping whose first value may stand alone for the whole: a file with options, or just the file.
 *
 * @param mapping the long way to write it
 */
record FirstAlone(Mapping mapping) implements Form {
    @Override
    public boolean fits(Node node) {
        return mapping.fits(node) || first().fits(node);
    }

    @Override
    public Optional<?> read(Node node, Reading at) {
        return mapping.fits(node) ? mapping.read(node, at) : mapping.readFirstAlone(node, at);
    }

    private Form first() {
        return mapping.fields().get(0).form();
    }

    @Override
    public String expected() {
        return first().expected();
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> shared) {
        return Json.object("anyOf", List.of(first().schema(shared), mapping.schema(shared)));
    }
}
