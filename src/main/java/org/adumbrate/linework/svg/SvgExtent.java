package org.adumbrate.linework.svg;

import java.util.Optional;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.VectorPath;

/** How far a path reaches, curves and not their control points counted (SVG 2, 8.10). */
final class SvgExtent {
    /** Chords are this share of the greater side off at most. */
    private static final double TOLERANCE = 1e-5;

    private SvgExtent() {}

    /** Nothing if the path has no points. */
    static Optional<Extent> of(VectorPath<PagePoint> path) {
        Optional<Extent> rough = path.extent();
        double size =
                rough.map(extent -> Math.max(extent.width(), extent.height())).orElse(0.0);
        return size > 0 ? path.straightened(size * TOLERANCE).extent() : rough;
    }
}
