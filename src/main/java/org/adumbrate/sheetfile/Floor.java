package org.adumbrate.sheetfile;

import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.SheetPoint;

/**
 * A floor that figures and planting stand on.
 *
 * @param elevation above the model's zero
 * @param outline where on the sheet it is seen, and so where shadows on it may fall; everywhere where that and the faces are empty
 * @param faces the same by a point in each face between lines; not together with the outline
 * @param of the lines that bound these faces: names of pens, or {@code cut}; all that are drawn where empty
 * @param gap openings between these lines that are closed, up to this width
 * @param area how much the faces covered when they were chosen, if that was noted
 */
@Written(
        orFirstAlone = true,
        notTogether = {"outline", "faces"},
        onlyWith = {"faces", "of", "gap", "area"})
public record Floor(
        @Key(value = "Its elevation, such as 3.35 m.", min = -10_000, max = 10_000)
        Metres elevation,

        @Key(
                value =
                        "Where on the sheet it is seen, and so where shadows on it may fall: polygons in mm; everywhere where"
                                + " left out.",
                oneOrMany = true)
        List<Polygon> outline,

        @Key("Points [x, y] in mm, each in a face of the drawing where it is seen, in place of an outline.")
        List<SheetPoint> faces,

        @Key(
                value = "The lines that bound these faces: pens by name, and cut; all that are drawn where left out.",
                oneOrMany = true)
        List<String> of,

        @Key(
                value = "The widest opening between these lines that is closed, in mm.",
                byDefault = "1 mm",
                min = 0,
                max = 100)
        Length gap,

        @Key(
                value = "How much they covered when they were chosen, in mm2: you are warned when it is far from that.",
                above = 0,
                max = 1e8)
        Optional<SquareMillimetres> area)
        implements StatedFaces {
    /** Copies the lists. */
    public Floor {
        outline = List.copyOf(outline);
        faces = List.copyOf(faces);
        of = List.copyOf(of);
    }

    /** A floor that is seen within polygons, or everywhere. */
    public Floor(Metres elevation, List<Polygon> outline) {
        this(elevation, outline, List.of(), List.of(), USUAL_GAP, Optional.empty());
    }
}
