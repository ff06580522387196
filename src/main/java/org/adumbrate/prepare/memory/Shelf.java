package org.adumbrate.prepare.memory;

import java.util.List;
import java.util.Optional;

/** Where parts of sheets are kept for later runs of the program. What it cannot find or keep is made again; it never fails. */
public interface Shelf {
    /**
     * What was kept.
     *
     * @param part what it is, in a word
     * @param type what the value must be; anything else counts as missing
     * @param from all that it depends on
     */
    <T> Optional<T> find(String part, Class<T> type, List<?> from);

    /** Keeps a value of a type, unless it is too large. */
    void keep(String part, Class<?> type, List<?> from, Object value);

    /** Gives up what was used longest ago, until the rest is no more than the shelf may hold. */
    void trim();
}
