package org.adumbrate.figure.outline;

import java.util.OptionalDouble;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.Space;

/**
 * The outline of a person, a plant or a bird, standing on its foot.
 *
 * @param name what it is called
 * @param body what it covers, in a unit of its own: the foot is at (0, 0), x is to the right, y is down, so that what stands
 *     above the foot has a negative y
 * @param height from the lowest to the highest point of the body in that unit; it stands for the stature
 * @param nominalM the stature in metres that is meant where none is told, for a bird its span; none for an outline of which
 *     that is not known
 */
public record FigureOutline(String name, Region<PagePoint> body, double height, OptionalDouble nominalM) {
    /** A lower edge this near to the origin, as a share of the height, is meant to stand on it. */
    private static final double ON_THE_GROUND = 0.02;

    /** The lowest share of the height, which a figure stands on. */
    private static final double SOLE = 0.1;

    /** @throws IllegalArgumentException if the height is not above zero */
    public FigureOutline {
        if (!(height > 0 && Double.isFinite(height))) {
            throw new IllegalArgumentException("an outline needs a height above zero, not " + height);
        }
    }

    /**
     * From what was drawn. Its origin is the foot if it lies on the lower edge; else the foot is in the middle below the
     * lowest tenth.
     *
     * @param drawn in the coordinates of the drawing, y down
     * @throws IllegalArgumentException if it covers nothing
     */
    static FigureOutline standing(String name, Region<PagePoint> drawn, OptionalDouble nominalM) {
        Extent extent = drawn.extent().orElseThrow(() -> new IllegalArgumentException("an outline needs a body"));
        double height = extent.height();
        boolean onEdge =
                Math.abs(extent.bottom()) <= ON_THE_GROUND * height && extent.left() <= 0 && extent.right() >= 0;
        if (onEdge) {
            return new FigureOutline(name, drawn, height, nominalM);
        }
        double sole = extent.bottom() - SOLE * height;
        Extent lowest = drawn.within(
                        Region.rectangle(Space.PAGE, extent.left() - 1, sole, extent.right() + 1, extent.bottom() + 1))
                .extent()
                .orElse(extent);
        Region<PagePoint> moved = drawn.transform(Affine.scalingThenShift(
                Space.PAGE, Space.PAGE, 1, 1, -(lowest.left() + lowest.right()) / 2, -extent.bottom()));
        return new FigureOutline(name, moved, height, nominalM);
    }
}
