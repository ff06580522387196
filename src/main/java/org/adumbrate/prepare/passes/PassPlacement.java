package org.adumbrate.prepare.passes;

import java.nio.file.Path;
import org.adumbrate.registration.Placement;

/**
 * Where one pass came to lie.
 *
 * @param file the pass
 * @param placement where, and how sure
 */
public record PassPlacement(Path file, Placement placement) {}
