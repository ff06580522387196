package org.adumbrate.linework.page;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.adumbrate.linework.LeftOut;

/** Counts what is left out, by kind. */
final class LeftOutTally {
    private final Map<LeftOut.Kind, LeftOut> byKind = new EnumMap<>(LeftOut.Kind.class);

    void add(LeftOut.Kind kind, double areaMm2) {
        byKind.merge(
                kind,
                new LeftOut(kind, 1, areaMm2),
                (a, b) -> new LeftOut(kind, a.count() + b.count(), a.areaMm2() + b.areaMm2()));
    }

    boolean isEmpty() {
        return byKind.isEmpty();
    }

    int count() {
        return byKind.values().stream().mapToInt(LeftOut::count).sum();
    }

    /** What was counted, in the order of the kinds. */
    List<LeftOut> all() {
        return List.copyOf(byKind.values());
    }
}
