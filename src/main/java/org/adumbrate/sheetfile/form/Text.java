package org.adumbrate.sheetfile.form;

import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.sheetfile.complaint.Nearest;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/**
 * A text of a certain pattern.
 *
 * @param expected what to write, as a phrase
 * @param types what JSON may take it for
 * @param pattern the whole text, in the syntax that Java and ECMA-262 share
 * @param value what the text stands for; nothing where the pattern lets something wrong through
 * @param meant for a wrong text: texts that may have been meant
 */
record Text(
        String expected,
        List<String> types,
        Pattern pattern,
        Function<String, Optional<?>> value,
        Function<String, List<String>> meant)
        implements Form {
    private static final Map<Tag, String> JSON_TYPES = Map.of(Tag.STR, "string", Tag.INT, "integer");

    private static final Map<String, Srgb> COLOR_WORDS = Map.of("white", Srgb.WHITE, "black", Srgb.BLACK);

    static final Text COLOR = new Text(
            "a colour such as \"#0a64c8\", in quotes because # starts a comment",
            List.of("string"),
            Pattern.compile("#(?:[0-9a-fA-F]{6}|[0-9a-fA-F]{3})|white|black"),
            text -> Optional.ofNullable(COLOR_WORDS.get(text)).or(() -> Srgb.parse(text)),
            Text::colorsMeant);

    static final Text TIME = new Text(
            "a time with its offset from UTC such as 2026-06-21T15:00+02:00",
            List.of("string"),
            Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}(?::[0-9]{2}(?:\\.[0-9]{1,9})?)?"
                    + "(?:Z|[-+][0-9]{2}:[0-9]{2})"),
            Text::time,
            text -> List.of());

    /** A name that the sheet file gives or refers to; YAML takes one of digits alone for a number. */
    static final Text NAME = new Text(
            "a name of letters, digits and hyphens",
            List.of("string", "integer"),
            Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}-]*"),
            Optional::of,
            text -> List.of());

    @Override
    public boolean fits(Node node) {
        return node instanceof ScalarNode;
    }

    @Override
    public Optional<?> read(Node node, Cursor at) {
        String text = Cursor.text(node).orElse("");
        boolean isRight = types.contains(JSON_TYPES.getOrDefault(node.getTag(), ""))
                && pattern.matcher(text).matches();
        Optional<?> found = isRight ? value.apply(text) : Optional.empty();
        return found.isPresent() ? found : at.unexpected(node, expected + Nearest.hint(text, meant.apply(text)));
    }

    @Override
    public Allowed allowed() {
        return Allowed.of(equals(NAME) ? "name" : equals(TIME) ? "time" : "color", List.of());
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> shared) {
        Map<String, Object> schema =
                SchemaJson.object("type", types.size() == 1 ? types.get(0) : types, "pattern", "^(?:" + pattern + ")$");
        if (types.contains("integer")) {
            schema.put("minimum", 0);
        }
        return schema;
    }

    private static Optional<?> time(String text) {
        try {
            return Optional.of(OffsetDateTime.parse(text));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    private static List<String> colorsMeant(String text) {
        List<String> meant = new ArrayList<>(List.of("white", "black"));
        Srgb.parse("#" + text).map(Srgb::toString).ifPresent(meant::add);
        return meant;
    }
}
