package org.adumbrate.editing;

import java.util.ArrayList;
import java.util.List;

/**
 * The edits of one sheet file.
 *
 * @param done those made, the last of them at the end
 * @param undone those undone, the next to be made again at the end
 */
record History(List<PastEdit> done, List<PastEdit> undone) {
    static final History NONE = new History(List.of(), List.of());

    /** Copies the lists. */
    History {
        done = List.copyOf(done);
        undone = List.copyOf(undone);
    }

    History with(PastEdit edit) {
        return new History(and(done, edit), List.of());
    }

    History undoing(PastEdit asUndone) {
        return new History(done.subList(0, done.size() - 1), and(undone, asUndone));
    }

    History redoing(PastEdit asDone) {
        return new History(and(done, asDone), undone.subList(0, undone.size() - 1));
    }

    /** Without the oldest edit. */
    History shorter() {
        return done.isEmpty()
                ? new History(done, undone.subList(1, undone.size()))
                : new History(done.subList(1, done.size()), undone);
    }

    int size() {
        return done.size() + undone.size();
    }

    /**
     * As it is for a text: the history is written before the file, so where a run ended between the two, its last step was not
     * made.
     *
     * @param digest of the text
     */
    History at(String digest) {
        if (isUnmade(done, digest)) {
            return new History(
                    done.subList(0, done.size() - 1), and(undone, last(done).reversed()));
        }
        return isUnmade(undone, digest)
                ? new History(and(done, last(undone).reversed()), undone.subList(0, undone.size() - 1))
                : this;
    }

    private static boolean isUnmade(List<PastEdit> edits, String digest) {
        return !edits.isEmpty()
                && last(edits).before().equals(digest)
                && !last(edits).after().equals(digest);
    }

    private static PastEdit last(List<PastEdit> edits) {
        return edits.get(edits.size() - 1);
    }

    private static List<PastEdit> and(List<PastEdit> edits, PastEdit edit) {
        List<PastEdit> more = new ArrayList<>(edits);
        more.add(edit);
        return more;
    }
}
