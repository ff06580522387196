package org.adumbrate.perspective.shadows;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.perspective.SunDirection;

/** Least squares of the directions of edges, each on the faces on which it fits, and how well that settles the sun. */
final class SunFitting {
    private static final int ROUNDS = 12;
    private static final double GATE = 3;
    private static final double DELTA = 0.01;

    private final List<SeenEdge> onFloors;
    private final List<SeenEdge> rest;
    private double azimuth;
    private double altitude;
    private List<Fit> fits = List.of();
    private double azimuthError;
    private double altitudeError;
    private double chi;

    /** An edge that goes with the sun. */
    record Fit(SeenEdge edge, Faces faces, double off, double error) {
        double weight() {
            double most = edge.most(faces);
            return most * Math.exp(-off * off / error / error / 2);
        }
    }

    private SunFitting(List<SeenEdge> onFloors, List<SeenEdge> rest, SunDirection start) {
        this.onFloors = onFloors;
        this.rest = rest;
        this.azimuth = start.azimuthDeg(0);
        this.altitude = start.altitudeDeg();
    }

    static SunFitting of(List<SeenEdge> onFloors, List<SeenEdge> rest, SunDirection start) {
        SunFitting fitting = new SunFitting(onFloors, rest, start);
        fitting.settle();
        return fitting;
    }

    private void settle() {
        for (int round = 0; round < ROUNDS; round++) {
            double gate = round < 3 ? 2 * GATE : GATE;
            SunDirection sun = SunDirection.of(azimuth, altitude, 0);
            fits = fits(sun, gate);
            double aa = 0, ab = 0, bb = 0, a = 0, b = 0;
            chi = 0;
            for (Fit fit : fits) {
                double at = fit.faces.angle(sun);
                double da = Faces.apart(fit.faces.angle(SunDirection.of(azimuth + DELTA, altitude, 0)), at) / DELTA;
                double db = Faces.apart(fit.faces.angle(SunDirection.of(azimuth, altitude + DELTA, 0)), at) / DELTA;
                double w = 1 / (fit.error * fit.error);
                aa += w * da * da;
                ab += w * da * db;
                bb += w * db * db;
                a += w * da * fit.off;
                b += w * db * fit.off;
                chi += w * fit.off * fit.off;
            }
            double det = aa * bb - ab * ab;
            if (!(det > 1e-9 * aa * bb)) {
                azimuthError = altitudeError = Double.POSITIVE_INFINITY;
                return;
            }
            azimuth += (bb * a - ab * b) / det;
            altitude += (aa * b - ab * a) / det;
            double spread = Math.max(1, chi / Math.max(1, fits.size() - 2));
            azimuthError = Math.sqrt(spread * bb / det);
            altitudeError = Math.sqrt(spread * aa / det);
        }
    }

    private List<Fit> fits(SunDirection sun, double gate) {
        List<Fit> fits = new ArrayList<>();
        onFloors.forEach(edge -> fit(edge, List.of(Faces.FLOORS), sun, gate).ifPresent(fits::add));
        rest.forEach(edge -> fit(edge, List.of(Faces.SIDE_WALLS, Faces.FRONT_WALLS), sun, gate)
                .ifPresent(fits::add));
        return fits;
    }

    private static Optional<Fit> fit(SeenEdge edge, List<Faces> on, SunDirection sun, double gate) {
        Fit best = null;
        for (Faces faces : on) {
            Fit fit = new Fit(edge, faces, edge.off(faces, faces.angle(sun)), edge.error(faces));
            if (edge.most(faces) > 0 && Math.abs(fit.off) < gate * fit.error) {
                best = best == null || fit.weight() > best.weight() ? fit : best;
            }
        }
        return Optional.ofNullable(best);
    }

    int lines(Faces faces) {
        return (int) fits.stream().filter(fit -> fit.faces == faces && fit.weight() > 0.1).count();
    }

    double weight(Faces faces) {
        return fits.stream().filter(fit -> fit.faces == faces).mapToDouble(Fit::weight).sum();
    }

    ShadowSun sun() {
        return new ShadowSun(
                SunDirection.of(azimuth, altitude, 0),
                azimuthError,
                altitudeError,
                lines(Faces.FLOORS),
                lines(Faces.SIDE_WALLS) + lines(Faces.FRONT_WALLS));
    }

    @Override
    public String toString() {
        return String.format(
                "az %.3f +- %.3f alt %.3f +- %.3f, lines %d %d %d weights %.1f %.1f %.1f chi %.2f of %d",
                azimuth, azimuthError, altitude, altitudeError,
                lines(Faces.FLOORS), lines(Faces.SIDE_WALLS), lines(Faces.FRONT_WALLS),
                weight(Faces.FLOORS), weight(Faces.SIDE_WALLS), weight(Faces.FRONT_WALLS), chi / Math.max(1, fits.size() - 2), fits.size());
    }
}
