package org.adumbrate.perspective;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.adumbrate.fault.Refusal;

/** From the lines of a known height to horizon and floors. */
public final class HeightFit {
    private static final int MOST_LINES = 1000;

    /** Before a line is looked at, ends are believed to be drawn to this many mm, as firmly as one spare line says so. */
    private static final double BELIEVED_SIGMA = 0.1;

    private static final double BELIEF = 1;

    /** A horizon less sure than this, in mm, is no horizon: heads would be off by several percent. */
    private static final double LEAST_SURE_MM = 4;

    /** Another reading is a rival if the best explains the lines less than e^2 times as well. */
    private static final double CLEAR_LEAD = 2;

    /** Two readings put the eye elsewhere if it differs by this many statures: 10 cm for a person. */
    private static final double DIFFERENT = 0.06;

    private final Uprights uprights;
    private final List<HeightLine> lines;
    private final double heightM;
    private final Stated stated;
    private final List<FloorSearch> searches = new ArrayList<>();

    private HeightFit(List<HeightLine> lines, double heightM, Stated stated, List<VanishingPoint> meeting) {
        uprights = Uprights.of(lines);
        this.lines = uprights.strays(List.of());
        this.heightM = heightM;
        this.stated = stated;
        Optional<KnownHorizon> horizon =
                stated.horizonMm().stream().mapToObj(KnownHorizon::stated).findFirst();
        Optional<Double> rise =
                stated.settlesEye() ? Optional.of(stated.eyeHeightM().getAsDouble() / heightM) : Optional.empty();
        List<Level> ladder = ladder(stated, heightM);
        List<KnownHorizon> drawn = horizon.isPresent() ? List.of() : KnownHorizon.of(meeting);
        searches.add(new FloorSearch(uprights, ladder, horizon, rise, KnownHorizon.costOfNone(drawn)));
        for (KnownHorizon one : drawn) {
            searches.add(new FloorSearch(uprights, ladder, Optional.of(one), rise, 0));
        }
    }

    private static List<Level> ladder(Stated stated, double heightM) {
        return stated.elevationsM().entrySet().stream()
                .map(floor -> new Level(floor.getKey(), 0, floor.getValue() / heightM))
                .sorted(Comparator.comparingDouble(Level::offset).thenComparing(Level::name))
                .toList();
    }

    /**
     * Fits horizon and floors to height lines. Floors are told apart by themselves; where elevations are stated, the floors
     * are tied to one eye height and carry the stated names. Lines that stand on no floor (hidden in part, drawn wrong) are
     * told and left out. Pieces that stand in one line are one height line if floors say so, however much is hidden between
     * them. Any upright picture plane will do, one-point and two-point alike.
     *
     * @param lines as drawn, whole or in pieces, in any order; ends off by some tenths of a mm
     * @param heightM how tall each of them is, in metres, above zero
     * @param stated what is known already
     * @throws Refusal if the lines do not settle it; says what is missing
     */
    public static FittedHeights of(List<HeightLine> lines, double heightM, Stated stated) throws Refusal {
        return of(lines, heightM, stated, List.of());
    }

    /**
     * The same with the help of the drawing: level edges of a building meet on the horizon.
     *
     * @param meeting where lines of the drawing meet; whether one of these points lies on the horizon, the height lines tell
     * @throws Refusal if the lines do not settle it; says what is missing
     */
    public static FittedHeights of(List<HeightLine> lines, double heightM, Stated stated, List<VanishingPoint> meeting)
            throws Refusal {
        if (!(heightM > 0 && Double.isFinite(heightM))) {
            throw new IllegalArgumentException("height lines must have a height above zero, not " + heightM);
        }
        if (lines.isEmpty()) {
            throw new Refusal("there are no height lines; draw some, each as tall as a person, on every floor");
        }
        if (lines.size() > MOST_LINES) {
            throw new Refusal(Lack.ofFewness(lines.size()));
        }
        return new HeightFit(lines, heightM, stated, meeting).fit();
    }

    private FittedHeights fit() throws Refusal {
        List<Reading> readings = FloorSearch.byWorth(
                searches.stream().flatMap(search -> search.readings().stream()).toList());
        Reading best = FloorSearch.beyondChance(readings.get(0), uprights);
        int spare = best.spareLines();
        if (!best.isBeyondChance(uprights)) {
            throw new Refusal(Lack.of(lines, stated, best));
        }
        if (best.pencil().rises().size() > Proposal.MOST_FLOORS) {
            throw new Refusal(Lack.ofOneHeight(lines.size()));
        }
        double sigma =
                Math.sqrt((BELIEF * BELIEVED_SIGMA * BELIEVED_SIGMA + best.squares()) / (BELIEF + Math.max(0, spare)));
        double horizonError = best.horizonErrorMm(sigma);
        if (!(horizonError <= LEAST_SURE_MM)) {
            throw new Refusal(Lack.ofDepth(horizonError, lines.size()));
        }
        for (Reading other : readings) {
            if (other.worth() > readings.get(0).worth() - CLEAR_LEAD && isAnother(other, best, sigma)) {
                throw new Refusal(Lack.ofClarity(best, other, heightM, stated));
            }
        }
        return new Telling(best, sigma, heightM).of(uprights);
    }

    /** True if two readings differ by more than their errors. */
    private static boolean isAnother(Reading one, Reading best, double sigma) {
        double apart = Math.abs(one.pencil().horizon() - best.pencil().horizon());
        double error = Math.hypot(one.horizonErrorMm(sigma), best.horizonErrorMm(sigma));
        if (apart > 4 * error + 0.5) {
            return true;
        }
        boolean isTied = best.pencil().levels().stream().anyMatch(Level::isNamed);
        return isTied
                && Math.abs(one.pencil().rises().get(0) - best.pencil().rises().get(0)) > DIFFERENT;
    }
}
