package org.adumbrate.sheetfile.form;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.adumbrate.sheetfile.complaint.Nearest;
import org.adumbrate.sheetfile.complaint.Wording;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/**
 * A file to be made; its folder need not exist.
 *
 * @param endings how its name may end, such as {@code .pdf}
 */
record FileToMake(List<String> endings) implements Form {
    @Override
    public boolean fits(Node node) {
        return node instanceof ScalarNode;
    }

    @Override
    public Optional<?> read(Node node, Cursor at) {
        return FileToRead.path(node, at, expected()).flatMap(path -> {
            String name = String.valueOf(path.getFileName());
            int dot = name.lastIndexOf('.');
            String ending = dot < 0 ? "" : name.substring(dot);
            if (!endings.contains(ending)) {
                return at.unexpected(node, expected() + Nearest.hint(ending, endings));
            }
            if (dot == 0) {
                return at.unexpected(node, "a name before the ending");
            }
            return Files.isDirectory(path)
                    ? at.complain(at.name() + " names " + path + ", which is a folder; expected a file")
                    : Optional.<Path>of(path);
        });
    }

    @Override
    public String expected() {
        return "a file that ends in " + Wording.choice(endings);
    }

    @Override
    public Allowed allowed() {
        return Allowed.of("output", endings);
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> shared) {
        String endingPattern =
                endings.stream().map(ending -> ending.substring(1)).collect(Collectors.joining("|"));
        return SchemaJson.object("type", "string", "pattern", "^[^\\\\]*[^\\\\/]\\.(?:" + endingPattern + ")$");
    }
}
