package org.adumbrate.perspective;

import java.util.List;

/**
 * Horizon and floors as one figure. The horizon cuts all height lines on a floor in the same ratio g, the eye's height above
 * that floor counted in statures: with foot f and head t the sheet y of its ends,
 *
 * <pre>
 *   (1 - g) f + g t = horizon
 * </pre>
 *
 * (the cross ratio of Criminisi, Reid and Zisserman, "Single view metrology", IJCV 40(2), 2000, for a level camera). In the
 * plane of (f, t) each floor is therefore a straight line, and all pass through (horizon, horizon): a pencil. It holds for
 * floors above, below and level with the eye alike. Since both ends of a height line are drawn with the same error, what
 * counts is the distance from the floor's line at a right angle, the residual.
 *
 * @param horizon sheet y in mm
 * @param rises the eye's height in statures, a number for each group of floors
 * @param levels the floors
 */
record Pencil(double horizon, List<Double> rises, List<Level> levels) {
    Pencil {
        rises = List.copyOf(rises);
        levels = List.copyOf(levels);
    }

    /** The eye's height above a floor, in statures. */
    double ratio(Level level) {
        return rises.get(level.group()) - level.offset();
    }

    /** How far a height line is from standing on a floor, in mm; signed. */
    double residual(HeightLine line, Level level) {
        return residual(line, horizon, ratio(level));
    }

    static double residual(HeightLine line, double horizon, double ratio) {
        return (line.foot().y() - horizon - ratio * line.heightMm()) / norm(ratio);
    }

    /** The length of (1 - g, g), by which the residual is scaled to a distance. */
    static double norm(double ratio) {
        return Math.sqrt((1 - ratio) * (1 - ratio) + ratio * ratio);
    }

    /** The floor that a line is nearest to; -1 if there is none. */
    int nearest(HeightLine line) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < levels.size(); k++) {
            double distance = Math.abs(residual(line, levels.get(k)));
            if (distance < least) {
                least = distance;
                best = k;
            }
        }
        return best;
    }
}
