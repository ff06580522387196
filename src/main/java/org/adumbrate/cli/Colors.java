package org.adumbrate.cli;

import java.util.Map;

/** Whether help and complaints may be coloured. */
final class Colors {
    private Colors() {}

    /** The decision for this process; the launcher says which streams are terminals. */
    static boolean here() {
        return wanted(
                Boolean.getBoolean("adumbrate.terminal.out"),
                Boolean.getBoolean("adumbrate.terminal"),
                System.getenv());
    }

    /**
     * Colours are for terminals, and only if nobody objects: {@code NO_COLOR}, present and not empty, says that none are
     * wanted (no-color.org), and a terminal that is {@code dumb} cannot show them. Help and complaints look alike, so both
     * streams must be terminals.
     *
     * @param out true if standard output is a terminal
     * @param err true if standard error is a terminal
     * @param environment the variables of the process
     */
    static boolean wanted(boolean out, boolean err, Map<String, String> environment) {
        return out
                && err
                && environment.getOrDefault("NO_COLOR", "").isEmpty()
                && !environment.getOrDefault("TERM", "").equals("dumb");
    }
}
