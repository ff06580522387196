package org.adumbrate.sheetfile.form;

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
}
