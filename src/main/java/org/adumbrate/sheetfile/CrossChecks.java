package org.adumbrate.sheetfile;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What the values of a sheet file owe each other. Works on whatever could be read, so that these complaints come out
 * together with all the others.
 *
 * @param notes what the reading found
 */
record CrossChecks(Notes notes) {
    /** Groups that a drawing has of its own, next to those named after pens and veils. */
    private static final List<String> GROUPS =
            List.of("cut-backing", "cut-hatch", "cut-outline", "profile", "figures", "underlay");

    void run() {
        figuresStandOnKnownFloors();
        colorsHaveOnePen();
        groupsHaveOneName();
        outputsReplaceNothing();
    }

    private void figuresStandOnKnownFloors() {
        List<String> floors = namesIn("floors");
        if (floors.isEmpty()) {
            return; // the floors are then fitted, and named by whoever fits them
        }
        values("figures\\[\\d+\\]\\.floor")
                .filter(floor -> !floors.contains(floor.getValue()))
                .forEach(floor -> {
                    String name = (String) floor.getValue();
                    complain(
                            floor.getKey(),
                            "no floor is called " + Wording.quoted(name) + "; expected " + Wording.choice(floors)
                                    + Nearest.hint(name, floors));
                });
        values("figures\\[\\d+\\]")
                .filter(figure -> floors.size() > 1
                        && ((Figure) figure.getValue()).floor().isEmpty())
                .forEach(figure -> complain(
                        figure.getKey(), "'" + figure.getKey() + "' needs 'floor': " + Wording.choice(floors)));
    }

    private void colorsHaveOnePen() {
        Map<Object, String> pens = new HashMap<>();
        values("pens\\.[^.]+\\.color").forEach(color -> {
            String pen = color.getKey().split("\\.", -1)[1];
            String first = pens.putIfAbsent(color.getValue(), pen);
            if (first != null) {
                complain(color.getKey(), "pen '%s' draws %s already".formatted(first, color.getValue()));
            }
        });
    }

    private void groupsHaveOneName() {
        Map<String, String> taken = new HashMap<>();
        GROUPS.forEach(group -> taken.put(group, "every drawing"));
        namesIn("pens").forEach(pen -> claim(pen, "pens." + pen, taken));
        namesIn("veils").forEach(veil -> claim(veil + "-fill", "veils." + veil, taken));
    }

    private void claim(String group, String path, Map<String, String> taken) {
        String first = taken.putIfAbsent(group, "'" + path + "'");
        if (first != null) {
            complain(path, "'%s' is the name of a group of %s; choose another".formatted(group, first));
        }
    }

    private void outputsReplaceNothing() {
        Map<Path, String> taken = new HashMap<>();
        values("(?!deliver\\.).*")
                .filter(value -> value.getValue() instanceof Path)
                .forEach(input ->
                        taken.putIfAbsent(identity((Path) input.getValue()), "read as '" + input.getKey() + "'"));
        values("deliver\\..*").filter(value -> value.getValue() instanceof Path).forEach(output -> {
            Path file = (Path) output.getValue();
            String first = taken.putIfAbsent(identity(file), "written as '" + output.getKey() + "'");
            if (first != null) {
                complain(output.getKey(), file + " is also " + first + "; name another file");
            }
        });
    }

    /** One path for all the ways to name a file, whether or not it exists yet. */
    private static Path identity(Path file) {
        Path absolute = file.toAbsolutePath().normalize();
        try {
            return absolute.toRealPath();
        } catch (IOException e) {
            Path folder = absolute.getParent();
            return folder == null ? absolute : identity(folder).resolve(absolute.getFileName());
        }
    }

    /** The names given in a mapping, also those whose values could not be read. */
    private List<String> namesIn(String mapping) {
        Pattern name = Pattern.compile(mapping + "\\.([^.\\[]+)");
        return notes.places().keySet().stream()
                .map(name::matcher)
                .filter(matcher -> matcher.matches())
                .map(matcher -> matcher.group(1))
                .toList();
    }

    private Stream<Map.Entry<String, Object>> values(String path) {
        Pattern pattern = Pattern.compile(path);
        return notes.values().entrySet().stream()
                .filter(value -> pattern.matcher(value.getKey()).matches());
    }

    private void complain(String path, String text) {
        notes.complain(notes.places().get(path), text);
    }
}
