package org.adumbrate.sheetfile;

import java.util.List;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;

/**
 * A region of the sheet with straight edges.
 *
 * @param corners at least three; the last is joined to the first
 */
@Written(asList = true, shared = true)
public record Polygon(
        @Key(value = "Corners [x, y] in mm.", atLeast = 3) List<SheetPoint> corners) {
    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if its sides cross too often for a region
     */
    public Polygon {
        Region.requireFewCrossings(corners);
        corners = List.copyOf(corners);
    }
}
