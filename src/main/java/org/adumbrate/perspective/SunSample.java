package org.adumbrate.perspective;

import java.util.Locale;
import org.adumbrate.geometry.SheetPoint;

/**
 * An upright on the drawing and the shadow that it casts. The upright and the tip of its shadow must lie on one level floor:
 * a shadow that runs over an edge, up a step or up a wall tells a wrong sun.
 *
 * @param foot where the upright stands
 * @param head its upper end, straight above the foot
 * @param tip where the shadow of the head falls
 */
public record SunSample(SheetPoint foot, SheetPoint head, SheetPoint tip) {
    /** @throws IllegalArgumentException if a number is not finite */
    public SunSample {
        if (!Double.isFinite(foot.x() + foot.y() + head.x() + head.y() + tip.x() + tip.y())) {
            throw new IllegalArgumentException("a shadow sample needs finite points");
        }
    }

    /** Which one it is, for a message. */
    String told() {
        return "the shadow sample with its foot at " + told(foot) + ", head at " + told(head) + " and tip at "
                + told(tip);
    }

    private static String told(SheetPoint point) {
        return String.format(Locale.ROOT, "(%.1f, %.1f)", point.x(), point.y());
    }
}
