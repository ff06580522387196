package org.adumbrate.underlay;

import java.util.List;
import org.adumbrate.geometry.SheetPoint;

/**
 * Where on the sheet a pass is seen.
 *
 * @param inside seen only in these polygons; everywhere if there are none
 * @param outside not seen in these polygons
 */
public record RegionMask(List<List<SheetPoint>> inside, List<List<SheetPoint>> outside) {
    /** Copies the lists. */
    public RegionMask {
        inside = inside.stream().map(List::copyOf).toList();
        outside = outside.stream().map(List::copyOf).toList();
    }
}
