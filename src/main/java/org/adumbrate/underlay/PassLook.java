package org.adumbrate.underlay;

import java.util.Optional;
import org.adumbrate.geometry.Srgb;

/**
 * How a pass is to look on the sheet.
 *
 * @param opacity 0 (not seen) to 1 (in full)
 * @param white the light of the pass's own lit white, which becomes bare paper
 * @param tone bends its tones, after the white
 * @param tint the colour its darkest becomes; its own colours are then left aside
 * @param mask where it is seen; everywhere if there is none
 */
public record PassLook(
        double opacity, WhitePoint white, ToneCurve tone, Optional<Srgb> tint, Optional<RegionMask> mask) {

    /** @throws IllegalArgumentException if the opacity is outside 0 to 1 */
    public PassLook {
        if (!(opacity >= 0 && opacity <= 1)) {
            throw new IllegalArgumentException("opacity " + opacity + " is not between 0 and 1");
        }
    }

    /** A pass as it is, at an opacity. */
    public static PassLook plain(double opacity) {
        return new PassLook(opacity, WhitePoint.ONE, ToneCurve.STRAIGHT, Optional.empty(), Optional.empty());
    }

    /** The same with another white. */
    public PassLook withWhite(WhitePoint other) {
        return new PassLook(opacity, other, tone, tint, mask);
    }
}
