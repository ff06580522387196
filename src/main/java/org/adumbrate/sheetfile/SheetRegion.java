package org.adumbrate.sheetfile;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Srgb;

/** A part of the sheet that has a name: polygons, faces between lines, or what has a certain colour in a raster. */
@Written(orFirstAlone = true)
public sealed interface SheetRegion permits SheetRegion.ByPoints, SheetRegion.ByFaces, SheetRegion.ByColor {
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
     * Faces between lines.
     *
     * @param faces a point in each face, at least one
     * @param of the lines that bound them: names of pens, or {@code cut}; all that are drawn where empty
     * @param gap openings between these lines that are closed, up to this width
     * @param area how much they covered when they were chosen, if that was noted
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
            Optional<SquareMillimetres> area)
            implements SheetRegion, StatedFaces {
        /** Copies the lists. */
        public ByFaces {
            faces = List.copyOf(faces);
            of = List.copyOf(of);
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
