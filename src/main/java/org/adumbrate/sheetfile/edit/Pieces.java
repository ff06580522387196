package org.adumbrate.sheetfile.edit;

import java.util.ArrayList;
import java.util.List;

/**
 * A text in the making: pieces of the old one and new ones between them, so that what stayed is known however many splices
 * follow each other.
 */
final class Pieces {
    /** @param from where it begins in the old text; -1 for a new piece */
    private record Piece(int from, String text) {
        Piece part(int begin, int end) {
            return new Piece(from < 0 ? from : from + begin, text.substring(begin, end));
        }
    }

    private List<Piece> pieces;
    private final int oldLength;

    Pieces(String text) {
        pieces = List.of(new Piece(0, text));
        oldLength = text.length();
    }

    /** Splices, counted in the text as it stands. */
    void splice(Splice splice) {
        List<Piece> result = new ArrayList<>();
        int at = 0;
        boolean done = false;
        for (Piece piece : pieces) {
            int end = at + piece.text().length();
            if (splice.from() > at) {
                result.add(piece.part(0, Math.min(piece.text().length(), splice.from() - at)));
            }
            if (!done && end >= splice.from()) {
                result.add(new Piece(-1, splice.text()));
                done = true;
            }
            if (splice.to() < end) {
                result.add(piece.part(Math.max(0, splice.to() - at), piece.text().length()));
            }
            at = end;
        }
        result.removeIf(piece -> piece.text().isEmpty());
        pieces = result;
    }

    /** The text as it stands. */
    String text() {
        StringBuilder text = new StringBuilder();
        pieces.forEach(piece -> text.append(piece.text()));
        return text.toString();
    }

    /** Where it differs from the old text, in order. */
    List<EditResult.Span> spans() {
        List<EditResult.Span> spans = new ArrayList<>();
        int oldAt = 0;
        int newAt = 0;
        int newFrom = 0;
        for (Piece piece : pieces) {
            if (piece.from() >= 0) {
                add(spans, oldAt, piece.from(), newFrom, newAt);
                oldAt = piece.from() + piece.text().length();
                newFrom = newAt + piece.text().length();
            }
            newAt += piece.text().length();
        }
        add(spans, oldAt, oldLength, newFrom, newAt);
        return spans;
    }

    private static void add(List<EditResult.Span> spans, int oldFrom, int oldTo, int newFrom, int newTo) {
        if (oldFrom < oldTo || newFrom < newTo) {
            spans.add(new EditResult.Span(oldFrom, oldTo, newFrom, newTo));
        }
    }
}
