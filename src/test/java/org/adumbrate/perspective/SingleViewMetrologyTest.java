package org.adumbrate.perspective;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetPoint;
import org.junit.jupiter.api.Test;

/**
 * The fitted floors against the formulas of Criminisi, Reid and Zisserman, "Single view metrology", IJCV 40(2) 123-148, 2000,
 * for base b, top t, horizon l and the vanishing point v of uprights, here at infinity.
 */
class SingleViewMetrologyTest {
    private static final double HORIZON = 150.5;

    private static HeightLine line(double x, double footY, double headY) {
        return new HeightLine(new SheetPoint(x, footY), new SheetPoint(x, headY));
    }

    /** Height = eye (yb - yt) / (yb - yh): three lines of 1.65 m below an eye at 4.25 m. */
    private static FittedHeights ground() throws Refusal {
        double share = 1.65 / 4.25;
        return HeightFit.of(
                List.of(
                        line(100, 230, 230 - share * (230 - HORIZON)),
                        line(200, 215, 215 - share * (215 - HORIZON)),
                        line(300, 205, 205 - share * (205 - HORIZON))),
                1.65,
                Stated.NOTHING);
    }

    @Test
    void whoIsAsTallAsTheEyeTouchesTheHorizonEverywhere() throws Refusal {
        FittedHeights ground = ground();
        FittedFloor floor = ground.floors().get(0);
        for (double y = 160; y < 270; y += 10) {
            SheetPoint head = ground.figure(new SheetPoint(y, y), floor.eyeHeightM(), floor);
            assertThat(head.y()).isCloseTo(HORIZON, within(1e-6));
        }
    }

    /** Z = -|b x t| / ((l b) |v x t| alpha), with alpha from one reference and v = (0, 1, 0); the paper's equation 11. */
    @Property(tries = 100, seed = "1")
    void agreesWithTheGeneralFormula(
            @ForAll @DoubleRange(min = 160, max = 270) double y,
            @ForAll @DoubleRange(min = 20, max = 400) double x,
            @ForAll @DoubleRange(min = 0.5, max = 3) double stature) {
        try {
            FittedHeights ground = ground();
            SheetPoint head =
                    ground.figure(new SheetPoint(x, y), stature, ground.floors().get(0));
            double alphaTimes = measure(100, 230, 230 - 1.65 / 4.25 * (230 - HORIZON)) / 1.65;
            assertThat(measure(x, y, head.y()) / alphaTimes).isCloseTo(stature, within(1e-6));
            assertThat(crossRatio(x, y, head.y())).isCloseTo(stature, within(1e-6));
        } catch (Refusal refusal) {
            throw new AssertionError(refusal);
        }
    }

    /** |b x t| / ((l b) |v x t|), up to sign; l = (0, 1, -horizon). */
    private static double measure(double x, double base, double top) {
        double[] bt = cross(x, base, 1, x, top, 1);
        double[] vt = cross(0, 1, 0, x, top, 1);
        return norm(bt) / ((base - HORIZON) * norm(vt));
    }

    /** The reference's top carried to the target through the horizon; with v at infinity its distances cancel. */
    private static double crossRatio(double x, double base, double top) {
        double[] toHorizon = cross(100, 230, 1, x, base, 1);
        double[] u = cross(toHorizon[0], toHorizon[1], toHorizon[2], 0, 1, -HORIZON);
        double[] carried = cross(100, 230 - 1.65 / 4.25 * (230 - HORIZON), 1, u[0], u[1], u[2]);
        double[] onTarget = cross(carried[0], carried[1], carried[2], 1, 0, -x);
        return 1.65 * (base - top) / (base - onTarget[1] / onTarget[2]);
    }

    private static double[] cross(double a, double b, double c, double d, double e, double f) {
        return new double[] {b * f - c * e, c * d - a * f, a * e - b * d};
    }

    private static double norm(double[] v) {
        return Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
    }
}
