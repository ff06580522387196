package org.adumbrate.perspective.shadows;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.perspective.SunDirection;

/**
 * Least squares of the directions of edges, each on the faces on which it fits, and how well that settles the sun: no angle is surer than
 * by how much it would change without any one of the edges (the jackknife: Cook and Weisberg, "Residuals and Influence in
 * Regression", 1982, chapter 3).
 */
final class SunFitting {
    private static final int ROUNDS = 12;
    private static final int WIDE_ROUNDS = 3;
    private static final double GATE = 3;
    private static final double WIDE_GATE = 6;

    /** For differences, in degrees. */
    private static final double DELTA = 0.01;

    /** No angle is better known than this, in degrees: what is common to all edges does not show in how they scatter. */
    private static final double LEAST_ERROR = 0.1;

    /** An edge whose neighbours leave so little of the whole to themselves is not weighed out further. */
    private static final double LEAST_REST = 0.1;

    /** An edge counts as a line that shows the sun if its vote is not less than this. */
    private static final double COUNTS = 0.1;

    private final List<SeenEdge> onFloors;
    private final List<SeenEdge> rest;
    private double azimuth;
    private double altitude;
    private List<Fit> fits = List.of();
    private double azimuthError = Double.POSITIVE_INFINITY;
    private double altitudeError = Double.POSITIVE_INFINITY;

    /** An edge that goes with the sun. */
    private record Fit(SeenEdge edge, Faces faces, double off) {
        double error() {
            return edge.error(faces);
        }

        /** How its direction changes from a sun to one that is a little off. */
        double slope(SunDirection off, SunDirection sun) {
            return Faces.apart(faces.angle(off), faces.angle(sun)) / DELTA;
        }

        double weight() {
            return edge.most(faces) * Math.exp(-Math.pow(off / error(), 2) / 2);
        }
    }

    private SunFitting(List<SeenEdge> onFloors, List<SeenEdge> rest, SunDirection start) {
        this.onFloors = onFloors;
        this.rest = rest;
        this.azimuth = start.azimuthDeg(0);
        this.altitude = start.altitudeDeg();
    }

    /**
     * Settles the sun.
     *
     * @param onFloors edges that may be shadows on floors alone
     * @param rest those that may be shadows on walls
     * @param start the sun to begin with
     */
    static SunFitting of(List<SeenEdge> onFloors, List<SeenEdge> rest, SunDirection start) {
        SunFitting fitting = new SunFitting(onFloors, rest, start);
        for (int round = 0; round < ROUNDS; round++) {
            fitting.step(round < WIDE_ROUNDS ? WIDE_GATE : GATE);
        }
        return fitting;
    }

    /** One step of Gauss and Newton over the edges that lie within a gate. */
    private void step(double gate) {
        SunDirection sun = SunDirection.of(azimuth, altitude, 0);
        SunDirection aside = SunDirection.of(azimuth + DELTA, altitude, 0);
        SunDirection above = SunDirection.of(azimuth, altitude + DELTA, 0);
        fits = fits(sun, gate);
        double aa = 0;
        double ab = 0;
        double bb = 0;
        double a = 0;
        double b = 0;
        double squares = 0;
        for (Fit fit : fits) {
            double da = fit.slope(aside, sun);
            double db = fit.slope(above, sun);
            double weight = 1 / (fit.error() * fit.error());
            aa += weight * da * da;
            ab += weight * da * db;
            bb += weight * db * db;
            a += weight * da * fit.off;
            b += weight * db * fit.off;
            squares += weight * fit.off * fit.off;
        }
        double determinant = aa * bb - ab * ab;
        if (!(determinant > 1e-9 * aa * bb)) {
            azimuthError = Double.POSITIVE_INFINITY;
            altitudeError = Double.POSITIVE_INFINITY;
            return;
        }
        azimuth += (bb * a - ab * b) / determinant;
        altitude = Math.max(0, Math.min(90, altitude + (aa * b - ab * a) / determinant));
        double spread = Math.max(1, squares / Math.max(1, fits.size() - 2));
        azimuthError = Math.hypot(LEAST_ERROR, Math.sqrt(spread * bb / determinant));
        altitudeError = Math.hypot(LEAST_ERROR, Math.sqrt(spread * aa / determinant));
        for (Fit fit : fits) {
            double da = fit.slope(aside, sun);
            double db = fit.slope(above, sun);
            double weight = 1 / (fit.error() * fit.error());
            double towardAzimuth = weight * (bb * da - ab * db) / determinant;
            double towardAltitude = weight * (aa * db - ab * da) / determinant;
            double leverage = towardAzimuth * da + towardAltitude * db;
            double alone = fit.off / Math.max(LEAST_REST, 1 - leverage);
            azimuthError = Math.max(azimuthError, Math.abs(towardAzimuth * alone));
            altitudeError = Math.max(altitudeError, Math.abs(towardAltitude * alone));
        }
    }

    private List<Fit> fits(SunDirection sun, double gate) {
        List<Fit> all = new ArrayList<>();
        onFloors.forEach(edge -> fit(edge, sun, gate, Faces.FLOORS).ifPresent(all::add));
        rest.forEach(edge ->
                fit(edge, sun, gate, Faces.SIDE_WALLS, Faces.FRONT_WALLS).ifPresent(all::add));
        return all;
    }

    private static Optional<Fit> fit(SeenEdge edge, SunDirection sun, double gate, Faces... on) {
        Fit best = null;
        for (Faces faces : on) {
            Fit fit = new Fit(edge, faces, edge.off(faces, faces.angle(sun)));
            if (edge.most(faces) > 0 && Math.abs(fit.off) < gate * fit.error()) {
                best = best == null || fit.weight() > best.weight() ? fit : best;
            }
        }
        return Optional.ofNullable(best);
    }

    /** How many lines on such faces show the sun. */
    int lines(Faces faces) {
        return (int) fits.stream()
                .filter(fit -> fit.faces == faces && fit.weight() >= COUNTS)
                .count();
    }

    ShadowSun sun() {
        return new ShadowSun(
                SunDirection.of(azimuth, altitude, 0),
                azimuthError,
                altitudeError,
                lines(Faces.FLOORS),
                lines(Faces.SIDE_WALLS) + lines(Faces.FRONT_WALLS));
    }
}
