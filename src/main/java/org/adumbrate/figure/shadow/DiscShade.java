package org.adumbrate.figure.shadow;

/**
 * An elliptical disc of a figure as the sun sees it. Rays that pass one height {@code up} of the {@link SunFrame} meet the disc's
 * height over a stretch of the level direction along the sun; over that stretch the ellipse reaches across from
 * {@code k a - b sqrt(1 - a²/A²)} to {@code k a + b sqrt(1 - a²/A²)}, with a counted from its axis.
 */
final class DiscShade {
    private final SunFrame sun;
    private final double bottom;
    private final double top;
    private final double alongAxis;
    private final double acrossAxis;
    /** A: how far the ellipse reaches along. */
    private final double reach;
    /** k: how the middle of a chord moves across with a. */
    private final double lean;
    /** b: half the chord through the axis. */
    private final double half;
    /** The a at which it reaches farthest across to the upper side; farthest to the lower side at its negative. */
    private final double farthest;

    DiscShade(SliceSolid.Disc disc, double turn, boolean mirrored, SunFrame sun) {
        double ux = mirrored ? -Math.cos(turn) : Math.cos(turn);
        double uy = mirrored ? -Math.sin(turn) : Math.sin(turn);
        double uAlong = sun.along(ux, uy);
        double uAcross = sun.across(ux, uy);
        double vAlong = sun.along(-Math.sin(turn), Math.cos(turn));
        double vAcross = sun.across(-Math.sin(turn), Math.cos(turn));
        double w2 = disc.halfWidth() * disc.halfWidth();
        double d2 = disc.halfDepth() * disc.halfDepth();
        double joint = w2 * uAlong * uAcross + d2 * vAlong * vAcross;
        this.sun = sun;
        this.bottom = disc.bottom();
        this.top = disc.top();
        this.alongAxis = disc.centre() * uAlong;
        this.acrossAxis = disc.centre() * uAcross;
        this.reach = Math.sqrt(w2 * uAlong * uAlong + d2 * vAlong * vAlong);
        this.lean = joint / (reach * reach);
        this.half = disc.halfWidth() * disc.halfDepth() / reach;
        this.farthest = joint / Math.sqrt(w2 * uAcross * uAcross + d2 * vAcross * vAcross);
    }

    /** The lowest {@code up} at which it is seen. */
    double lowest() {
        return bottom * sun.cos() - (alongAxis + reach) * sun.sin();
    }

    /** The highest {@code up} at which it is seen. */
    double highest() {
        return top * sun.cos() - (alongAxis - reach) * sun.sin();
    }

    /** Adds what it hides at a height {@code up} to the runs of that height. */
    void addTo(ShadeRuns runs, double up) {
        double from = (bottom * sun.cos() - up) / sun.sin() - alongAxis;
        double to = (top * sun.cos() - up) / sun.sin() - alongAxis;
        double first = Math.max(from, -reach);
        double last = Math.min(to, reach);
        if (first > last) {
            return;
        }
        double atLeft = Math.max(first, Math.min(-farthest, last));
        double atRight = Math.max(first, Math.min(farthest, last));
        runs.add(
                acrossAxis + lean * atLeft - chord(atLeft),
                acrossAxis + lean * atRight + chord(atRight),
                toward(atLeft, from, to),
                toward(atRight, from, to));
    }

    private double chord(double a) {
        double share = a / reach;
        return half * Math.sqrt(Math.max(0, 1 - share * share));
    }

    private double toward(double a, double from, double to) {
        double share = to > from ? Math.max(0, Math.min(1, (a - from) / (to - from))) : 0.5;
        return sun.cos() * (alongAxis + a) + sun.sin() * (bottom + share * (top - bottom));
    }
}
