package org.adumbrate.underlay;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.raster.Resampler;

/** How much of each pixel of a canvas a pass counts for: where it lies, and where it is to be seen. For use by one thread. */
final class PassShares {
    private final Resampler.Cursor cursor;
    private final float[] share;
    private final PolygonCoverage inside;
    private final PolygonCoverage outside;

    PassShares(Resampler.Cursor cursor, Optional<RegionMask> seen, Canvas canvas) {
        this.cursor = cursor;
        this.share = new float[canvas.window().width()];
        RegionMask mask = seen.orElse(new RegionMask(List.of(), List.of()));
        this.inside = mask.inside().isEmpty() ? null : new PolygonCoverage(mask.inside(), canvas);
        this.outside = mask.outside().isEmpty() ? null : new PolygonCoverage(mask.outside(), canvas);
    }

    /**
     * Works out the share of each pixel of canvas row y.
     *
     * @return false, leaving what is in {@code amount} undefined, where it counts wholly for all of them
     */
    boolean row(int y, float[] amount) throws IOException {
        boolean partial = cursor.coverage(y, amount);
        if (!partial && inside == null && outside == null) {
            return false;
        }
        if (!partial) {
            Arrays.fill(amount, 1);
        }
        if (inside != null) {
            inside.row(y, share);
            for (int k = 0; k < amount.length; k++) {
                amount[k] *= share[k];
            }
        }
        if (outside != null) {
            outside.row(y, share);
            for (int k = 0; k < amount.length; k++) {
                amount[k] *= 1 - share[k];
            }
        }
        return true;
    }
}
