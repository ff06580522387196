package org.adumbrate.figure.shadow;

import java.util.List;
import org.adumbrate.geometry.ModelPoint;

/** Solids whose shadows are known. */
final class Bodies {
    private Bodies() {}

    /** One upright elliptical disc, as tall as it is. */
    static SliceSolid post(double height, double halfWidth, double halfDepth) {
        return new SliceSolid(height, List.of(new SliceSolid.Disc(0, height, 0, halfWidth, halfDepth)));
    }

    /** So wide and thin that its upper bound is level and straight. */
    static SliceSolid board(double height, double halfWidth) {
        return post(height, halfWidth, 1e-4);
    }

    /** A solid at a place, its outline's plane along the model's x. */
    static StandingSolid at(double x, double y, double z, SliceSolid solid) {
        return new StandingSolid(new ModelPoint(x, y, z), 0, false, solid);
    }
}
