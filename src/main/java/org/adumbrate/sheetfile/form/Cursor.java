package org.adumbrate.sheetfile.form;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Optional;
import org.adumbrate.sheetfile.complaint.Place;
import org.adumbrate.sheetfile.complaint.Wording;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/**
 * Where the reading stands: at one value of the sheet file.
 *
 * @param notes what all readings of the file have found
 * @param path the keys on the way here, such as {@code figures[2].foot}; empty at the top
 * @param name what to call the value in a complaint
 * @param place where to complain of it
 */
public record Cursor(Notes notes, String path, String name, Place place) {
    /** The longest text that is looked at closely, in characters. */
    private static final int LONGEST = 200;

    public static Cursor top(Notes notes) {
        return new Cursor(notes, "", "the sheet file", Place.START);
    }

    /** At the value of a key. Where the value begins on a line below its key, the key is the place. */
    Cursor key(String key, NodeTuple entry) {
        Place ofKey = Place.of(entry.getKeyNode());
        Place ofValue = Place.of(entry.getValueNode());
        return noted(pathTo(key), "'" + key + "'", ofKey.line() == ofValue.line() ? ofValue : ofKey);
    }

    /** At the value of a key that was left unsaid because its value stands alone. */
    Cursor unsaid(String key) {
        return noted(pathTo(key), name, place);
    }

    /** At the only item of a list whose brackets were left out. */
    Cursor alone() {
        return noted(path + "[0]", name, place);
    }

    /** At an item of a list. */
    Cursor item(int index, Node item) {
        String suffix = "[" + index + "]";
        String stem = name.endsWith("'") ? name.substring(0, name.length() - 1) : name;
        return noted(path + suffix, stem + suffix + "'", Place.of(item));
    }

    private String pathTo(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    private Cursor noted(String there, String called, Place where) {
        notes.place(there, where);
        return new Cursor(notes, there, called, where);
    }

    /** Reads a value here and notes it. */
    Optional<?> read(Form form, Node node) {
        Optional<?> value = form.read(node, this);
        value.ifPresent(found -> notes.value(path, found));
        return value;
    }

    /** Makes a record; what its constructor refuses becomes a complaint. */
    Optional<?> make(Class<?> type, Object... arguments) {
        Class<?>[] types = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        try {
            Constructor<?> constructor = type.getDeclaredConstructor(types);
            return Optional.of(constructor.newInstance(arguments));
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof IllegalArgumentException refusal) {
                return complain(name + ": " + refusal.getMessage());
            }
            throw new IllegalStateException(type + " failed", e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(type + " cannot be made", e);
        }
    }

    /** Complains of the value here. */
    <T> Optional<T> complain(String text) {
        return complainAt(place, text);
    }

    /** Complains of something within the value here. */
    <T> Optional<T> complainAt(Place where, String text) {
        notes.complain(where, text);
        return Optional.empty();
    }

    /** Complains that something else was expected here. */
    <T> Optional<T> unexpected(Node found, String expected) {
        return complain(name + " is " + told(found) + "; expected " + expected);
    }

    private static String told(Node found) {
        if (!(found instanceof ScalarNode scalar)) {
            return found instanceof MappingNode ? "a mapping" : "a list";
        }
        if (isEmpty(scalar)) {
            return "empty";
        }
        return scalar.isPlain() && Quantity.isOne(scalar.getValue())
                ? Wording.shortened(scalar.getValue())
                : Wording.quoted(scalar.getValue());
    }

    /** The text of a scalar; nothing for another node, and for a text much longer than any value is. */
    static Optional<String> text(Node node) {
        return node instanceof ScalarNode scalar && !isEmpty(scalar)
                ? Optional.of(scalar.getValue().strip()).filter(text -> text.length() <= LONGEST)
                : Optional.empty();
    }

    /** YAML takes nothing at all, {@code ~} and {@code null} for nothing. */
    private static boolean isEmpty(ScalarNode scalar) {
        return scalar.getTag().equals(Tag.NULL);
    }
}
