package org.adumbrate.perspective;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetPoint;

/**
 * From shadows on the drawing to the sun, by the classical construction read backwards. The sun stands before the viewer if
 * the shadow comes nearer, behind if it goes farther off.
 *
 * <p>Shadows that this sun casts on floors are right for any focal length and any principal point on the horizon, not only for
 * the true ones: in the picture a shadow depends on the ratios {@code right} and {@code away / focal} alone (with {@code right}
 * counted from the principal point), and those are what is fitted. The angles of the sun do depend on the focal length.
 */
public final class SunFit {
    private static final int MOST_STEPS = 50;
    private static final double SETTLED_MM = 1e-9;

    private final List<SunSample> samples;
    private final View view;

    private SunFit(List<SunSample> samples, View view) {
        this.samples = samples;
        this.view = view;
    }

    /**
     * Fits the sun: exactly to one sample, to several so that the squares of the distances between the tips and where they
     * should be are least.
     *
     * @param samples at least one; each upright and the tip of its shadow must lie on one level floor
     * @throws Refusal if a sample cannot be a shadow on level ground
     * @throws IllegalArgumentException if there is no sample
     */
    public static FittedSun of(List<SunSample> samples, View view) throws Refusal {
        if (samples.isEmpty()) {
            throw new IllegalArgumentException("a sun is fitted to one shadow at least");
        }
        SunFit fit = new SunFit(samples, view);
        ShadowRatio best = fit.settled(fit.start());
        return new FittedSun(best.sun(view), fit.residuals(best));
    }

    /** Of the suns that single samples tell, the one that all together like best. */
    private ShadowRatio start() throws Refusal {
        ShadowRatio best = null;
        for (SunSample sample : samples) {
            ShadowRatio one = ShadowRatio.of(sample, view);
            if (best == null || cost(one) < cost(best)) {
                best = one;
            }
        }
        return best;
    }

    /** Steps of Gauss and Newton, each halved until it helps. */
    private ShadowRatio settled(ShadowRatio start) {
        ShadowRatio best = start;
        if (samples.size() == 1) {
            return best;
        }
        for (int k = 0; k < MOST_STEPS; k++) {
            ShadowRatio step = step(best);
            double before = cost(best);
            double share = 1;
            ShadowRatio next = moved(best, step, share);
            while (cost(next) > before && share > 1e-6) {
                share /= 2;
                next = moved(best, step, share);
            }
            if (!(cost(next) < before - SETTLED_MM * SETTLED_MM)) {
                return best;
            }
            best = next;
        }
        return best;
    }

    private static ShadowRatio moved(ShadowRatio from, ShadowRatio step, double share) {
        return new ShadowRatio(from.right() + share * step.right(), from.away() + share * step.away());
    }

    /**
     * The step that would end at the least sum of squares if tips moved in proportion to the ratios. With m the upright's
     * height and d the depth of the tip, both for a foot at depth 1: dx/dright = f m / d, dx/daway = m (c.x - x) / d,
     * dy/daway = m (c.y - y) / d.
     */
    private ShadowRatio step(ShadowRatio at) {
        double rr = 0;
        double ra = 0;
        double aa = 0;
        double r = 0;
        double a = 0;
        for (SunSample sample : samples) {
            Optional<SheetPoint> cast = at.tip(sample, view);
            if (cast.isPresent()) {
                double m = (sample.foot().y() - sample.head().y()) / view.focalMm();
                double d = at.depth(sample, view);
                double xr = view.focalMm() * m / d;
                double xa = m * (view.principal().x() - cast.get().x()) / d;
                double ya = m * (view.principal().y() - cast.get().y()) / d;
                double offX = sample.tip().x() - cast.get().x();
                double offY = sample.tip().y() - cast.get().y();
                rr += xr * xr;
                ra += xr * xa;
                aa += xa * xa + ya * ya;
                r += xr * offX;
                a += xa * offX + ya * offY;
            }
        }
        double determinant = rr * aa - ra * ra;
        return new ShadowRatio((r * aa - a * ra) / determinant, (a * rr - r * ra) / determinant);
    }

    private double cost(ShadowRatio ratio) {
        double cost = 0;
        for (double residual : residuals(ratio)) {
            cost += residual * residual;
        }
        return cost;
    }

    private List<Double> residuals(ShadowRatio ratio) {
        VanishingPoints points = VanishingPoints.of(view, ratio.sun(view));
        List<Double> residuals = new ArrayList<>();
        for (SunSample sample : samples) {
            residuals.add(points.shadowTip(sample.foot(), sample.head())
                    .map(tip -> tip.distanceTo(sample.tip()))
                    .orElse(Double.POSITIVE_INFINITY));
        }
        return residuals;
    }
}
