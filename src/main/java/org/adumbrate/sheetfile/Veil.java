package org.adumbrate.sheetfile;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Srgb;

/** A translucent fill over a region, which lines enclose, polygons state, points in its faces tell, or the sheet file names. */
public sealed interface Veil permits Veil.ByLines, Veil.ByPoints, Veil.ByFaces, Veil.ByRegion {
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
     * Over faces between lines.
     *
     * @param faces a point in each face, at least one
     * @param of the lines that bound them: names of pens, or {@code cut}; all that are drawn where empty
     * @param gap openings between these lines that are closed, up to this width
     * @param area how much they covered when they were chosen, if that was noted
     * @param fill the colour of the fill
     * @param opacity how much it covers
     * @param etch lines over it
     */
    record ByFaces(
            @Key(value = "Points [x, y] in mm, each in a face of the drawing that it covers.", atLeast = 1)
            List<SheetPoint> faces,

            @Key(
                    value =
                            "The lines that bound these faces: pens by name, and cut; all that are drawn where left out.",
                    oneOrMany = true)
            List<String> of,

            @Key(
                    value = "The widest opening between these lines that is closed, in mm.",
                    byDefault = "1 mm",
                    min = 0,
                    max = 100)
            Length gap,

            @Key(
                    value =
                            "How much they covered when they were chosen, in mm2: you are warned when it is far from that.",
                    above = 0,
                    max = 1e8)
            Optional<SquareMillimetres> area,

            @Key(value = "The colour of the fill.", byDefault = "white")
            Srgb fill,

            @Key(value = "How much it covers, in percent.", byDefault = "40", min = 0, max = 100)
            Percent opacity,

            @Key(value = "Lines over it; none where left out.", innerDefault = "spacing: 1.5 mm")
            Optional<Hatch> etch)
            implements Veil, StatedFaces {
        /** Copies the lists. */
        public ByFaces {
            faces = List.copyOf(faces);
            of = List.copyOf(of);
        }
    }

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
