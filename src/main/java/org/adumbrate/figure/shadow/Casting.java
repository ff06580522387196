package org.adumbrate.figure.shadow;

import java.util.List;

/**
 * Figures and what their shadows fall on.
 *
 * @param receiver what they fall on
 * @param figures what casts them; all the figures on one floor, or with a depth pass all there are: what several of them
 *     hide of the sun counts once
 */
public record Casting(Receiver receiver, List<StandingSolid> figures) {
    /** Copies the list. */
    public Casting {
        figures = List.copyOf(figures);
    }
}
