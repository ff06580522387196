package org.adumbrate.linework.dashes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The rhythms of the dashed lines of each look, and how many dashes keep each. */
final class KnownRhythms {
    /** A rhythm that so many dashes keep is that of shorter lines with the same look, too: it is proven. */
    private static final int PROVEN = 15;

    private static final int MOST = 8;

    private static final class Count {
        private final Rhythm rhythm;
        private int dashes;

        Count(Rhythm rhythm) {
            this.rhythm = rhythm;
        }
    }

    private final Map<Integer, List<Count>> counts = new HashMap<>();

    void add(int look, Rhythm.Span span) {
        List<Count> known = counts.computeIfAbsent(look, l -> new ArrayList<>());
        Count same = null;
        for (Count count : known) {
            same = same == null && isSame(count.rhythm, span.rhythm()) ? count : same;
        }
        if (same == null) {
            same = new Count(span.rhythm());
            known.add(same);
        }
        same.dashes += span.count();
    }

    /** Those that are proven for a look, those of most dashes first. */
    List<Rhythm> of(int look) {
        return counts.getOrDefault(look, List.of()).stream()
                .filter(count -> count.dashes >= PROVEN)
                .sorted((a, b) -> Integer.compare(b.dashes, a.dashes))
                .limit(MOST)
                .map(count -> count.rhythm)
                .toList();
    }

    /** Whether one that is proven for a look has a gap of some length. */
    boolean hasGap(int look, double gapMm) {
        for (Count count : counts.getOrDefault(look, List.of())) {
            for (int slot = 0; count.dashes >= PROVEN && slot < count.rhythm.period(); slot++) {
                if (count.rhythm.isGap(gapMm, slot)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether two are the same, wherever they begin. */
    private static boolean isSame(Rhythm a, Rhythm b) {
        for (int slot = 0; slot < b.period() && a.period() == b.period(); slot++) {
            Rhythm turned = b.startingAt(slot);
            boolean same = true;
            for (int k = 0; k < a.period(); k++) {
                same &= a.isWhole(turned.dash(k), k) && Math.abs(a.gap(k) - turned.gap(k)) <= 0.03;
            }
            if (same) {
                return true;
            }
        }
        return false;
    }
}
