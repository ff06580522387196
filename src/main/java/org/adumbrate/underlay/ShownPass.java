package org.adumbrate.underlay;

import org.adumbrate.raster.Resampler;

/**
 * A pass as it is blended.
 *
 * @param role what it tells about the light
 * @param light its light on the canvas
 * @param look how it is to look
 */
public record ShownPass(PassRole role, Resampler light, PassLook look) {}
