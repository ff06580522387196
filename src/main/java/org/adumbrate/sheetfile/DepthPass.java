package org.adumbrate.sheetfile;

import java.nio.file.Path;
import java.util.Optional;

/**
 * A depth render: how far along the viewing direction each visible surface lies from the eye.
 *
 * @param file the raster
 * @param near the distance that its first level stands for
 * @param far the distance that its last level stands for; greater than near
 * @param frame where it lies, if not where the other passes do
 */
public record DepthPass(
        @Key("The raster file.") Path file,

        @Key(value = "The distance from the eye at its first level, such as 4.0 m.", min = 0, max = 1e6)
        Metres near,

        @Key(value = "The distance from the eye at its last level, such as 40 m.", above = 0, max = 1e6)
        Metres far,

        @Key("Where it lies: the whole sheet, or [left, top, width, height] in mm; found by its edges where left out.")
        Optional<PassFrame> frame) {
    /** @throws IllegalArgumentException if near is not less than far */
    public DepthPass {
        if (near.m() >= far.m()) {
            throw new IllegalArgumentException("near, %s m, must be less than far, %s m"
                    .formatted(Wording.number(near.m()), Wording.number(far.m())));
        }
    }
}
