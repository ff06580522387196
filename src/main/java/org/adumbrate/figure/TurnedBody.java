package org.adumbrate.figure;

import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;

/**
 * What a turned figure covers. Every level run of its outline has a depth as it has in the solid that casts its shadow, 0.62 of
 * its width and at most 0.30 m at a stature of 1.75 m, so that a figure seen from the side is narrow but never a line. Each
 * point of the outline goes to the edge of its run as it is then seen.
 */
final class TurnedBody {
    private static final double DEPTH_OF_WIDTH = 0.62;
    private static final double HALF_DEPTH_OF_STATURE = 0.30 / 1.75 / 2;

    /** The outline is followed in steps no higher than this share of the stature. */
    private static final double STEP = 1 / 320.0;

    /**
     * Where runs part, at an armpit or a crotch, the turned sides cross and enclose cracks, which a line would show as specks.
     * Those narrower than this share of the stature are filled.
     */
    private static final double CRACK = 1 / 200.0;

    /** Where a side ends, its run is taken this little before, in shares of the side. */
    private static final double INWARD = 1e-6;

    private final TurnedEye eye;
    private final double metresPerUnit;
    private final double mostHalfDepth;
    private final double step;
    private final boolean mirrored;
    private final OutlineRuns runs;
    private final VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
    private boolean drawing;

    private TurnedBody(PlacedFigure figure, TurnedEye eye) {
        Region<PagePoint> body = figure.outline().body();
        this.eye = eye;
        this.metresPerUnit = figure.metresPerUnit();
        this.mostHalfDepth = HALF_DEPTH_OF_STATURE * figure.stance().statureM();
        this.step = STEP * figure.outline().height();
        this.mirrored = figure.stance().mirrored();
        this.runs = OutlineRuns.of(body);
    }

    static Region<SheetPoint> of(PlacedFigure figure, TurnedEye eye) {
        TurnedBody turned = new TurnedBody(figure, eye);
        turned.draw();
        double crack = CRACK * figure.stance().statureM() * figure.spot().mmPerMetre();
        return Region.nonZero(turned.path.build(), PlacedFigure.PLAIN_MM)
                .withoutCracks(crack)
                .simplified(PlacedFigure.PLAIN_MM);
    }

    private void draw() {
        int ring = -1;
        for (OutlineRuns.Side side : runs.sides()) {
            if (side.ring() != ring) {
                ring = side.ring();
                drawing = false;
            }
            if (!side.isLevel()) {
                follow(side);
            }
        }
    }

    private void follow(OutlineRuns.Side side) {
        int steps = (int) Math.max(1, Math.ceil(Math.abs(side.y1() - side.y0()) / step));
        for (int k = 0; k <= steps; k++) {
            double t = Math.min(1 - INWARD, Math.max(INWARD, (double) k / steps));
            double level = side.y0() + t * (side.y1() - side.y0());
            if (side.crosses(level)) {
                point(runs.across(side, level), -level * metresPerUnit);
            }
        }
    }

    private void point(OutlineRuns.Run run, double h) {
        double along = metresPerUnit * (run.right() - run.left()) / 2;
        double centre = (mirrored ? -1 : 1) * metresPerUnit * (run.left() + run.right()) / 2;
        double across = Math.min(mostHalfDepth, DEPTH_OF_WIDTH * along);
        boolean right = run.onRight() == (mirrored != eye.keepsSides());
        SheetPoint seen = eye.edge(centre, along, across, h, right ? 1 : -1);
        if (drawing) {
            path.lineTo(seen.x(), seen.y());
        } else {
            path.moveTo(seen.x(), seen.y());
            drawing = true;
        }
    }
}
