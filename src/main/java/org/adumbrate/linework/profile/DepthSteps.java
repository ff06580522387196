package org.adumbrate.linework.profile;

import java.util.List;
import org.adumbrate.geometry.SheetPoint;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;

/** Where the surface breaks off along a line: what is seen on one side is much farther away than on the other. */
final class DepthSteps {
    private static final double STEP_MM = 0.4;

    /** Places to either side that are asked as well, so that a stray pixel does not break a line. */
    private static final int AROUND = 2;

    /** Depth is looked up at the whole reach and at this share of it, as either may fall on something small. */
    private static final double NEAR = 0.6;

    /** A break is by far that is so many times as much above 1 as one of the outline must be. */
    private static final double FAR = 4;

    /**
     * As a share of the depth: where it bends less across an edge, the pass shows something that stands before the edge, such
     * as a tree that the lines leave out. Ground bends away from a wall's foot by some half per cent within the reach.
     */
    private static final double CREASE = 0.001;

    /**
     * In mm: a wall stands less and less before the ground the nearer to its foot. Where so little of an edge is left, and no
     * more than the stretch before it, the outline goes on to the foot rather than end in the open.
     */
    private static final double FOOT_MM = 3;

    private final DepthField depth;
    private final double reach;
    private final double jump;

    DepthSteps(DepthField depth, ProfileSettings settings) {
        this.depth = depth;
        this.reach = settings.reachMm();
        this.jump = settings.jump();
    }

    /** Adds the stretches of an edge of the outline where the surface breaks off or the depth pass does not see the edge. */
    void alongOutline(LineSegment edge, List<LineSegment> to) {
        along(edge, FOOT_MM, (at, share) -> step(at, share) >= jump || !sees(at, share), to);
    }

    /** Adds the stretches of an edge that may be any where the surface breaks off by far. */
    void alongAny(LineSegment edge, List<LineSegment> to) {
        double far = 1 + FAR * (jump - 1);
        along(edge, 0, (at, share) -> step(at, share) >= far, to);
    }

    private interface Test {
        boolean holds(LineSegment edge, double share);
    }

    private static void along(LineSegment edge, double foot, Test test, List<LineSegment> to) {
        int places = Math.max(1, (int) Math.round(edge.getLength() / STEP_MM));
        boolean[] breaks = new boolean[places];
        for (int n = 0; n < places; n++) {
            breaks[n] = test.holds(edge, (n + 0.5) / places);
        }
        int from = -1;
        for (int n = 0; n <= places; n++) {
            boolean on = n < places && most(breaks, n);
            if (on && from < 0) {
                from = n;
            } else if (!on && from >= 0) {
                double start = goesOn(from, n - from, foot) ? 0 : from;
                double end = goesOn(places - n, n - from, foot) ? places : n;
                to.add(new LineSegment(edge.pointAlong(start / places), edge.pointAlong(end / places)));
                from = -1;
            }
        }
    }

    /** True if what is left of an edge is short enough, beside a stretch and on the sheet, to be taken along. */
    private static boolean goesOn(int rest, int stretch, double foot) {
        return rest <= stretch && rest * STEP_MM <= foot;
    }

    private static boolean most(boolean[] breaks, int at) {
        int asked = 0;
        int yes = 0;
        for (int n = Math.max(0, at - AROUND); n <= Math.min(breaks.length - 1, at + AROUND); n++) {
            asked++;
            yes += breaks[n] ? 1 : 0;
        }
        return 2 * yes > asked || (2 * yes == asked && breaks[at]);
    }

    /** How many times as far away the farther side is; not a number where nothing is known. */
    private double step(LineSegment edge, double share) {
        double leftNear = depth(edge, share, NEAR);
        double leftFar = depth(edge, share, 1);
        double rightNear = depth(edge, share, -NEAR);
        double rightFar = depth(edge, share, -1);
        return Math.max(
                Math.max(leftNear, leftFar) / Math.min(rightNear, rightFar),
                Math.max(rightNear, rightFar) / Math.min(leftNear, leftFar));
    }

    /** True if the depth pass changes its slope at an edge, as it does at the foot of a wall. */
    private boolean sees(LineSegment edge, double share) {
        double left = depth(edge, share, 1);
        double middle = depth(edge, share, 0);
        double right = depth(edge, share, -1);
        return Math.abs(left - 2 * middle + right) > CREASE * middle;
    }

    /** The depth beside an edge, so many times the reach to its left. */
    private double depth(LineSegment edge, double share, double reaches) {
        Coordinate at = edge.pointAlongOffset(share, reaches * reach);
        return depth.depthAt(new SheetPoint(at.x, at.y));
    }
}
