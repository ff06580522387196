package org.adumbrate.sheetfile.form;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.adumbrate.sheetfile.complaint.Nearest;
import org.adumbrate.sheetfile.complaint.Place;
import org.adumbrate.sheetfile.complaint.Wording;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** The keys of one mapping: those given, each once, and those that a misspelt one evidently meant. */
final class Keys {
    private final Map<String, NodeTuple> entries = new LinkedHashMap<>();
    private final Set<String> meant = new HashSet<>();

    private Keys() {}

    /** The keys of a mapping, with a complaint for each that is no word or is given twice. */
    static Keys of(MappingNode mapping, Cursor at) {
        Keys keys = new Keys();
        for (NodeTuple entry : mapping.getValue()) {
            Place place = Place.of(entry.getKeyNode());
            if (!(entry.getKeyNode() instanceof ScalarNode word)) {
                at.complainAt(place, "a key that is a list or a mapping; expected a word");
                continue;
            }
            NodeTuple first = keys.entries.putIfAbsent(word.getValue(), entry);
            if (first != null) {
                int line = Place.of(first.getKeyNode()).line();
                at.complainAt(place, Wording.quoted(word.getValue()) + " is given twice; first in line " + line);
            }
        }
        return keys;
    }

    /** Complains of each key that is not known, and forgets it. */
    void refuseOthers(Collection<String> known, Cursor at) {
        Map<String, String> decimals = decimals();
        entries.entrySet().removeIf(entry -> {
            String key = entry.getKey();
            if (known.contains(key)) {
                return false;
            }
            if (decimals.containsKey(key)) {
                at.complainAt(
                        Place.of(entry.getValue().getKeyNode()),
                        "a comma ends a value here, and decimals have a point; write " + decimals.get(key));
                return true;
            }
            Optional<String> near = Nearest.to(key, known).or(() -> withoutValue(key, known));
            near.map(word -> word.replace(": ", "")).ifPresent(meant::add);
            at.complainAt(
                    Place.of(entry.getValue().getKeyNode()),
                    "unknown key " + Wording.quoted(key)
                            + near.map(word -> "; did you mean '" + word + "'?")
                                    .orElse("; expected "
                                            + Wording.choice(known.stream().toList())));
            return true;
        });
    }

    /** What is meant by keys such as {@code 7 mm}, which is left of {@code width: 0,7 mm} where a comma ends a value. */
    private Map<String, String> decimals() {
        Map<String, String> decimals = new HashMap<>();
        String before = "";
        for (Map.Entry<String, NodeTuple> entry : entries.entrySet()) {
            String value = entry.getValue().getValueNode() instanceof ScalarNode scalar ? scalar.getValue() : "";
            String key = entry.getKey();
            if (before.matches(".+: [-+]?[0-9]+") && key.matches("[0-9].*") && value.isEmpty() && Quantity.isOne(key)) {
                decimals.put(key, before + "." + key);
            }
            before = key + ": " + value;
        }
        return decimals;
    }

    /** The key in {@code file:shadow.jpg}, which lacks the space that would end it. */
    private static Optional<String> withoutValue(String key, Collection<String> known) {
        return Optional.of(key.replaceFirst(":.*", "")).filter(known::contains).map(word -> word + ": ");
    }

    /** The keys given, in the order of the file. */
    Map<String, NodeTuple> entries() {
        return entries;
    }

    /** True for a key that is given, or that a misspelt one evidently meant. */
    boolean has(String key) {
        return entries.containsKey(key) || meant.contains(key);
    }
}
