package org.adumbrate.sheetfile.form;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.sheetfile.Outline;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/** The name of an outline that comes with the program, or an SVG file. */
record OutlineOrFile() implements Form {
    private static final String ENDING = ".svg";

    @Override
    public boolean fits(Node node) {
        return node instanceof ScalarNode;
    }

    @Override
    public Optional<?> read(Node node, Cursor at) {
        String text = node.getTag().equals(Tag.STR) ? Cursor.text(node).orElse("") : "";
        if (Text.NAME.pattern().matcher(text).matches()) {
            return Optional.of(new Outline.Shipped(text));
        }
        return text.toLowerCase(Locale.ROOT).endsWith(ENDING)
                ? new FileToRead().read(node, at).map(file -> new Outline.Drawn((Path) file))
                : at.unexpected(node, expected());
    }

    @Override
    public String expected() {
        return "the name of an outline such as walking, or a file that ends in " + ENDING;
    }

    @Override
    public Allowed allowed() {
        return Allowed.of("outline", List.of());
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> shared) {
        return SchemaJson.object(
                "type", "string", "pattern", "^(?:" + Text.NAME.pattern() + "|[^\\\\]*\\.[sS][vV][gG])$");
    }
}
