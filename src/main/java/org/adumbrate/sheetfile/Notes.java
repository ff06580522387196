package org.adumbrate.sheetfile;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What has been found while a sheet file is read: values and their places by key path, and complaints. */
final class Notes {
    private final Path file;
    private final Map<String, Place> places = new LinkedHashMap<>();
    private final Map<String, Object> values = new LinkedHashMap<>();
    private final List<Complaint> complaints = new ArrayList<>();

    Notes(Path file) {
        this.file = file;
    }

    void place(String path, Place place) {
        places.put(path, place);
    }

    void value(String path, Object value) {
        values.put(path, value);
    }

    /** Complains of the value at a key path. */
    void complain(String path, String text) {
        complain(places.get(path), text);
    }

    void complain(Place place, String text) {
        complaints.add(new Complaint(file, place.line(), place.column(), text));
    }

    Path file() {
        return file;
    }

    /** A path as the sheet file has it, which is relative to the folder that the sheet file lies in. */
    Path resolve(String path) {
        return Optional.ofNullable(file.getParent()).orElse(Path.of("")).resolve(path);
    }

    Map<String, Place> places() {
        return places;
    }

    /** The values that could be read, by key path, in the order of the file. */
    Map<String, Object> values() {
        return values;
    }

    /** The values that could be read at the key paths of a pattern, by key path. */
    Stream<Map.Entry<String, Object>> values(String pattern) {
        Pattern path = Pattern.compile(pattern);
        return values.entrySet().stream()
                .filter(value -> path.matcher(value.getKey()).matches());
    }

    /** True where a key is given, whether or not its value could be read. */
    boolean has(String path) {
        return places.containsKey(path);
    }

    /** The names given in a mapping, also those whose values could not be read. */
    List<String> namesIn(String mapping) {
        Pattern name = Pattern.compile(mapping + "\\.([^.\\[]+)");
        return places.keySet().stream()
                .map(name::matcher)
                .filter(Matcher::matches)
                .map(matcher -> matcher.group(1))
                .toList();
    }

    List<Complaint> complaints() {
        return complaints;
    }
}
