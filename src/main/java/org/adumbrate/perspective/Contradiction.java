package org.adumbrate.perspective;

import java.util.List;
import org.adumbrate.geometry.SheetPoint;

/**
 * Two sources that cannot both be right.
 *
 * @param key the key path of the sheet file that states one of them
 * @param text both figures, the lines that tell one of them, and what to do; one line
 * @param at where these lines stand on the sheet
 * @param isSure true if too many lines say so for chance
 */
public record Contradiction(String key, String text, List<SheetPoint> at, boolean isSure) {
    /** Copies the list. */
    public Contradiction {
        at = List.copyOf(at);
    }
}
