package org.adumbrate.prepare.memory;

import java.util.List;

/** By what a part is known: what it is, of which type, and the content of all that it depends on. */
final class PartKey {
    private final Part part;
    private final Class<?> type;
    private final List<?> from;
    private final int hash;

    PartKey(Part part, Class<?> type, List<?> from) {
        this.part = part;
        this.type = type;
        this.from = from;
        this.hash = 31 * part.hashCode() + from.hashCode();
    }

    Part part() {
        return part;
    }

    Class<?> type() {
        return type;
    }

    List<?> from() {
        return from;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PartKey key
                && hash == key.hash
                && part == key.part
                && type == key.type
                && from.equals(key.from);
    }

    @Override
    public int hashCode() {
        return hash;
    }
}
