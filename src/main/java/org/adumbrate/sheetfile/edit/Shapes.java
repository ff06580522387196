package org.adumbrate.sheetfile.edit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.adumbrate.sheetfile.yaml.TextPart;
import org.snakeyaml.engine.v2.nodes.Tag;

/**
 * Numbers for what parts say, whatever their spelling: two parts have one number exactly if they say the same, with aliases
 * followed. The order of a mapping's keys counts for nothing.
 */
final class Shapes {
    private record Scalar(String text, Tag tag) {}

    private record Pair(int key, int value) {}

    private final Map<Object, Integer> numbers = new HashMap<>();
    private final IdentityHashMap<TextPart, Integer> known = new IdentityHashMap<>();

    int of(TextPart part) {
        TextPart meant = part.meant();
        Integer found = known.get(meant);
        if (found == null) {
            found = made(meant);
            known.put(meant, found);
        }
        return found;
    }

    private int made(TextPart part) {
        return switch (part.kind()) {
            case LIST -> list(part.items().stream().map(this::of).toList());
            case MAPPING -> mapping(part, Map.of());
            default -> scalar(part.text(), part.node().getTag());
        };
    }

    int scalar(String text, Tag tag) {
        return number(new Scalar(text, tag));
    }

    int list(List<Integer> items) {
        return number(items);
    }

    /** A mapping with some of its values, by the index of their entries, replaced. */
    int mapping(TextPart part, Map<Integer, Integer> others) {
        List<int[]> pairs = new ArrayList<>();
        for (int k = 0; k < part.entries().size(); k++) {
            TextPart.Entry entry = part.entries().get(k);
            pairs.add(new int[] {of(entry.key()), others.containsKey(k) ? others.get(k) : of(entry.value())});
        }
        return mapping(pairs);
    }

    /** @param pairs keys and values */
    int mapping(List<int[]> pairs) {
        Map<Pair, Integer> counts = new HashMap<>();
        pairs.forEach(pair -> counts.merge(new Pair(pair[0], pair[1]), 1, Integer::sum));
        return number(counts);
    }

    private int number(Object shape) {
        return numbers.computeIfAbsent(shape, any -> numbers.size());
    }
}
