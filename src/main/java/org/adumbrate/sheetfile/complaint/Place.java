package org.adumbrate.sheetfile.complaint;

import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * A place in the sheet file.
 *
 * @param line counted from 1
 * @param column counted from 1
 */
public record Place(int line, int column) {
    /** Where the text begins. */
    public static final Place START = new Place(1, 1);

    public static Place of(Mark mark) {
        return new Place(mark.getLine() + 1, mark.getColumn() + 1);
    }

    public static Place of(Node node) {
        return node.getStartMark().map(Place::of).orElse(START);
    }

    /** The place that follows a piece of text. */
    public static Place after(String text) {
        int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
        int lineStart = text.lastIndexOf('\n') + 1;
        return new Place(line, 1 + text.codePointCount(lineStart, text.length()));
    }
}
