package org.adumbrate.sheetfile;

import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.SheetPoint;

/**
 * A figure on a floor.
 *
 * @param outline what shows it
 * @param foot where it stands on the sheet
 * @param floor the name of the floor it stands on; may be left out where there is one floor only
 * @param stature how tall it is; the outline's own nominal height where left out
 * @param turn about its upright axis, anticlockwise seen from above: the outline's x axis then points to (cos turn, sin turn)
 *     of the model's X and Y; at 0 the outline faces the section plane
 * @param mirrored true where left and right of the outline change places
 * @param behind the names of regions that hide it, besides a depth pass
 * @param look what is different about its look
 */
public record Figure(
        @Key("The name of an outline that comes with the program, or an SVG file; its origin is the foot point.")
        Outline outline,

        @Key("Where it stands on the sheet: [x, y] in mm.") SheetPoint foot,

        @Key("The name of the floor it stands on; may be left out where there is one floor only.")
        Optional<String> floor,

        @Key(value = "How tall it is, such as 1.70 m; the outline's own height where left out.", min = 0.01, max = 100)
        Optional<Metres> stature,

        @Key(
                value = "Its turn about its upright axis, anticlockwise seen from above; 0 faces the section plane.",
                byDefault = "0 deg",
                min = -360,
                max = 360)
        Degrees turn,

        @Key(value = "True swaps left and right.", byDefault = "false")
        boolean mirrored,

        @Key(
                value = "The regions that hide it, by name; a depth pass hides what is behind things by itself.",
                oneOrMany = true)
        List<String> behind,

        @Key(value = "What is different about its look; the rest is that of the entourage.", byDefault = "{}")
        OtherLook look) {
    /** Copies the list. */
    public Figure {
        behind = List.copyOf(behind);
    }
}
