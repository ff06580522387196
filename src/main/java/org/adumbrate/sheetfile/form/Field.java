package org.adumbrate.sheetfile.form;

import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.adumbrate.sheetfile.Key;
import org.adumbrate.sheetfile.complaint.Wording;
import org.adumbrate.sheetfile.yaml.YamlText;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/**
 * One key of a mapping, and the component of the record that it fills.
 *
 * @param key the key
 * @param meaning what it means
 * @param form how its value is written
 * @param isOptional true where the component is an Optional
 * @param standardText what holds where the key is left out, as one would write it
 * @param standard the same as a value; nothing where the key must be given
 */
public record Field(
        String key,
        String meaning,
        Form form,
        boolean isOptional,
        Optional<Node> standardText,
        Optional<Object> standard) {
    /** @param otherDefault a default in place of the component's own */
    static Field of(RecordComponent component, Optional<Node> otherDefault) {
        Key key = component.getAnnotation(Key.class);
        Form form = Forms.of(component);
        Optional<Node> text = otherDefault.or(() -> Optional.of(key.byDefault())
                .filter(written -> !written.isEmpty())
                .map(YamlText::snippet));
        return new Field(
                Wording.hyphened(component.getName()),
                key.value(),
                form,
                component.getType() == Optional.class,
                text,
                text.<Object>map(node -> standard(node, form)).or(() -> emptyOf(component, key)));
    }

    private static Object standard(Node node, Form form) {
        Notes notes = new Notes(Path.of("default"));
        return form.read(node, Cursor.top(notes))
                .orElseThrow(() -> new IllegalStateException("a default is wrong: " + notes.complaints()));
    }

    private static Optional<Object> emptyOf(RecordComponent component, Key key) {
        Map<Class<?>, Object> empty =
                Map.of(Optional.class, Optional.empty(), List.class, List.of(), Map.class, Map.of());
        return Optional.ofNullable(empty.get(component.getType())).filter(value -> key.atLeast() == 0);
    }

    /** The component's value; or nothing, after a complaint. */
    Optional<?> read(Keys keys, Cursor at) {
        NodeTuple entry = keys.entries().get(key);
        if (entry != null) {
            return wrapped(at.key(key, entry).read(form, entry.getValueNode()));
        }
        if (standard.isPresent()) {
            return standard;
        }
        return keys.has(key) ? Optional.empty() : at.complain(at.name() + " needs '" + key + "': " + form.expected());
    }

    /** As above, of a node that stands alone for the whole mapping. */
    Optional<?> readAlone(Node node, Cursor at) {
        return wrapped(at.unsaid(key).read(form, node));
    }

    private Optional<?> wrapped(Optional<?> value) {
        return isOptional && value.isPresent() ? Optional.of(value) : value;
    }

    /** What holds where the key is left out, as one would write it on one line. */
    public Optional<String> standardWritten() {
        return standardText.map(Field::written);
    }

    private static String written(Node node) {
        if (node instanceof SequenceNode list) {
            return list.getValue().stream().map(Field::written).collect(Collectors.joining(", ", "[", "]"));
        }
        return node instanceof ScalarNode scalar ? scalar.getValue() : "{}";
    }

    /** True where the key must be given. */
    public boolean isRequired() {
        return standard.isEmpty();
    }

    Map<String, Object> schema(Map<String, Object> shared) {
        Map<String, Object> schema = SchemaJson.object("description", meaning);
        schema.putAll(form.schema(shared));
        standardText
                .filter(ScalarNode.class::isInstance)
                .map(ScalarNode.class::cast)
                .ifPresent(text -> {
                    boolean isNumber =
                            text.getTag().equals(Tag.INT) || text.getTag().equals(Tag.FLOAT);
                    Object word = text.getTag().equals(Tag.BOOL)
                            ? (Object) Boolean.valueOf(text.getValue())
                            : text.getValue();
                    schema.put("default", isNumber ? Double.valueOf(text.getValue()) : word);
                });
        return schema;
    }
}
