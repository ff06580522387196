package org.adumbrate.start;

import java.nio.file.Path;
import java.util.List;

/**
 * A first sheet file, and how it came about.
 *
 * @param file the sheet file
 * @param decided what was decided
 * @param open what was not
 */
public record StartResult(Path file, List<Decision> decided, List<Decision> open) {
    /** Copies the lists. */
    public StartResult {
        decided = List.copyOf(decided);
        open = List.copyOf(open);
    }

    /**
     * One decision.
     *
     * @param what the key of the sheet file that it is about, such as {@code passes.shadow}
     * @param choice what was chosen, such as a file
     * @param reason why
     */
    public record Decision(String what, String choice, String reason) {}
}
