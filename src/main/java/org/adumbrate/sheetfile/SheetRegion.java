package org.adumbrate.sheetfile;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Srgb;

/** A part of the sheet that has a name: polygons, or what has a certain colour in a raster. */
@Written(orFirstAlone = true)
public sealed interface SheetRegion permits SheetRegion.ByPoints, SheetRegion.ByColor {
    /**
     * Within stated polygons.
     *
     * @param points the polygons, at least one
     */
    record ByPoints(
            @Key(value = "The polygons that it covers, in mm.", atLeast = 1, oneOrMany = true)
            List<Polygon> points) implements SheetRegion {
        /** Copies the list. */
        public ByPoints {
            points = List.copyOf(points);
        }
    }

    /**
     * Where a raster has a certain colour.
     *
     * @param raster the raster file, such as a render of materials, each in one flat colour
     * @param color the colour
     * @param tolerance the largest difference from it in any sample, in levels of 255
     * @param frame where the raster lies, if it is not to be found by its edges
     */
    record ByColor(
            @Key("A raster file with a flat colour for each material.")
            Path raster,

            @Key("The colour of its pixels there.") Srgb color,

            @Key(
                    value = "How far a pixel may be from that colour, in levels of 255.",
                    byDefault = "4",
                    min = 0,
                    max = 255)
            int tolerance,

            @Key(
                    "Where it lies: the whole sheet, or [left, top, width, height] in mm; found by its edges where left out.")
            Optional<PassFrame> frame)
            implements SheetRegion {}
}
