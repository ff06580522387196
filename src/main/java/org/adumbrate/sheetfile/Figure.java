package org.adumbrate.sheetfile;

import java.nio.file.Path;
import java.util.Optional;
import org.adumbrate.geometry.SheetPoint;

/**
 * A figure on a floor.
 *
 * @param outline the SVG that shows it; its origin is the foot point
 * @param foot where it stands on the sheet
 * @param floor the name of the floor it stands on; may be left out where there is one floor only
 * @param stature how tall it is
 * @param turn about its upright axis, anticlockwise seen from above: the outline's x axis then points to (cos turn, sin turn)
 *     of the model's X and Y; at 0 the outline faces the section plane
 * @param mirrored true where left and right of the outline change places
 */
public record Figure(
        @Key("The SVG outline; its origin is the foot point.")
        Path outline,

        @Key("Where it stands on the sheet: [x, y] in mm.") SheetPoint foot,

        @Key("The name of the floor it stands on; may be left out where there is one floor only.")
        Optional<String> floor,

        @Key(value = "How tall it is, such as 1.70 m.", byDefault = "1.70 m", min = 0.01, max = 100)
        Metres stature,

        @Key(
                value = "Its turn about its upright axis, anticlockwise seen from above; 0 faces the section plane.",
                byDefault = "0 deg",
                min = -360,
                max = 360)
        Degrees turn,

        @Key(value = "True swaps left and right.", byDefault = "false")
        boolean mirrored) {}
