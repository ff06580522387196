package org.adumbrate.sheetfile.form;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** How a value is written. The one description serves both the reader and the JSON Schema, so that the two agree. */
public interface Form {
    /** True for a node of the right kind (a scalar, a list, a mapping), whether or not it is right in detail. */
    boolean fits(Node node);

    /** The value; or nothing, after at least one complaint. */
    Optional<?> read(Node node, Cursor at);

    /** What to write, as a phrase for complaints: {@code a length on the sheet such as 0.25 mm}. */
    String expected();

    /**
     * The same as a JSON Schema, in the order in which it is to be printed.
     *
     * @param shared collects what is told once and referred to by name
     */
    Map<String, Object> schema(Map<String, Object> shared);

    /** What may stand there, for those who offer it. */
    Allowed allowed();

    /**
     * The form of what a step leads to; nothing where no such step is known.
     *
     * @param step a key, or the index of an item such as {@code [2]}
     */
    default Optional<Form> inner(String step) {
        return Optional.empty();
    }

    /** The step that was left unsaid, because a value stands alone for the whole: {@code file}, or {@code [0]}. */
    default Optional<String> unsaid(Node node) {
        return Optional.empty();
    }

    /**
     * The keys that a mapping may have.
     *
     * @param given the keys it has, by which ways to say a thing are told apart
     */
    default List<Field> fields(Collection<String> given) {
        return List.of();
    }

    /**
     * A wanted value in the unit and the spelling of one that stands there, where it keeps its meaning: {@code 0.35} for
     * {@code 0.25 mm} is {@code 0.35 mm}, and so is {@code 0.035 cm}.
     */
    default String restyled(String standing, String wanted) {
        return wanted;
    }

    /** A bare number with the unit that it is in; any other value as it is. */
    default String measured(String wanted) {
        return wanted;
    }
}
