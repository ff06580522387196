package org.adumbrate.linework.cleanup;

import java.util.List;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;

/**
 * Cleans the lines of one pen at the size they are printed at.
 *
 * <p>In this order: <b>duplicates</b>, of two straight lines that lie on each other the longer stays, and of the shorter
 * what reaches beyond it; of equal curves one stays. <b>Joins</b>: pieces of one straight line become one piece, no swallowed
 * end farther than 0.01 mm from it. <b>Clutter</b>: where a line has neighbours on both sides closer than the limit it is
 * taken out for that stretch, so the outermost of a bundle and pairs always stay. Then pieces that meet end to end become
 * chains, so that corners are joins and dashes run on; and <b>fragments</b>, chains shorter than the limit of which no end
 * touches another line, are dropped.
 *
 * <p>Lines of different pens know nothing of each other: where two lie on each other both are drawn, the later on top.
 * The same lines from several files are drawn once if all are given at once. The same input gives the same output.
 */
public final class CleanUp {
    private CleanUp() {}

    /**
     * Cleans lines.
     *
     * @param paths all lines that one pen draws, of whatever files
     * @param settings how far to go; with everything off the paths come back as they are
     */
    public static Cleaned run(List<VectorPath<SheetPoint>> paths, CleanUpSettings settings) {
        if (settings.equals(CleanUpSettings.OFF)) {
            return new Cleaned(paths, CleanUpCounts.NONE);
        }
        LinePieces pieces = new LinePieces();
        int dots = PieceReader.read(paths, pieces, settings.shortestMm() == 0);
        int merged = settings.duplicatesMm() == 0
                ? 0
                : EqualCurves.remove(pieces, settings.duplicatesMm())
                        + Duplicates.remove(pieces, settings.duplicatesMm());
        int joined = settings.joinMm() == 0 ? 0 : Joints.join(pieces, settings.joinMm());
        int thinned = settings.clutterMm() == 0 ? 0 : Clutter.thin(pieces, settings.clutterMm());
        Chains chains = Chains.of(pieces, settings.joinMm());
        int dropped = settings.shortestMm() == 0 ? 0 : dots + Fragments.drop(chains, settings);
        return new Cleaned(chains.paths(), new CleanUpCounts(merged, joined, dropped, thinned));
    }
}
