package org.adumbrate.underlay;

import org.adumbrate.raster.Resampler;

/**
 * A pass that lies on a canvas pixel by pixel, before anything is done about its look.
 *
 * @param role what it tells about the light
 * @param light its light there
 */
public record LaidPass(PassRole role, Resampler light) {
    /** The pass with a look. */
    public ShownPass as(PassLook look) {
        return new ShownPass(role, light, look);
    }
}
