package org.adumbrate.sheetfile;

import java.nio.file.Path;
import java.util.Optional;
import org.adumbrate.sheetfile.complaint.Wording;

/**
 * A depth render: how far along the viewing direction each visible surface lies from the eye.
 *
 * @param file the raster
 * @param near the distance that its first level stands for; left out, together with far, where the height lines are to
 *     scale it
 * @param far the distance that its last level stands for; greater than near
 * @param frame where it lies, if not where the other passes do
 */
@Written(together = {"near", "far"})
public record DepthPass(
        @Key("The raster file.") Path file,

        @Key(
                value =
                        "The distance from the eye at its first level, such as 4.0 m; scaled by the height lines where left"
                                + " out.",
                min = 0,
                max = 1e6)
        Optional<Metres> near,

        @Key(
                value =
                        "The distance from the eye at its last level, such as 40 m; scaled by the height lines where left out.",
                above = 0,
                max = 1e6)
        Optional<Metres> far,

        @Key("Where it lies: the whole sheet, or [left, top, width, height] in mm; found by its edges where left out.")
        Optional<PassFrame> frame) {
    /** @throws IllegalArgumentException if near is not less than far, or only one of them is given */
    public DepthPass {
        if (near.isPresent() != far.isPresent()) {
            throw new IllegalArgumentException("near and far belong together");
        }
        if (near.isPresent() && near.get().m() >= far.get().m()) {
            throw new IllegalArgumentException("near, %s m, must be less than far, %s m"
                    .formatted(
                            Wording.number(near.get().m()),
                            Wording.number(far.get().m())));
        }
    }
}
