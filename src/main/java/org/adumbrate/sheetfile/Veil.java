package org.adumbrate.sheetfile;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.Srgb;

/** A translucent fill over a region, which lines enclose, points state, or the sheet file names. */
public sealed interface Veil permits Veil.ByLines, Veil.ByPoints, Veil.ByRegion {
    /** The colour of the fill. */
    Srgb fill();

    /** How much it covers. */
    Percent opacity();

    /** Lines over it. */
    Optional<Hatch> etch();

    /**
     * Over the regions that lines enclose.
     *
     * @param lines the vector file that shows them; the sheet's own lines where left out
     * @param color their stroke colour
     * @param gap openings between the lines that are closed, up to this width
     * @param stems true to cover the stems of trees too, false for the crowns alone; where left out, lines of planting and lines
     *     without a pen are taken for trees, and their stems are left bare
     * @param fill the colour of the fill
     * @param opacity how much it covers
     * @param etch lines over it
     */
    record ByLines(
            @Key("The vector file that shows the lines around it; the sheet's own lines where left out.")
            Optional<Path> lines,

            @Key("The stroke colour of the lines around it.")
            Srgb color,

            @Key(
                    value = "The widest opening between these lines that is closed, in mm.",
                    byDefault = "1 mm",
                    min = 0,
                    max = 100)
            Length gap,

            @Key(
                    "True covers the stems of trees too, false their crowns alone; where left out, false for lines of planting or"
                            + " without a pen, and true for others.")
            Optional<Boolean> stems,

            @Key(value = "The colour of the fill.", byDefault = "white")
            Srgb fill,

            @Key(value = "How much it covers, in percent.", byDefault = "40", min = 0, max = 100)
            Percent opacity,

            @Key(value = "Lines over it; none where left out.", innerDefault = "spacing: 1.5 mm")
            Optional<Hatch> etch)
            implements Veil {}

    /**
     * Over stated polygons.
     *
     * @param points the polygons, at least one
     * @param fill the colour of the fill
     * @param opacity how much it covers
     * @param etch lines over it
     */
    record ByPoints(
            @Key(value = "The polygons that it covers, in mm.", atLeast = 1, oneOrMany = true)
            List<Polygon> points,

            @Key(value = "The colour of the fill.", byDefault = "white")
            Srgb fill,

            @Key(value = "How much it covers, in percent.", byDefault = "40", min = 0, max = 100)
            Percent opacity,

            @Key(value = "Lines over it; none where left out.", innerDefault = "spacing: 1.5 mm")
            Optional<Hatch> etch)
            implements Veil {}

    /**
     * Over a region of the sheet file.
     *
     * @param region its name
     * @param fill the colour of the fill
     * @param opacity how much it covers
     * @param etch lines over it
     */
    record ByRegion(
            @Key("The region that it covers, by name.") String region,

            @Key(value = "The colour of the fill.", byDefault = "white")
            Srgb fill,

            @Key(value = "How much it covers, in percent.", byDefault = "40", min = 0, max = 100)
            Percent opacity,

            @Key(value = "Lines over it; none where left out.", innerDefault = "spacing: 1.5 mm")
            Optional<Hatch> etch)
            implements Veil {}
}
