package org.adumbrate.sheetfile;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/**
 * A length in the model.
 *
 * @param m in metres
 */
public record Metres(double m) {
    private static final Range ANY = new Range(-10_000, Double.NEGATIVE_INFINITY, 10_000, List.of());

    /** The length that a text outside a sheet file names, such as {@code 1.65m} or {@code 5.5 ft}; empty if it names none. */
    public static Optional<Metres> parse(String text) {
        Notes notes = new Notes(Path.of("length"));
        ScalarNode node = new ScalarNode(Tag.STR, text.strip(), ScalarStyle.PLAIN);
        Quantity quantity = new Quantity(Measure.of(Metres.class, "m").orElseThrow(), ANY);
        return quantity.read(node, Cursor.top(notes)).map(Metres.class::cast);
    }
}
