package org.adumbrate.sheetfile.form;

import java.nio.file.Path;
import java.util.Optional;
import org.adumbrate.geometry.SheetSize;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/** Reads a printed size outside a sheet file, by the same rules. */
public final class PaperSize {
    /** Exporters round pages to whole points; sides this near to a paper's, in mm, are that paper's. */
    private static final double ROUNDED_MM = 0.5;

    private PaperSize() {}

    /** The paper of the trade that has a size, such as {@code A3 landscape}; empty if none has. */
    public static Optional<String> nameOf(SheetSize size) {
        return Paper.names().stream()
                .filter(name -> isNear(Paper.named(name).orElseThrow(), size))
                .findFirst();
    }

    private static boolean isNear(SheetSize one, SheetSize other) {
        return Math.abs(one.widthMm() - other.widthMm()) <= ROUNDED_MM
                && Math.abs(one.heightMm() - other.heightMm()) <= ROUNDED_MM;
    }

    /** The size that a text names, such as {@code 17x11in} or {@code A3 landscape}; empty if it names none. */
    public static Optional<SheetSize> parse(String text) {
        Notes notes = new Notes(Path.of("size"));
        ScalarNode node = new ScalarNode(Tag.STR, text, ScalarStyle.PLAIN);
        Optional<?> size = new Size().read(node, Cursor.top(notes));
        return notes.complaints().isEmpty() ? size.map(SheetSize.class::cast) : Optional.empty();
    }
}
