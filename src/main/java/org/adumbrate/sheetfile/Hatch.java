package org.adumbrate.sheetfile;

import org.adumbrate.geometry.Length;

/**
 * Parallel lines over the cut.
 *
 * @param angle from the horizontal, anticlockwise as seen
 * @param spacing from line to line
 * @param width the line weight
 * @param crossing true for a second set of lines across the first
 */
public record Hatch(
        @Key(value = "From the horizontal, anticlockwise as seen.", byDefault = "45 deg", min = -360, max = 360)
        Degrees angle,

        @Key(value = "From line to line in mm.", byDefault = "1.2 mm", min = 0.1, max = 1000)
        Length spacing,

        @Key(value = "The line weight in mm.", byDefault = "0.13 mm", above = 0, max = 10)
        Length width,

        @Key(value = "True adds a second set of lines across the first.", byDefault = "false")
        boolean crossing) {}
