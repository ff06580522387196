package org.adumbrate.linework.pdf;

import java.io.IOException;
import java.util.Optional;
import org.adumbrate.linework.ReadingNote;

/** Counts what makes no sense in the content of a page and is passed over, as viewers do. */
final class PdfSkips {
    /** As many as are never refused. */
    private static final int FEW = 100;

    /** Of so many instructions one may make no sense. */
    private static final int SHARE = 20;

    private int count;
    private Optional<String> first = Optional.empty();

    /** Counts one. */
    void add(String what) {
        count++;
        if (first.isEmpty()) {
            first = Optional.of(what);
        }
    }

    /** What was wrong with the first, if there is one. */
    Optional<String> first() {
        return first;
    }

    /**
     * Requires that most of it makes sense.
     *
     * @param instructions how many there were in all
     * @throws DamagedContentException if many do not
     */
    void requireFew(int instructions) throws IOException {
        if (count > Math.max(FEW, instructions / SHARE)) {
            throw new DamagedContentException(
                    count + " of " + instructions + " drawing instructions make no sense; the first: " + first.get());
        }
    }

    /** What there is to say of them. */
    Optional<ReadingNote> remark() {
        return first.map(what -> new ReadingNote(
                ReadingNote.Kind.SKIPPED,
                (count == 1 ? "1 drawing instruction makes" : count + " drawing instructions make") + " no sense and "
                        + (count == 1 ? "was" : "were") + " passed over (" + what + ")"));
    }
}
