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
 * the true ones: the picture of a shadow depends on the vanishing points and not on what they stand for, and one shadow settles
 * these. The angles of the sun do depend on the focal length.
 */
public final class SunFit {
    private static final int MOST_STEPS = 50;
    private static final double SETTLED_MM = 1e-9;
    private static final int MOST_ROUNDS = 10;

    /** Tips are read off the sheet to this many mm at least; none is distrusted for less. */
    private static final double TRUSTED_MM = 1;

    /** Three standard deviations, from the median of residuals of two coordinates (Rayleigh's, 1.1774). */
    private static final double GATE = 3 / 1.1774;

    private final List<SunSample> samples;
    private final View view;

    private SunFit(List<SunSample> samples, View view) {
        this.samples = samples;
        this.view = view;
    }

    /**
     * Fits the sun: exactly to one sample, to several so that the squares of the distances between the tips and where they
     * should be are least. Of three and more, those that stray far from what most say are left out; their residuals tell.
     *
     * @param samples at least one; each upright and the tip of its shadow must lie on one level floor
     * @throws Refusal if a sample cannot be a shadow on level ground
     * @throws IllegalArgumentException if there is no sample
     */
    public static FittedSun of(List<SunSample> samples, View view) throws Refusal {
        if (samples.isEmpty()) {
            throw new IllegalArgumentException("a sun is fitted to one shadow at least");
        }
        ShadowRatio best = start(samples, view);
        List<SunSample> trusted = List.of();
        for (int round = 0; round < MOST_ROUNDS; round++) {
            List<Double> residuals = residuals(samples, VanishingPoints.of(view, best.sun(view)));
            List<SunSample> near = near(samples, residuals);
            if (near.equals(trusted)) {
                break;
            }
            trusted = near;
            best = new SunFit(trusted, view).settled(best);
        }
        SunDirection sun = best.sun(view);
        return new FittedSun(sun, residuals(samples, VanishingPoints.of(view, sun)));
    }

    /** How far tips lie from where they are cast, in mm of the sheet; without bound where that is behind the viewer. */
    static List<Double> residuals(List<SunSample> samples, VanishingPoints points) {
        List<Double> residuals = new ArrayList<>();
        for (SunSample sample : samples) {
            residuals.add(points.shadowTip(sample.foot(), sample.head())
                    .map(tip -> tip.distanceTo(sample.tip()))
                    .orElse(Double.POSITIVE_INFINITY));
        }
        return residuals;
    }

    /** Of the suns that single samples tell, the one that lies nearest to what all say, by the median of the residuals. */
    private static ShadowRatio start(List<SunSample> samples, View view) throws Refusal {
        ShadowRatio best = null;
        double least = Double.POSITIVE_INFINITY;
        for (SunSample sample : samples) {
            ShadowRatio one = ShadowRatio.of(sample, view);
            double off = middle(residuals(samples, VanishingPoints.of(view, one.sun(view))));
            if (best == null || off < least) {
                best = one;
                least = off;
            }
        }
        return best;
    }

    private static List<SunSample> near(List<SunSample> samples, List<Double> residuals) {
        double gate = Math.max(TRUSTED_MM, GATE * middle(residuals));
        List<SunSample> near = new ArrayList<>();
        for (int k = 0; k < samples.size(); k++) {
            if (residuals.get(k) <= gate) {
                near.add(samples.get(k));
            }
        }
        return near;
    }

    /** The greater of the two middle ones of an even number: of two samples none can outvote the other. */
    private static double middle(List<Double> numbers) {
        return numbers.stream().sorted().skip(numbers.size() / 2).findFirst().orElseThrow();
    }

    /** Steps of Gauss and Newton, each halved until it helps. */
    private ShadowRatio settled(ShadowRatio start) {
        ShadowRatio best = start;
        double least = squares(best);
        for (int k = 0; k < MOST_STEPS && samples.size() > 1; k++) {
            ShadowRatio step = step(best);
            double share = 1;
            ShadowRatio next = best.plus(step, share);
            while (!(squares(next) <= least) && share > 1e-6) {
                share /= 2;
                next = best.plus(step, share);
            }
            double squares = squares(next);
            if (!(squares < least - SETTLED_MM * SETTLED_MM)) {
                return best;
            }
            best = next;
            least = squares;
        }
        return best;
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
        VanishingPoints points = VanishingPoints.of(view, at.sun(view));
        for (SunSample sample : samples) {
            Optional<SheetPoint> cast = points.shadowTip(sample.foot(), sample.head());
            if (cast.isPresent()) {
                double m = (sample.foot().y() - sample.head().y()) / view.focalMm();
                double d = 1 + at.away() * m;
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

    private double squares(ShadowRatio ratio) {
        if (!Double.isFinite(ratio.right() + ratio.away())) {
            return Double.POSITIVE_INFINITY;
        }
        double squares = 0;
        for (double residual : residuals(samples, VanishingPoints.of(view, ratio.sun(view)))) {
            squares += residual * residual;
        }
        return squares;
    }
}
