package org.adumbrate.figure.shadow;

import java.util.Optional;
import org.adumbrate.figure.depth.DepthMap;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;

/** What shadows fall on. */
public sealed interface Receiver {
    /**
     * A level floor, taken to be seen wherever the sheet shows its plane.
     *
     * @param elevation in metres above elevation 0
     * @param outline where on the sheet it ends, if that is known
     */
    record Floor(double elevation, Optional<Region<SheetPoint>> outline) implements Receiver {
        /** @throws IllegalArgumentException if the elevation is not finite */
        public Floor {
            if (!Double.isFinite(elevation)) {
                throw new IllegalArgumentException("a floor needs an elevation");
            }
        }
    }

    /**
     * Every surface that is seen.
     *
     * @param depth how far away they are
     */
    record Surfaces(DepthMap depth) implements Receiver {}
}
