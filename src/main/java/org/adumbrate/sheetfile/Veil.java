package org.adumbrate.sheetfile;

import java.nio.file.Path;
import java.util.List;
import org.adumbrate.geometry.Srgb;

/** A translucent fill over a region, which lines enclose or points state. */
public sealed interface Veil {
    /** The colour of the fill. */
    Srgb fill();

    /** How much it covers. */
    Percent opacity();

    /**
     * Over the regions that lines enclose.
     *
     * @param lines the vector file that shows them
     * @param color their stroke colour
     * @param fill the colour of the fill
     * @param opacity how much it covers
     */
    record ByLines(
            @Key("The vector file that shows the lines around it.")
            Path lines,

            @Key("The stroke colour of the lines around it.")
            Srgb color,

            @Key(value = "The colour of the fill.", byDefault = "white")
            Srgb fill,

            @Key(value = "How much it covers, in percent.", byDefault = "40", min = 0, max = 100)
            Percent opacity)
            implements Veil {}

    /**
     * Over stated polygons.
     *
     * @param points the polygons, at least one
     * @param fill the colour of the fill
     * @param opacity how much it covers
     */
    record ByPoints(
            @Key(value = "The polygons that it covers, in mm.", atLeast = 1, oneOrMany = true)
            List<Polygon> points,

            @Key(value = "The colour of the fill.", byDefault = "white")
            Srgb fill,

            @Key(value = "How much it covers, in percent.", byDefault = "40", min = 0, max = 100)
            Percent opacity)
            implements Veil {}
}
