package org.adumbrate.perspective.shadows;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.StraightEdge;
import org.adumbrate.perspective.SunDirection;
import org.adumbrate.perspective.View;

/**
 * Finds the sun by the straight edges of shadows, without knowing what casts them: those of uprights on floors, and those on
 * walls of edges that stand square on them, have directions that depend on the sun alone ({@link Faces}). Edges on floors vote
 * for the azimuth first; those that do not lie along it vote for the altitude as edges on walls. The result is settled by least
 * squares over all that go with it. Floors and both kinds of walls must show it, by several lines, and no other sun may be nearly as
 * good: three kinds of faces check the two angles.
 */
public final class SunByShadows {
    /** Of so many edges the best known are looked at. */
    private static final int MOST_EDGES = 600;

    private static final double STEP_DEG = 0.25;
    private static final double LOWEST_DEG = 2;
    private static final int AZIMUTHS = (int) (180 / STEP_DEG);
    private static final int ALTITUDES = (int) ((90 - 2 * LOWEST_DEG) / STEP_DEG) + 1;

    /** What lies within this of the winner is no rival, in degrees. */
    private static final double SAME_DEG = 3;

    private static final int LEAST_LINES = 2;

    private final List<SeenEdge> edges;

    private SunByShadows(List<SeenEdge> edges) {
        this.edges = edges;
    }

    /**
     * Finds the sun.
     *
     * @param edges edges between light and dark that no drawn line explains
     * @param view how the sheet shows the model; floors may have any elevation
     * @throws Refusal if the edges do not tell it clearly; says why
     */
    public static ShadowSun of(List<StraightEdge> edges, View view) throws Refusal {
        List<SeenEdge> seen = SeenEdge.oblique(edges, view).stream()
                .sorted(Comparator.comparingDouble(
                        (SeenEdge edge) -> -edge.edge().lengthMm() / edge.edge().errorMm()))
                .limit(MOST_EDGES)
                .toList();
        return new SunByShadows(SeenEdge.lines(seen)).find();
    }

    private ShadowSun find() throws Refusal {
        double azimuth = azimuth();
        List<SeenEdge> onFloors = new ArrayList<>();
        List<SeenEdge> rest = new ArrayList<>();
        for (SeenEdge edge : edges) {
            (edge.fits(Faces.FLOORS, azimuth) ? onFloors : rest).add(edge);
        }
        SunFitting fitting = SunFitting.of(onFloors, rest, altitude(rest, azimuth));
        int sides = fitting.lines(Faces.SIDE_WALLS);
        int fronts = fitting.lines(Faces.FRONT_WALLS);
        if (fitting.lines(Faces.FLOORS) < LEAST_LINES || Math.min(sides, fronts) < 1 || sides + fronts <= LEAST_LINES) {
            throw new Refusal("too few shadows agree on where the sun stands, by whatever edge they are cast");
        }
        return fitting.sun();
    }

    /** The direction of shadows on floors, 0 to 180 degrees: the sun stands at either end. */
    private double azimuth() throws Refusal {
        List<float[]> votes = new ArrayList<>();
        for (SeenEdge edge : edges) {
            if (edge.most(Faces.FLOORS) > 0) {
                float[] given = new float[AZIMUTHS];
                for (int k = 0; k < AZIMUTHS; k++) {
                    given[k] = edge.vote(Faces.FLOORS, k * STEP_DEG);
                }
                votes.add(given);
            }
        }
        Ballot.Result result = new Ballot(votes, AZIMUTHS)
                .count(winner -> k -> Math.abs(Faces.apart(k * STEP_DEG, winner * STEP_DEG)) <= SAME_DEG);
        if (result.isWeak()) {
            throw new Refusal("too few shadows of uprights are seen on floors to tell which way they fall");
        }
        if (!result.isClear()) {
            throw new Refusal(String.format(
                    Locale.ROOT,
                    "edges of shadows on floors run in several directions, %.0f and %.0f degrees clockwise from the model's +Y",
                    result.winner() * STEP_DEG,
                    result.rival() * STEP_DEG));
        }
        return result.winner() * STEP_DEG;
    }

    /** The sun at one of both ends of the shadows' direction, as high as shadows on walls tell. */
    private static SunDirection altitude(List<SeenEdge> rest, double azimuth) throws Refusal {
        List<float[]> votes = new ArrayList<>();
        for (SeenEdge edge : rest) {
            float[] given = new float[2 * ALTITUDES];
            for (int k = 0; k < given.length; k++) {
                SunDirection sun = sun(azimuth, k);
                given[k] = Math.max(
                        edge.vote(Faces.SIDE_WALLS, Faces.SIDE_WALLS.angle(sun)),
                        edge.vote(Faces.FRONT_WALLS, Faces.FRONT_WALLS.angle(sun)));
            }
            votes.add(given);
        }
        Ballot.Result result = new Ballot(votes, 2 * ALTITUDES)
                .count(winner -> k -> sun(azimuth, k).degreesTo(sun(azimuth, winner)) <= SAME_DEG);
        String along = String.format(
                Locale.ROOT, "shadows on floors lie along %.0f degrees, clockwise from the model's +Y, but ", azimuth);
        if (result.isWeak()) {
            throw new Refusal(along + "too few shadows of edges are seen on walls to tell how high the sun stands");
        }
        if (!result.isClear()) {
            throw new Refusal(String.format(
                    Locale.ROOT,
                    "%sthose on walls do not agree how high the sun stands: it may be %.0f or %.0f degrees",
                    along,
                    sun(azimuth, result.winner()).altitudeDeg(),
                    sun(azimuth, result.rival()).altitudeDeg()));
        }
        return sun(azimuth, result.winner());
    }

    private static SunDirection sun(double azimuth, int candidate) {
        return SunDirection.of(
                azimuth + (candidate < ALTITUDES ? 0 : 180), LOWEST_DEG + candidate % ALTITUDES * STEP_DEG, 0);
    }
}
