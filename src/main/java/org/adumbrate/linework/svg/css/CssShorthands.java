package org.adumbrate.linework.svg.css;

import java.util.List;

/** Properties that set several at once. */
final class CssShorthands {
    private CssShorthands() {}

    /** What a property sets: itself, as most do. */
    static List<String> longhands(String property) {
        return property.equals("marker") ? List.of("marker-start", "marker-mid", "marker-end") : List.of(property);
    }
}
