package org.adumbrate.sheetfile.form;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.adumbrate.sheetfile.complaint.Complaint;
import org.adumbrate.sheetfile.complaint.Place;

/** What has been found while a sheet file is read: values and their places by key path, and complaints. */
public final class Notes {
    private final Path file;
    private final Map<String, Place> places = new LinkedHashMap<>();
    private final Map<String, Object> values = new LinkedHashMap<>();
    private final List<Complaint> complaints = new ArrayList<>();

    public Notes(Path file) {
        this.file = file;
    }

    public void place(String path, Place place) {
        places.put(path, place);
    }

    public void value(String path, Object value) {
        values.put(path, value);
    }

    /** Complains of the value at a key path. */
    public void complain(String path, String text) {
        complain(places.get(path), text);
    }

    public void complain(Place place, String text) {
        complaints.add(new Complaint(file, place.line(), place.column(), text));
    }

    Path file() {
        return file;
    }

    /** A path as the sheet file has it, which is relative to the folder that the sheet file lies in. */
    Path resolve(String path) {
        return Optional.ofNullable(file.getParent()).orElse(Path.of("")).resolve(path);
    }

    public Map<String, Place> places() {
        return places;
    }

    /** The values that could be read, by key path, in the order of the file. */
    public Map<String, Object> values() {
        return values;
    }

    /** The values that could be read at the key paths of a pattern, by key path. */
    public Stream<Map.Entry<String, Object>> values(String pattern) {
        Pattern path = Pattern.compile(pattern);
        return values.entrySet().stream()
                .filter(value -> path.matcher(value.getKey()).matches());
    }

    /** True where a key is given, whether or not its value could be read. */
    public boolean has(String path) {
        return places.containsKey(path);
    }

    /** The names given in a mapping, also those whose values could not be read. */
    public List<String> namesIn(String mapping) {
        Pattern name = Pattern.compile(mapping + "\\.([^.\\[]+)");
        return places.keySet().stream()
                .map(name::matcher)
                .filter(Matcher::matches)
                .map(matcher -> matcher.group(1))
                .toList();
    }

    public List<Complaint> complaints() {
        return complaints;
    }
}
