package org.adumbrate.linework.svg.css;

import java.util.List;
import java.util.Locale;

/** At-rules that the library hands over as they are written. */
final class CssAtRules {
    private static final List<String> STYLING =
            List.of("@container", "@layer", "@scope", "@starting-style", "@supports");

    private CssAtRules() {}

    /** Whether a rule would style elements; fonts, name spaces and animations do not, at rest. */
    static boolean styles(String text) {
        String rule = text.strip().toLowerCase(Locale.ROOT);
        return STYLING.stream().anyMatch(rule::startsWith);
    }
}
