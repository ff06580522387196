package org.adumbrate.figure.shadow;

import java.util.List;
import java.util.Optional;
import org.adumbrate.figure.depth.DepthMap;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;

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
     * @param depth how far away they are, at the middle of each of its pixels
     * @param edges the lines drawn where one surface ends or another begins, as far as they are known: they say where between two
     *     pixels of the depth pass that is, so that shadows end at the line and not at a pixel. More lines do no harm
     */
    record Surfaces(DepthMap depth, List<VectorPath<SheetPoint>> edges) implements Receiver {
        /** Copies the list. */
        public Surfaces {
            edges = List.copyOf(edges);
        }

        /** Surfaces whose edges are known to the pixel only. */
        public Surfaces(DepthMap depth) {
            this(depth, List.of());
        }
    }
}
