package org.adumbrate.prepare.picture;

import java.util.List;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.underlay.HeldLight;
import org.adumbrate.underlay.PassLook;
import org.adumbrate.underlay.PassRole;
import org.adumbrate.underlay.ShownPass;

/**
 * A pass on a canvas, held before its look.
 *
 * @param key the key path that asked for it; that of the figures for the light past them
 * @param opacityKey the key path that says how strongly it is printed
 * @param content by what its light is known
 * @param canvas where it is held: that of the picture, or a coarser one of the same part of the sheet
 * @param role what it tells about the light
 * @param light its light on the canvas
 * @param look how it is to look
 */
public record HeldPass(
        String key,
        String opacityKey,
        List<Object> content,
        Canvas canvas,
        PassRole role,
        HeldLight light,
        PassLook look) {
    /** As it is blended. */
    ShownPass shown() {
        return new ShownPass(role, light, look);
    }
}
