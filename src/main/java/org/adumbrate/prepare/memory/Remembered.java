package org.adumbrate.prepare.memory;

import java.lang.ref.SoftReference;
import java.util.Optional;

/** A part that was made, held for certain while recent runs use it, and afterwards as long as there is room. */
final class Remembered {
    private final SoftReference<Object> loose;
    private Object firm;
    private long usedBy;

    Remembered(Object value, long run) {
        this.loose = new SoftReference<>(value);
        this.firm = value;
        this.usedBy = run;
    }

    /** The part, for a run; nothing if it was given up. */
    Optional<Object> usedBy(long run) {
        firm = loose.get();
        usedBy = Math.max(usedBy, run);
        return Optional.ofNullable(firm);
    }

    /** Lets the Java machine give up a part that no run after one has used. */
    void loosenIfUsedBefore(long run) {
        if (usedBy < run) {
            firm = null;
        }
    }
}
