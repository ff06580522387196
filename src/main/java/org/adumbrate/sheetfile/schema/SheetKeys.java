package org.adumbrate.sheetfile.schema;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.form.Forms;
import org.adumbrate.sheetfile.form.SchemaJson;

/** All keys of the sheet file as a list to read, made of the same records as the {@linkplain SheetSchema schema}. */
public final class SheetKeys {
    private static final String REFERENCE = "#/$defs/";
    private static final int WIDTH = 80;
    private static final int COLUMN = 20;

    /** Stands for a space at which no line ends. */
    private static final char FIRM = '\u00a0';

    private final Map<String, Object> shared = new TreeMap<>();
    private final StringBuilder text = new StringBuilder();

    /** Where a set of keys was listed, and what holds there where they are left out. */
    private record Listed(String path, Map<String, String> defaults) {}

    /** What was listed, by the keys and what they mean. */
    private final Map<String, Listed> listed = new LinkedHashMap<>();

    private SheetKeys() {}

    /**
     * The list, at most 80 columns wide: keys indented below those that they belong to, what each means, and in brackets what
     * holds where it is left out.
     */
    public static String text() {
        SheetKeys keys = new SheetKeys();
        Map<String, Object> sheet = Forms.of(Sheet.class).schema(keys.shared);
        keys.list("", sheet, 0);
        return keys.text.toString().replace(FIRM, ' ');
    }

    private void list(String path, Map<?, ?> node, int depth) {
        List<Map<?, ?>> ways = ways(node);
        Map<String, Map<?, ?>> children = new LinkedHashMap<>();
        List<Object> needed = new ArrayList<>();
        for (Map<?, ?> way : ways) {
            map(way.get("properties")).forEach((key, child) -> children.putIfAbsent(key.toString(), map(child)));
            if (ways.size() == 1 && way.get("required") instanceof List<?> names) {
                needed.addAll(names);
            }
        }
        String meaning = children.entrySet().stream()
                .map(child -> child.getKey() + ": " + child.getValue().get("description"))
                .collect(Collectors.joining("\n"));
        Listed here = new Listed(path, defaults(children));
        Listed before = children.isEmpty() ? null : listed.putIfAbsent(meaning, here);
        if (before != null) {
            here.defaults().entrySet().removeAll(before.defaults().entrySet());
            String other = here.defaults().entrySet().stream()
                    .map(each -> ", but " + each.getKey() + " [" + each.getValue() + "]")
                    .collect(Collectors.joining());
            line(depth, "...", "as of " + before.path() + other);
            return;
        }
        children.forEach((key, child) -> {
            line(depth, key, meaning(child, needed.contains(key)));
            list(path.isEmpty() ? key : path + "." + key, child, depth + 1);
        });
        for (Map<?, ?> way : ways) {
            if (way.get("additionalProperties") instanceof Map<?, ?> named) {
                line(depth, "NAME", "A name of your own.");
                list(path, named, depth + 1);
            }
        }
    }

    private static Map<String, String> defaults(Map<String, Map<?, ?>> children) {
        Map<String, String> defaults = new LinkedHashMap<>();
        children.forEach((key, child) -> {
            if (child.get("default") != null) {
                defaults.put(key, plain(child.get("default")));
            }
        });
        return defaults;
    }

    /** The mappings that may stand at a place, through references, lists and alternatives. */
    private List<Map<?, ?>> ways(Map<?, ?> node) {
        List<Map<?, ?>> ways = new ArrayList<>();
        Map<?, ?> whole = resolved(node);
        if (whole.get("properties") instanceof Map || whole.get("additionalProperties") instanceof Map) {
            ways.add(whole);
        }
        for (String choice : List.of("anyOf", "oneOf")) {
            if (whole.get(choice) instanceof List<?> choices) {
                choices.forEach(each -> ways.addAll(ways(map(each))));
            }
        }
        if (whole.get("items") instanceof Map<?, ?> items) {
            ways.addAll(ways(items));
        }
        return ways;
    }

    private Map<?, ?> resolved(Map<?, ?> node) {
        return node.get("$ref") instanceof String reference
                ? resolved(map(shared.get(reference.substring(REFERENCE.length()))))
                : node;
    }

    private String meaning(Map<?, ?> child, boolean isNeeded) {
        StringBuilder meaning = new StringBuilder(String.valueOf(child.get("description")));
        if (resolved(child).get("enum") instanceof List<?> words && words.size() > 1) {
            meaning.append(words.stream().map(SheetKeys::plain).collect(Collectors.joining(", ", " One of ", ".")));
        }
        if (isNeeded) {
            meaning.append(" [needed]");
        } else if (child.get("default") != null) {
            meaning.append(" [")
                    .append(plain(child.get("default")).replace(' ', FIRM))
                    .append(']');
        }
        return meaning.toString();
    }

    private void line(int depth, String key, String meaning) {
        StringBuilder line = new StringBuilder("  ".repeat(depth)).append(key);
        line.append(" ".repeat(Math.max(1, COLUMN - line.length())));
        int begun = line.length();
        for (String word : meaning.split(" ", -1)) {
            if (line.length() + word.length() > WIDTH && line.length() > begun) {
                text.append(line.toString().stripTrailing()).append('\n');
                line.setLength(0);
                line.append(" ".repeat(COLUMN));
                begun = COLUMN;
            }
            line.append(word).append(' ');
        }
        text.append(line.toString().stripTrailing()).append('\n');
    }

    private static String plain(Object value) {
        return value instanceof Number ? SchemaJson.text(value) : value.toString();
    }

    private static Map<?, ?> map(Object value) {
        return value instanceof Map<?, ?> map ? map : Map.of();
    }
}
