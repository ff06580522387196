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

    /** Splices in their order, which do not overlap, counted in the text as it stands. */
    void splice(List<Splice> splices) {
        List<Piece> result = new ArrayList<>();
        Passage cursor = new Passage(pieces);
        for (Splice splice : splices) {
            cursor.pass(splice.from(), result);
            result.add(new Piece(-1, splice.text()));
            cursor.pass(splice.to(), new ArrayList<>());
        }
        cursor.pass(Integer.MAX_VALUE, result);
        result.removeIf(piece -> piece.text().isEmpty());
        pieces = result;
    }

    /** Goes through pieces once. */
    private static final class Passage {
        private final List<Piece> pieces;
        private int next;
        private int begin;
        private int at;

        Passage(List<Piece> pieces) {
            this.pieces = pieces;
        }

        /** Goes on to a char, and collects what it passes. */
        void pass(int to, List<Piece> passed) {
            while (next < pieces.size() && at < to) {
                Piece piece = pieces.get(next);
                int end = begin + piece.text().length();
                int until = Math.min(end, to);
                passed.add(piece.part(at - begin, until - begin));
                at = until;
                if (at == end) {
                    next++;
                    begin = end;
                }
            }
        }
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
