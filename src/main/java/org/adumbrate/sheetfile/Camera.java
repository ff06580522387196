package org.adumbrate.sheetfile;

import java.util.Optional;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.SheetPoint;

/**
 * What is known of the camera; the rest is fitted from the height lines.
 *
 * @param focal the focal length at sheet scale; not together with the field of view
 * @param fieldOfView across the sheet's width
 * @param principalPoint where the viewing direction meets the sheet; its y is the horizon
 * @param eyeHeight above elevation 0
 * @param turn of the viewing direction, clockwise from the model's +Y, seen from above
 */
@Written(notTogether = {"focal", "field-of-view"})
public record Camera(
        @Key(value = "The focal length at sheet scale, such as 260 mm.", above = 0, max = 100_000)
        Optional<Length> focal,

        @Key(value = "The field of view across the sheet's width, such as 79.4 deg.", min = 1, max = 179)
        Optional<Degrees> fieldOfView,

        @Key("Where the viewing direction meets the sheet: [x, y] in mm; its y is the horizon.")
        Optional<SheetPoint> principalPoint,

        @Key(value = "The height of the eye above elevation 0, such as 4.25 m.", min = -10_000, max = 10_000)
        Optional<Metres> eyeHeight,

        @Key(
                value = "Two-point views: the viewing direction, clockwise from the model's +Y, seen from above.",
                byDefault = "0 deg",
                min = -360,
                max = 360)
        Degrees turn) {}
