package org.adumbrate.sheetfile;

import java.util.List;

/**
 * A floor that figures and planting stand on.
 *
 * @param elevation above the model's zero
 * @param outline where on the sheet it is seen, and so where shadows on it may fall; everywhere where empty
 */
@Written(orFirstAlone = true)
public record Floor(
        @Key(value = "Its elevation, such as 3.35 m.", min = -10_000, max = 10_000)
        Metres elevation,

        @Key(
                value =
                        "Where on the sheet it is seen, and so where shadows on it may fall: polygons in mm; everywhere where"
                                + " left out.",
                oneOrMany = true)
        List<Polygon> outline) {
    /** Copies the list. */
    public Floor {
        outline = List.copyOf(outline);
    }
}
