package org.adumbrate.linework.clip;

import java.util.List;
import org.adumbrate.geometry.Extent;

/**
 * An area that is seen through clips.
 *
 * @param outline the area's own outline
 * @param through the clips that cut it: what is seen lies in at least one outline of each list
 * @param frame the rectangle that the clips leave in any case
 */
public record VisibleArea(FlatOutline outline, List<List<FlatOutline>> through, Extent frame) {
    /** Copies the lists. */
    public VisibleArea {
        through = through.stream().map(List::copyOf).toList();
    }

    /** How large it is in mm² within the frame; clips of other shapes are not taken off, and overlaps count as often as drawn. */
    public double mm2() {
        return outline.areaWithin(frame);
    }
}
