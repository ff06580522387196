package org.adumbrate.sheetfile.form;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.adumbrate.sheetfile.Metres;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/** Reads a length in the model outside a sheet file, by the same rules. */
public final class MetresText {
    private static final Range ANY = new Range(-10_000, Double.NEGATIVE_INFINITY, 10_000, List.of());

    private MetresText() {}

    /** The length that a text names, such as {@code 1.65m} or {@code 5.5 ft}; empty if it names none. */
    public static Optional<Metres> parse(String text) {
        Notes notes = new Notes(Path.of("length"));
        ScalarNode node = new ScalarNode(Tag.STR, text.strip(), ScalarStyle.PLAIN);
        Quantity quantity = new Quantity(Measure.of(Metres.class, "m").orElseThrow(), ANY);
        return quantity.read(node, Cursor.top(notes)).map(Metres.class::cast);
    }
}
