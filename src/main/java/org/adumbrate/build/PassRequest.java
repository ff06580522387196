package org.adumbrate.build;

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
public record PassRequest(PassRole role, Path file, PassLook look, boolean measuresWhite, Optional<Frame> frame) {}
