package org.adumbrate.perspective;

import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetPoint;

/**
 * The shadow of a metre of upright on level ground, in metres: all that a sun is to shadows.
 *
 * @param right how far it reaches to the viewer's right
 * @param away how far it reaches away from the viewer
 */
record ShadowRatio(double right, double away) {
    /** Feet and tips nearer to the horizon than this, in mm, are too far off to measure by. */
    private static final double NEAR_HORIZON_MM = 0.1;

    /** Uprights shorter than this, in mm, are too short to measure by. */
    private static final double LEAST_HEIGHT_MM = 0.5;

    /** How far the head may lie beside the foot, as a share of the upright's height, besides the error of two points. */
    private static final double LEAN = 0.05;

    private static final double POINT_ERROR_MM = 1;

    /**
     * What one sample tells. With the foot at depth 1 the tip lies at depth d = foot's height under the horizon / tip's, the
     * upright is m = drawn height / focal tall, and the shadow reaches from the foot to the tip.
     *
     * @throws Refusal if the sample cannot be a shadow on level ground
     */
    static ShadowRatio of(SunSample sample, View view) throws Refusal {
        check(sample, view);
        SheetPoint c = view.principal();
        double depth = (sample.foot().y() - c.y()) / (sample.tip().y() - c.y());
        double tall = sample.foot().y() - sample.head().y();
        double across = (sample.tip().x() - c.x()) * depth - (sample.foot().x() - c.x());
        return new ShadowRatio(across / tall, (depth - 1) * view.focalMm() / tall);
    }

    private static void check(SunSample sample, View view) throws Refusal {
        double horizon = view.horizonMm();
        SheetPoint foot = sample.foot();
        SheetPoint tip = sample.tip();
        double tall = foot.y() - sample.head().y();
        double beside = Math.abs(foot.x() - sample.head().x());
        if (!(tall >= LEAST_HEIGHT_MM)) {
            throw refusal(sample, "its head is not above its foot, so it is no upright");
        }
        if (beside > LEAN * tall + POINT_ERROR_MM) {
            throw refusal(sample, "its head is not straight above its foot, so it is no upright");
        }
        if (Math.abs(foot.y() - horizon) < NEAR_HORIZON_MM) {
            throw refusal(sample, "its foot lies on the horizon, so its floor is seen edge-on; choose another upright");
        }
        if (Math.abs(tip.y() - horizon) < NEAR_HORIZON_MM) {
            throw refusal(
                    sample, "the tip of its shadow lies on the horizon, infinitely far off; choose another upright");
        }
        if ((foot.y() - horizon) * (tip.y() - horizon) < 0) {
            throw refusal(
                    sample,
                    "its foot and the tip of its shadow lie on different sides of the horizon, so they cannot lie on one"
                            + " level floor");
        }
    }

    private static Refusal refusal(SunSample sample, String why) {
        return new Refusal(sample.told() + " tells no sun: " + why);
    }

    /** The sun that casts it. */
    SunDirection sun(View view) {
        double sin = Math.sin(view.turn());
        double cos = Math.cos(view.turn());
        double length = Math.sqrt(right * right + away * away + 1);
        return new SunDirection(-(right * cos + away * sin) / length, -(away * cos - right * sin) / length, 1 / length);
    }

    /** Changed by a share of a step. */
    ShadowRatio plus(ShadowRatio step, double share) {
        return new ShadowRatio(right + share * step.right, away + share * step.away);
    }
}
