package org.adumbrate.perspective.shadows;

import org.adumbrate.perspective.SunDirection;

/**
 * The sun that a building's own shadows tell.
 *
 * @param direction toward it
 * @param azimuthErrorDeg the standard deviation of its azimuth, in degrees
 * @param altitudeErrorDeg the standard deviation of its altitude, in degrees
 * @param onFloors how many lines on floors show it
 * @param onWalls how many lines on walls show it
 */
public record ShadowSun(
        SunDirection direction, double azimuthErrorDeg, double altitudeErrorDeg, int onFloors, int onWalls) {
    /** The larger of both standard deviations, in degrees. */
    public double errorDeg() {
        return Math.max(azimuthErrorDeg, altitudeErrorDeg);
    }

    /** The same sun, no surer than by how far another reading lies from it. */
    public ShadowSun orAsFarAs(ShadowSun other) {
        double around = Math.IEEEremainder(direction.azimuthDeg(0) - other.direction.azimuthDeg(0), 360);
        return new ShadowSun(
                direction,
                Math.max(azimuthErrorDeg, Math.abs(around)),
                Math.max(altitudeErrorDeg, Math.abs(direction.altitudeDeg() - other.direction.altitudeDeg())),
                onFloors,
                onWalls);
    }
}
