package org.adumbrate.sheetfile.form;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.adumbrate.sheetfile.Written;
import org.adumbrate.sheetfile.complaint.Wording;
import org.adumbrate.sheetfile.yaml.YamlText;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/**
 * A record written as a mapping, with a key for each component.
 *
 * @param type the record
 * @param fields one for each component
 * @param atLeast how many keys must be given
 * @param together keys that are given all or none
 * @param notTogether keys of which at most one may be given
 * @param onlyWith a key, and others that may be given only beside it
 */
record Mapping(
        Class<?> type,
        List<Field> fields,
        int atLeast,
        List<String> together,
        List<String> notTogether,
        List<String> onlyWith)
        implements Form {
    static Mapping of(Class<?> type) {
        return of(type, "{}");
    }

    /** @param defaults defaults in place of the record's own, as a mapping would have them */
    static Mapping of(Class<?> type, String defaults) {
        Map<String, Node> others = ((MappingNode) YamlText.snippet(defaults))
                .getValue().stream()
                        .collect(Collectors.toMap(
                                entry -> ((ScalarNode) entry.getKeyNode()).getValue(), NodeTuple::getValueNode));
        List<Field> fields = Arrays.stream(type.getRecordComponents())
                .map(component ->
                        Field.of(component, Optional.ofNullable(others.get(Wording.hyphened(component.getName())))))
                .toList();
        Written written = type.getAnnotation(Written.class);
        return written == null
                ? new Mapping(type, fields, 0, List.of(), List.of(), List.of())
                : new Mapping(
                        type,
                        fields,
                        written.atLeast(),
                        List.of(written.together()),
                        List.of(written.notTogether()),
                        List.of(written.onlyWith()));
    }

    @Override
    public boolean fits(Node node) {
        return node instanceof MappingNode;
    }

    @Override
    public Optional<?> read(Node node, Cursor at) {
        if (!(node instanceof MappingNode mapping)) {
            return at.unexpected(node, expected());
        }
        Keys keys = Keys.of(mapping, at);
        keys.refuseOthers(keys(), at);
        return read(keys, at);
    }

    /** The record for keys that are known already. */
    Optional<?> read(Keys keys, Cursor at) {
        List<Optional<?>> values = new ArrayList<>();
        for (Field field : fields) {
            values.add(field.read(keys, at));
        }
        if (keys().stream().filter(keys::has).count() < atLeast) {
            return at.complain(at.name() + " is empty; expected " + Wording.choice(keys()));
        }
        return clash(keys)
                .<Optional<?>>map(text -> at.complain(at.name() + text))
                .orElseGet(() -> made(values, at));
    }

    /** What is wrong with which keys stand together. */
    private Optional<String> clash(Keys keys) {
        List<String> missing = together.stream().filter(key -> !keys.has(key)).toList();
        if (!missing.isEmpty() && missing.size() < together.size()) {
            return Optional.of(" lacks '" + String.join("' and '", missing) + "'; give '"
                    + String.join("' and '", together) + "', or none of them");
        }
        List<String> clashing = notTogether.stream().filter(keys::has).toList();
        if (clashing.size() > 1) {
            return Optional.of(" has both '" + String.join("' and '", clashing) + "'; keep one of them");
        }
        return onlyWith.stream()
                .skip(1)
                .filter(key -> keys.has(key) && !keys.has(onlyWith.get(0)))
                .findFirst()
                .map(key -> " has '" + key + "', which says something of '" + onlyWith.get(0) + "' only; give '"
                        + onlyWith.get(0) + "' too, or leave '" + key + "' out");
    }

    /** The record for a node that stands for its first component; the others have defaults. */
    Optional<?> readFirstAlone(Node node, Cursor at) {
        List<Optional<?>> values = new ArrayList<>();
        values.add(fields.get(0).readAlone(node, at));
        fields.stream().skip(1).map(Field::standard).forEach(values::add);
        return made(values, at);
    }

    private Optional<?> made(List<Optional<?>> values, Cursor at) {
        return values.stream().allMatch(Optional::isPresent)
                ? at.make(type, values.stream().map(Optional::get).toArray())
                : Optional.empty();
    }

    List<String> keys() {
        return fields.stream().map(Field::key).toList();
    }

    /** The keys that must be given. */
    List<String> requiredKeys() {
        return fields.stream().filter(Field::isRequired).map(Field::key).toList();
    }

    @Override
    public String expected() {
        List<String> needed = requiredKeys().isEmpty() ? keys().subList(0, 1) : requiredKeys();
        return needed.stream()
                .map(key -> key + ": ...")
                .collect(Collectors.joining(", ", "a mapping such as { ", " }"));
    }

    @Override
    public Allowed allowed() {
        return Allowed.of("mapping", List.of());
    }

    @Override
    public Optional<Form> inner(String step) {
        return fields.stream()
                .filter(field -> field.key().equals(step))
                .findFirst()
                .map(Field::form);
    }

    /** What says something of another key only is none of them where others are given and that one is not. */
    @Override
    public List<Field> fields(Collection<String> given) {
        boolean all = onlyWith.isEmpty() || given.isEmpty() || given.contains(onlyWith.get(0));
        return all
                ? fields
                : fields.stream()
                        .filter(field -> given.contains(field.key()) || onlyWith.lastIndexOf(field.key()) <= 0)
                        .toList();
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> shared) {
        Map<String, Object> schema = SchemaJson.object("type", "object");
        if (!requiredKeys().isEmpty()) {
            schema.put("required", requiredKeys());
        }
        if (atLeast > 0) {
            schema.put("minProperties", atLeast);
        }
        Map<String, Object> needed = SchemaJson.object();
        together.forEach(key -> needed.put(
                key, together.stream().filter(other -> !other.equals(key)).toList()));
        onlyWith.stream().skip(1).forEach(key -> needed.put(key, onlyWith.subList(0, 1)));
        if (!needed.isEmpty()) {
            schema.put("dependentRequired", needed);
        }
        if (!notTogether.isEmpty()) {
            schema.put("not", SchemaJson.object("required", notTogether));
        }
        Map<String, Object> properties = SchemaJson.object();
        fields.forEach(field -> properties.put(field.key(), field.schema(shared)));
        schema.put("properties", properties);
        schema.put("additionalProperties", false);
        return schema;
    }
}
