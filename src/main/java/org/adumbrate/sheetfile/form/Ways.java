package org.adumbrate.sheetfile.form;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * A mapping that can be written in several ways, told apart by the keys that only one of them has. A key that two ways
 * share, all share. A way without such a key is taken where none of the others is and what it needs is there.
 *
 * @param ways one for each record that the interface is sealed over
 */
record Ways(List<Mapping> ways) implements Form {
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
        keys.refuseOthers(new LinkedHashSet<>(allKeys()), at);
        List<Mapping> taken = new ArrayList<>();
        List<String> telling = new ArrayList<>();
        for (Mapping way : ways) {
            ownKeys(way).stream().filter(keys::has).findFirst().ifPresent(key -> {
                taken.add(way);
                telling.add(key);
            });
        }
        if (taken.isEmpty()) {
            ways.stream().filter(way -> isAllThatIsGiven(way, keys)).forEach(taken::add);
        }
        if (taken.size() > 1) {
            return at.complain(at.name() + " has '" + String.join("' and '", telling)
                    + "', which are different ways to say it; keep one");
        }
        return taken.isEmpty()
                ? at.complain(at.name() + " needs " + needs())
                : taken.get(0).read(keys, at);
    }

    private boolean isAllThatIsGiven(Mapping way, Keys keys) {
        return ownKeys(way).isEmpty() && way.requiredKeys().stream().allMatch(keys::has);
    }

    private String needs() {
        return ways.stream()
                .map(way -> "'" + String.join("' and '", way.requiredKeys()) + "'")
                .collect(Collectors.joining(", or "));
    }

    /** The keys of all ways, those that they share as often as they do. */
    private List<String> allKeys() {
        return ways.stream().flatMap(way -> way.keys().stream()).toList();
    }

    private List<String> ownKeys(Mapping way) {
        return way.keys().stream()
                .filter(key -> Collections.frequency(allKeys(), key) == 1)
                .toList();
    }

    @Override
    public String expected() {
        return ways.get(0).expected();
    }

    @Override
    public Allowed allowed() {
        return Allowed.of("mapping", List.of());
    }

    @Override
    public Optional<Form> inner(String step) {
        return ways.stream().flatMap(way -> way.inner(step).stream()).findFirst();
    }

    /** Those of the way that the given keys tell; of all ways, each once, where they tell none. */
    @Override
    public List<Field> fields(Collection<String> given) {
        List<Mapping> told = ways.stream()
                .filter(way -> ownKeys(way).stream().anyMatch(given::contains))
                .toList();
        List<Mapping> taken = !told.isEmpty()
                ? told
                : ways.stream()
                        .filter(way -> ownKeys(way).isEmpty() && given.containsAll(way.requiredKeys()))
                        .toList();
        Map<String, Field> fields = new LinkedHashMap<>();
        for (Mapping way : taken.isEmpty() ? ways : taken) {
            way.fields().forEach(field -> fields.putIfAbsent(field.key(), field));
        }
        return List.copyOf(fields.values());
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> shared) {
        return SchemaJson.object(
                "oneOf", ways.stream().map(way -> way.schema(shared)).toList());
    }
}
