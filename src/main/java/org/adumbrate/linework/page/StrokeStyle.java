package org.adumbrate.linework.page;

import java.util.Optional;
import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.LineJoin;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.Stroke;
import org.adumbrate.linework.clip.TooIntricateException;

/** How a stroke looks, in mm of the page. */
public record StrokeStyle(Srgb color, double widthMm, Dash dash, LineCap cap, LineJoin join) {
    /** The longest patterns of ISO 128-2 have 8 lengths. */
    private static final int MOST_DASHES = 64;

    /** A stroke that looks so. */
    Stroke stroke(VectorPath<PagePoint> path, Optional<String> layer) {
        return new Stroke(path, color, widthMm, dash, cap, join, layer);
    }

    /**
     * Requires a dash pattern as drawings have them.
     *
     * @throws TooIntricateException if a dash pattern has more lengths than any drawing's
     */
    public static void requireFewDashes(int lengths) {
        if (lengths > MOST_DASHES) {
            throw new TooIntricateException("has dashes of more than " + MOST_DASHES + " lengths");
        }
    }
}
