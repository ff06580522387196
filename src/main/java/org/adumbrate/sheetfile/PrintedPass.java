package org.adumbrate.sheetfile;

import java.nio.file.Path;
import java.util.Optional;
import org.adumbrate.geometry.Srgb;

/**
 * A raster that is multiplied into the underlay.
 *
 * @param file the raster
 * @param opacity how strongly it darkens
 * @param white what becomes of its lit white
 * @param tone its tone curve
 * @param tint the colour that its black is printed in
 * @param mask where it shows
 * @param frame where it lies, if it is not to be found by its edges
 */
public record PrintedPass(
        @Key("The raster file.") Path file,

        @Key(value = "How strongly it darkens, in percent.", byDefault = "60", min = 0, max = 100)
        Percent opacity,

        @Key(
                value = "Whether its lit white is measured and printed as bare paper, or taken as it is.",
                byDefault = "measured")
        White white,

        @Key("A tone curve: at least two points [light in %, light out %].")
        Optional<Tone> tone,

        @Key("The colour that its black is printed in.") Optional<Srgb> tint,

        @Key("Where on the sheet it shows.") Optional<Mask> mask,

        @Key("Where it lies: the whole sheet, or [left, top, width, height] in mm; found by its edges where left out.")
        Optional<PassFrame> frame) {}
