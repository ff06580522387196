package org.adumbrate.start;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.perspective.FittedDepth;
import org.adumbrate.perspective.TwoPoints;

/**
 * Everything that was found out about a folder.
 *
 * @param size the printed size
 * @param roles what the line sheets are for
 * @param seen how the drawing is seen
 * @param passes the rasters, placed and looked at
 * @param range of the depth pass, for the focal length that the draft states
 * @param sun where the sun stands by the shadow pass, or why that does not tell
 * @param unused files that are not used
 */
record Draft(
        SheetSize size,
        SheetRoles roles,
        DrawnView seen,
        List<PassFile> passes,
        Optional<FittedDepth> range,
        DrawnSun sun,
        List<Unused> unused) {

    /** The passes of a kind, the best first: the one with the fewest drawn edges, then the one with most pixels. */
    List<PassFile> all(PassKind kind) {
        List<PassFile> all =
                new ArrayList<>(passes.stream().filter(pass -> pass.is(kind)).toList());
        all.sort(Comparator.comparingLong(
                        (PassFile pass) -> Math.round(100 * pass.look().drawn()))
                .thenComparingLong(pass -> -pass.placement().pass().count())
                .thenComparing(pass -> pass.file().toString()));
        return all;
    }

    /** The pass to use for a kind. */
    Optional<PassFile> best(PassKind kind) {
        return all(kind).stream().findFirst();
    }

    /** The focal length in mm: what two directions of edges tell, or that of a normal lens, the diagonal of the sheet. */
    double lensMm() {
        return twoPoints().map(TwoPoints::focalMm).orElseGet(() -> Math.hypot(size.widthMm(), size.heightMm()));
    }

    /** What two directions of level edges tell, if the principal point lies in the middle of the sheet. */
    Optional<TwoPoints> twoPoints() {
        return seen.twoPoints(size.widthMm() / 2);
    }
}
