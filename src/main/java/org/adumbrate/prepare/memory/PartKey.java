package org.adumbrate.prepare.memory;

import java.util.List;

/** By what a part is known: what it is, and the content of all that it depends on. */
final class PartKey {
    private final Part part;
    private final List<?> from;
    private final int hash;

    PartKey(Part part, List<?> from) {
        this.part = part;
        this.from = from;
        this.hash = 31 * part.hashCode() + from.hashCode();
    }

    Part part() {
        return part;
    }

    List<?> from() {
        return from;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PartKey key && hash == key.hash && part == key.part && from.equals(key.from);
    }

    @Override
    public int hashCode() {
        return hash;
    }
}
