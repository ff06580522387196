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
 * for the azimuth first; those that do not lie along it vote for the altitude as edges on walls. Both results are settled together by
 * least squares. Each must be shown by several lines, and no other may be nearly as good.
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

    private static final double CLEARLY = 2;
    private static final double LEAST_LEAD = 3;
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
                .sorted(Comparator.comparingDouble((SeenEdge edge) ->
                                -edge.edge().lengthMm() / edge.edge().errorMm()))
                .limit(MOST_EDGES)
                .toList();
        return new SunByShadows(SeenEdge.lines(seen)).find();
    }

    private ShadowSun find() throws Refusal {
        Ballot.Result around = azimuth();
        if (Boolean.getBoolean("sun.debug")) {
            System.err.printf("edges %d az %.2f lead %.2f behind %.2f at %.1f%n", edges.size(), around.winner() * STEP_DEG, around.lead(), around.behind(), around.rival() * STEP_DEG);
        }
        if (!around.isClear(CLEARLY, LEAST_LEAD)) {
            throw new Refusal(around.lead() < LEAST_LEAD
                    ? "no shadows of uprights are seen on floors"
                    : String.format(
                            Locale.ROOT,
                            "shadows on floors run in several directions, along azimuths %.0f and %.0f",
                            around.winner() * STEP_DEG,
                            around.rival() * STEP_DEG));
        }
        double azimuth = around.winner() * STEP_DEG;
        List<SeenEdge> onFloors = new ArrayList<>();
        List<SeenEdge> rest = new ArrayList<>();
        for (SeenEdge edge : edges) {
            (edge.fits(Faces.FLOORS, azimuth) ? onFloors : rest).add(edge);
        }
        Ballot.Result up = altitude(rest, azimuth);
        SunDirection found = sun(azimuth, up.winner());
        SunFitting fitting = SunFitting.of(onFloors, rest, found);
        if (Boolean.getBoolean("sun.debug")) {
            System.err.printf("   alt %.2f lead %.2f behind %.2f at %.1f%n", found.altitudeDeg(), up.lead(), up.behind(), sun(azimuth, up.rival()).altitudeDeg());
            System.err.println("   " + fitting);
        }
        if (!up.isClear(CLEARLY, LEAST_LEAD)) {
            throw new Refusal(up.lead() < LEAST_LEAD
                    ? "no shadows on walls tell how high the sun stands"
                    : String.format(
                            Locale.ROOT,
                            "shadows on walls agree on no height of the sun: %.0f and %.0f degrees are as likely",
                            found.altitudeDeg(),
                            sun(azimuth, up.rival()).altitudeDeg()));
        }
        return fitting.sun();
    }

    /** Votes for the direction of shadows on floors, 0 to 180 degrees. */
    private Ballot.Result azimuth() {
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
        return new Ballot(votes, AZIMUTHS)
                .count(winner -> k -> Math.abs(Faces.apart(k * STEP_DEG, winner * STEP_DEG)) <= SAME_DEG);
    }

    /** Votes for the altitude, with the sun at either end of the shadows' direction. */
    private static Ballot.Result altitude(List<SeenEdge> rest, double azimuth) {
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
        return new Ballot(votes, 2 * ALTITUDES)
                .count(winner -> k -> sun(azimuth, k).degreesTo(sun(azimuth, winner)) <= SAME_DEG);
    }

    private static SunDirection sun(double azimuth, int candidate) {
        return SunDirection.of(
                azimuth + (candidate < ALTITUDES ? 0 : 180),
                LOWEST_DEG + candidate % ALTITUDES * STEP_DEG,
                0);
    }
}
