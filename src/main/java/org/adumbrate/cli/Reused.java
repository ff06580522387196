package org.adumbrate.cli;

import java.util.Locale;
import java.util.Map;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import org.adumbrate.prepare.memory.Run;

/** What a build reused and what it made anew, in words. */
final class Reused {
    private Reused() {}

    /** True if there is anything to tell. */
    static boolean anything(Map<String, Run.Count> account) {
        return account.values().stream().anyMatch(count -> count.reused() > 0);
    }

    /** One line. */
    static String told(double seconds, Map<String, Run.Count> account) {
        return String.format(
                Locale.ROOT,
                "built in %.1f s; reused: %s; made anew: %s",
                seconds,
                listed(account, Run.Count::reused),
                listed(account, Run.Count::made));
    }

    private static String listed(Map<String, Run.Count> account, ToIntFunction<Run.Count> number) {
        String list = account.entrySet().stream()
                .filter(stage -> number.applyAsInt(stage.getValue()) > 0)
                .map(stage -> stage.getKey() + (total(stage.getValue()) == 1 ? "" : share(stage.getValue(), number)))
                .collect(Collectors.joining(", "));
        return list.isEmpty() ? "nothing" : list;
    }

    private static int total(Run.Count count) {
        return count.reused() + count.made();
    }

    private static String share(Run.Count count, ToIntFunction<Run.Count> number) {
        int these = number.applyAsInt(count);
        return these == total(count) ? " (all " + these + ")" : " (" + these + " of " + total(count) + ")";
    }
}
