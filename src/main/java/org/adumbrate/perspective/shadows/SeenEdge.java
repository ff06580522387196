package org.adumbrate.perspective.shadows;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.StraightEdge;
import org.adumbrate.perspective.View;

/**
 * An edge of light and dark on the sheet, and what direction it would have in the model if it were a shadow on each kind of
 * faces: the plane through the eye and the edge cuts the faces in it.
 *
 * @param edge on the sheet
 * @param angles for each of {@link Faces} the direction in degrees
 * @param errors their standard deviations; without bound where the edge cannot lie on such faces
 * @param weight what it counts, 0 to 1: short edges count less
 */
record SeenEdge(StraightEdge edge, Map<Faces, Double> angles, Map<Faces, Double> errors, double weight) {
    /** An edge that misses the vanishing point of an axis by less than so many errors may run along that axis. */
    private static final double ALONG_AXIS = 5;

    /** Directions of edges are no better known than this, in degrees: by sampling, and by the camera as it is stated. */
    private static final double LEAST_ERROR = 0.1;

    /** Directions are tried in steps, so that edges are taken to be less exact than they are, in degrees. */
    private static final double COARSE = 0.15;

    /** A direction that is less known than this tells nothing, in degrees; one less known than half a degree counts less. */
    private static final double LARGEST_ERROR = 2;

    private static final double EXACT = 0.5;

    /** An edge may be a shadow in a direction that it misses by so many errors. */
    private static final double GATE = 3;

    /**
     * What is nearer than this to an axis on the sheet, as a sine, is no shadow on walls: where floors are seen nearly edge on, all
     * that lies on them is drawn so.
     */
    private static final double GRAZING = Math.sin(Math.toRadians(4));

    /** An edge counts in full if it is so many errors long. */
    private static final double LONG = 250;

    /** The edges that run along none of the model's axes. */
    static List<SeenEdge> oblique(List<StraightEdge> edges, View view) {
        List<SeenEdge> seen = new ArrayList<>();
        for (StraightEdge edge : edges) {
            of(edge, view).ifPresent(seen::add);
        }
        return seen;
    }

    private static Optional<SeenEdge> of(StraightEdge edge, View view) {
        double[] from = ray(edge.from(), view);
        double[] to = ray(edge.to(), view);
        double[] plane = cross(from, to);
        double length = edge.lengthMm();
        double upright = missedMm(edge, 2, view);
        double missed = Math.min(upright, Math.min(missedMm(edge, 0, view), missedMm(edge, 1, view)));
        if (missed < ALONG_AXIS * edge.errorMm()) {
            return Optional.empty();
        }
        boolean isGrazing = missed < GRAZING * length / 2;
        boolean isNearlyUpright = upright < GRAZING * length / 2;
        double ox = (edge.from().y() - edge.to().y()) / length * edge.errorMm();
        double oy = (edge.to().x() - edge.from().x()) / length * edge.errorMm();
        double[] fromOff = ray(new SheetPoint(edge.from().x() + ox, edge.from().y() + oy), view);
        double[] toOff = ray(new SheetPoint(edge.to().x() + ox, edge.to().y() + oy), view);
        Map<Faces, Double> angles = new EnumMap<>(Faces.class);
        Map<Faces, Double> errors = new EnumMap<>(Faces.class);
        for (Faces faces : Faces.values()) {
            double angle = angle(plane, faces);
            double one = Faces.apart(angle(cross(fromOff, to), faces), angle);
            double other = Faces.apart(angle(cross(from, toOff), faces), angle);
            boolean isAbove = Math.min(edge.from().y(), edge.to().y()) <= view.horizonMm();
            angles.put(faces, angle);
            boolean isOff = faces == Faces.FLOORS ? isAbove || isNearlyUpright : isGrazing;
            errors.put(faces, isOff ? Double.POSITIVE_INFINITY : Math.hypot(one, other));
        }
        return Optional.of(new SeenEdge(edge, angles, errors, Math.min(1, length / edge.errorMm() / LONG)));
    }

    /** The direction from the eye to what is seen at a point. */
    private static double[] ray(SheetPoint seen, View view) {
        ModelPoint point = view.at(seen, 1);
        return new double[] {point.x(), point.y(), point.z() - view.eyeHeightM()};
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double angle(double[] plane, Faces faces) {
        double[] normal = new double[3];
        normal[faces.across()] = 1;
        return faces.angle(cross(plane, normal));
    }

    /** How far the ends lie from a line through the middle toward the vanishing point of an axis. */
    private static double missedMm(StraightEdge edge, int axis, View view) {
        double right = axis == 0 ? Math.cos(view.turn()) : axis == 1 ? -Math.sin(view.turn()) : 0;
        double ahead = axis == 0 ? Math.sin(view.turn()) : axis == 1 ? Math.cos(view.turn()) : 0;
        double up = axis == 2 ? 1 : 0;
        double mx = (edge.from().x() + edge.to().x()) / 2;
        double my = (edge.from().y() + edge.to().y()) / 2;
        double vx = view.focalMm() * right + (view.principal().x() - mx) * ahead;
        double vy = -view.focalMm() * up + (view.principal().y() - my) * ahead;
        double dx = edge.to().x() - edge.from().x();
        double dy = edge.to().y() - edge.from().y();
        return Math.abs(dx * vy - dy * vx) / Math.hypot(vx, vy) / 2;
    }

    /** The error of its direction on faces, in degrees. */
    double error(Faces faces) {
        return Math.hypot(errors.get(faces), LEAST_ERROR);
    }

    /** By how much it misses a direction on faces, in degrees. */
    double off(Faces faces, double angle) {
        return Faces.apart(angles.get(faces), angle);
    }

    /** Whether it may be a shadow in a direction on faces. */
    boolean fits(Faces faces, double angle) {
        return most(faces) > 0 && Math.abs(off(faces, angle)) < GATE * Math.hypot(error(faces), COARSE);
    }

    /** What it counts if it has exactly the right direction on faces. */
    double most(Faces faces) {
        double error = error(faces);
        return error > LARGEST_ERROR ? 0 : weight * Math.min(1, EXACT / error);
    }

    /** What it counts for a direction on faces. */
    float vote(Faces faces, double angle) {
        double off = off(faces, angle) / Math.hypot(error(faces), COARSE);
        return off * off > 30 ? 0 : (float) (most(faces) * Math.exp(-off * off / 2));
    }

    /** Whether another edge lies on the line through this one, as far as both are known. */
    boolean isInLineWith(SeenEdge other) {
        return isNear(other.edge.from(), other) && isNear(other.edge.to(), other);
    }

    private boolean isNear(SheetPoint at, SeenEdge other) {
        double length = edge.lengthMm();
        double dx = (edge.to().x() - edge.from().x()) / length;
        double dy = (edge.to().y() - edge.from().y()) / length;
        double vx = at.x() - (edge.from().x() + edge.to().x()) / 2;
        double vy = at.y() - (edge.from().y() + edge.to().y()) / 2;
        double error = edge.errorMm() * (1 + 2 * Math.abs(vx * dx + vy * dy) / length) + other.edge.errorMm();
        return Math.abs(vx * dy - vy * dx) < GATE * error;
    }

    /** The same edge that counts as much as it and another one of its line, once in full at most. */
    SeenEdge with(SeenEdge other) {
        return new SeenEdge(edge, angles, errors, Math.min(1, weight + other.weight));
    }

    /**
     * One edge for each line that edges lie on, the best known of them: a shadow's edge in pieces is one.
     *
     * @param edges the best known first
     */
    static List<SeenEdge> lines(List<SeenEdge> edges) {
        List<SeenEdge> lines = new ArrayList<>();
        for (SeenEdge edge : edges) {
            int at = 0;
            while (at < lines.size() && !lines.get(at).isInLineWith(edge)) {
                at++;
            }
            if (at == lines.size()) {
                lines.add(edge);
            } else {
                lines.set(at, lines.get(at).with(edge));
            }
        }
        return lines;
    }
}
