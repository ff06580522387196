package org.adumbrate.prepare.passes;

import java.nio.file.Path;
import java.util.Optional;
import org.adumbrate.geometry.Frame;
import org.adumbrate.underlay.PassLook;
import org.adumbrate.underlay.PassRole;

/**
 * A printed pass as it is asked for.
 *
 * @param role what it tells about the light
 * @param file where it is
 * @param look how it is to look; its white counts only if it is not measured
 * @param measuresWhite whether its lit white is measured and becomes bare paper
 * @param frame where it lies, if that is pinned
 */
public record PassRequest(PassRole role, Path file, PassLook look, boolean measuresWhite, Optional<Frame> frame) {
    /** The key path of the sheet file that asks for such a pass. */
    public String key() {
        return switch (role) {
            case SHADOW -> "passes.shadow";
            case FIGURE_SHADOW -> "passes.figure-shadow";
            case OCCLUSION -> "passes.occlusion";
        };
    }
}
