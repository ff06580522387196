package org.adumbrate.hostile;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;

/** How the readings of one format ended. */
final class Tally {
    static final String HEAD = """
            | format | cases | read whole | refused in one line | anything else | slowest, ms |
            | --- | --- | --- | --- | --- | --- |
            """;

    private final Map<Outcome.Kind, Integer> counts = new EnumMap<>(Outcome.Kind.class);
    private int cases;
    private long slowest;

    void add(Outcome outcome) {
        cases++;
        counts.merge(outcome.kind(), 1, Integer::sum);
        slowest = Math.max(slowest, outcome.millis());
    }

    int read() {
        return counts.getOrDefault(Outcome.Kind.READ, 0);
    }

    int refused() {
        return counts.getOrDefault(Outcome.Kind.REFUSED, 0);
    }

    /** A row of a table. */
    String row(String name) {
        return String.format(
                Locale.ROOT,
                "| %s | %d | %d | %d | %d | %d |%n",
                name,
                cases,
                read(),
                refused(),
                cases - read() - refused(),
                slowest);
    }
}
