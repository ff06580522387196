package org.adumbrate.linework.outline;

import java.util.Optional;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.VectorPath;

/**
 * A filled shape that can be read as a line.
 *
 * @param outline the shape as it is filled
 * @param middle where the line runs; with several runs if the shape branches
 * @param lengthMm how long that is
 * @param widthMm how wide the shape is all along
 * @param cap how it ends: round where the shape goes on past the middle's ends by half its width
 * @param across how else it can be read, if it is no longer than lines are wide: as a line along its other side
 */
public record OutlinedLine(
        VectorPath<PagePoint> outline,
        VectorPath<PagePoint> middle,
        double lengthMm,
        double widthMm,
        LineCap cap,
        Optional<OutlinedLine> across) {
    /** How many times as long as wide it is. */
    public double slenderness() {
        return lengthMm / widthMm;
    }
}
