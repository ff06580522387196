package org.adumbrate.perspective;

import java.util.List;
import java.util.Locale;

/** Says what is missing when height lines do not settle horizon and floors. */
final class Lack {
    private Lack() {}

    /** No reading of the lines is better than chance. */
    static String of(List<HeightLine> lines, Stated stated, Reading best) {
        String count = lines.size() == 1 ? "one height line" : lines.size() + " height lines";
        if (stated.horizonMm().isPresent()) {
            String horizon =
                    String.format(Locale.ROOT, "%.1f mm", stated.horizonMm().getAsDouble());
            return lines.size() == 1
                    ? "one height line alone may be hidden in part; draw a second one on the same floor"
                    : "no two of " + count + " agree on a floor with the horizon at " + horizon
                            + "; check the horizon, the lines' colour and their height";
        }
        if (lines.size() < 3) {
            return count + " cannot settle a horizon; give the horizon, or draw at least three lines on one floor,"
                    + " near and far";
        }
        return best.standings().size() < 3
                ? "no three of " + count + " agree on a horizon; check the lines' colour and their height, or give the"
                        + " horizon"
                : count + " do not settle a horizon beyond chance; give the horizon, or draw more lines on one floor,"
                        + " near and far";
    }

    /** The lines agree, but all of a floor stand at about one depth. */
    static String ofDepth(double horizonErrorMm, int count) {
        String known = Double.isFinite(horizonErrorMm)
                ? String.format(Locale.ROOT, "to %.0f mm only", horizonErrorMm)
                : "not at all";
        return "the " + count + " height lines settle the horizon " + known
                + ": on every floor they stand at about one depth; give the horizon, or draw lines farther off and nearer";
    }

    /** Two readings explain the lines as well. */
    static String ofClarity(Reading one, Reading other, double heightM, Stated stated) {
        if (!stated.elevationsM().isEmpty() && !stated.settlesEye()) {
            return String.format(
                    Locale.ROOT,
                    "the height lines fit the floors with the eye %.2f m above elevation 0 and %.2f m alike; give the eye"
                            + " height, or draw lines on more of the floors",
                    heightM * one.pencil().rises().get(0),
                    heightM * other.pencil().rises().get(0));
        }
        return String.format(
                Locale.ROOT,
                "the height lines can be read with the horizon at %.1f mm and at %.1f mm alike; give the horizon, or draw"
                        + " more lines on one floor, near and far",
                one.pencil().horizon(),
                other.pencil().horizon());
    }

    /** The lines make too many floors: they are not all of one height. */
    static String ofOneHeight(int count) {
        return "the " + count + " uprights of this colour make more than " + Proposal.MOST_FLOORS
                + " floors, so they are not all of one height; check the colour";
    }

    /** There are more uprights than anyone draws for scale. */
    static String ofFewness(int count) {
        return count + " uprights have this colour, more than anyone draws for scale; check the colour";
    }
}
