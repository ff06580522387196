package org.adumbrate.sheetfile.form;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.geometry.Frame;
import org.adumbrate.sheetfile.PassFrame;
import org.adumbrate.sheetfile.complaint.Nearest;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** The word {@code sheet}, or a rectangle on it. */
record FrameOrSheet() implements Form {
    private static final String WHOLE = "sheet";

    @Override
    public boolean fits(Node node) {
        return node instanceof ScalarNode || Row.FRAME.fits(node);
    }

    @Override
    public Optional<?> read(Node node, Cursor at) {
        if (Row.FRAME.fits(node)) {
            return Row.FRAME.read(node, at).map(frame -> new PassFrame(Optional.of((Frame) frame)));
        }
        String word = Cursor.text(node).orElse("");
        return word.equals(WHOLE)
                ? Optional.of(new PassFrame(Optional.empty()))
                : at.unexpected(node, expected() + Nearest.hint(word, List.of(WHOLE)));
    }

    @Override
    public String expected() {
        return WHOLE + " or " + Row.FRAME.expected() + " in mm";
    }

    @Override
    public Allowed allowed() {
        return Allowed.of("frame", List.of("sheet"));
    }

    @Override
    public Optional<Form> inner(String step) {
        return Row.FRAME.inner(step);
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> shared) {
        return SchemaJson.object("anyOf", List.of(SchemaJson.object("const", WHOLE), Row.FRAME.schema(shared)));
    }
}
