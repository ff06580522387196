package org.adumbrate.sheetfile.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.sheetfile.complaint.Nearest;
import org.adumbrate.sheetfile.complaint.Wording;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/**
 * One of a few words.
 *
 * @param values what each word stands for
 */
record Choice(Map<String, Object> values) implements Form {
    /** The words of an enum: its constants in lower case, with hyphens. */
    static Choice of(Class<?> type) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (Object constant : type.getEnumConstants()) {
            values.put(Wording.hyphened(((Enum<?>) constant).name()), constant);
        }
        return new Choice(values);
    }

    @Override
    public boolean fits(Node node) {
        return node instanceof ScalarNode;
    }

    @Override
    public Optional<?> read(Node node, Cursor at) {
        String word = Cursor.text(node).orElse("");
        Object value = values.get(word);
        return value == null
                ? at.unexpected(node, expected() + Nearest.hint(word, values.keySet()))
                : Optional.of(value);
    }

    @Override
    public String expected() {
        return Wording.choice(words());
    }

    @Override
    public Allowed allowed() {
        return Allowed.words(words());
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> shared) {
        return SchemaJson.object("enum", words());
    }

    private List<String> words() {
        return new ArrayList<>(values.keySet());
    }
}
