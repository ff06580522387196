package org.adumbrate.sheetfile.form;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.adumbrate.sheetfile.complaint.Nearest;
import org.adumbrate.sheetfile.complaint.Wording;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/** A file to be read later: it must exist, and is not opened here. */
record FileToRead() implements Form {
    @Override
    public boolean fits(Node node) {
        return node instanceof ScalarNode;
    }

    @Override
    public Optional<?> read(Node node, Cursor at) {
        return path(node, at, expected()).flatMap(path -> existing(path, at));
    }

    /** The path that a node names, from the folder of the sheet file; or nothing, after complaining. */
    static Optional<Path> path(Node node, Cursor at, String expected) {
        if (!(node instanceof ScalarNode scalar)
                || !scalar.getTag().equals(Tag.STR)
                || scalar.getValue().isBlank()) {
            return at.unexpected(node, expected);
        }
        String text = scalar.getValue().strip();
        if (text.indexOf('\\') >= 0) {
            return at.complain(at.name() + " has a backslash; write / between folders, which every system knows");
        }
        try {
            return Optional.of(at.notes().resolve(text));
        } catch (InvalidPathException e) {
            return at.unexpected(node, expected);
        }
    }

    private static Optional<Path> existing(Path path, Cursor at) {
        if (Files.isRegularFile(path)) {
            return Optional.of(path);
        }
        if (Files.exists(path)) {
            String kind = Files.isDirectory(path) ? "a folder" : "not a file on a disk";
            return at.complain(at.name() + " names " + path + ", which is " + kind + "; expected a file");
        }
        Path missing = path;
        while (missing.getParent() != null && !Files.isDirectory(missing.getParent())) {
            missing = missing.getParent();
        }
        Path folder = Optional.ofNullable(missing.getParent()).orElse(Path.of(""));
        String name = missing.getFileName() == null
                ? missing.toString()
                : missing.getFileName().toString();
        return at.complain("no such %s %s in %s%s"
                .formatted(
                        missing.equals(path) ? "file" : "folder",
                        Wording.quoted(name),
                        folder.toString().isEmpty() ? "this folder" : folder,
                        Nearest.hint(name, namesIn(folder))));
    }

    private static List<String> namesIn(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        } catch (IOException | UncheckedIOException e) {
            return List.of(); // without names there is nothing to suggest; the complaint itself stands
        }
    }

    @Override
    public String expected() {
        return "a file";
    }

    @Override
    public Allowed allowed() {
        return Allowed.of("file", List.of());
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> shared) {
        return SchemaJson.object("type", "string", "pattern", "^[^\\\\]*[^\\\\\\s][^\\\\]*$");
    }
}
