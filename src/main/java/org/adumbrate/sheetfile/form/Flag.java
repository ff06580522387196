package org.adumbrate.sheetfile.form;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.sheetfile.complaint.Nearest;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/** True or false; in YAML 1.2 {@code yes} and {@code on} are neither. */
record Flag() implements Form {
    @Override
    public boolean fits(Node node) {
        return node instanceof ScalarNode;
    }

    @Override
    public Optional<?> read(Node node, Cursor at) {
        if (node instanceof ScalarNode scalar) {
            return scalar.getTag().equals(Tag.BOOL)
                    ? Optional.of(Boolean.valueOf(scalar.getValue()))
                    : at.unexpected(node, expected() + Nearest.hint(scalar.getValue(), List.of("true", "false")));
        }
        return at.unexpected(node, expected());
    }

    @Override
    public String expected() {
        return "true or false";
    }

    @Override
    public Allowed allowed() {
        return new Allowed("flag", List.of(), Range.ANY, List.of("true", "false"));
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> shared) {
        return SchemaJson.object("type", "boolean");
    }
}
