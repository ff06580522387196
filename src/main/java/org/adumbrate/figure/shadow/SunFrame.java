package org.adumbrate.figure.shadow;

import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.perspective.SunDirection;

/**
 * Axes by the sun: {@code across}, level and at right angles to the sun; {@code up}, at right angles to both; {@code toward}
 * the sun. A right-angled frame, in which a place that looks to the sun looks along {@code toward}.
 *
 * @param alongX x of the level unit vector below the sun
 * @param alongY y of it
 * @param cos of the sun's altitude
 * @param sin of the sun's altitude
 */
record SunFrame(double alongX, double alongY, double cos, double sin) {
    static SunFrame of(SunDirection sun) {
        double level = Math.hypot(sun.x(), sun.y());
        return level < 1e-12
                ? new SunFrame(0, 1, level, sun.z())
                : new SunFrame(sun.x() / level, sun.y() / level, level, sun.z());
    }

    double across(double x, double y) {
        return alongX * y - alongY * x;
    }

    double along(double x, double y) {
        return alongX * x + alongY * y;
    }

    double up(double x, double y, double z) {
        return cos * z - sin * along(x, y);
    }

    double toward(double x, double y, double z) {
        return cos * along(x, y) + sin * z;
    }

    /** The point with given coordinates in this frame, counted from an origin. */
    ModelPoint point(ModelPoint origin, double across, double up, double toward) {
        double along = cos * toward - sin * up;
        return new ModelPoint(
                origin.x() + along * alongX - across * alongY,
                origin.y() + along * alongY + across * alongX,
                origin.z() + cos * up + sin * toward);
    }
}
