package org.adumbrate.preflight;

import java.util.regex.Pattern;
import org.adumbrate.preflight.Observation.Severity;
import org.adumbrate.preflight.Observations.Advice;
import org.adumbrate.prepare.finding.Finding;

/** What a build finds itself: gaps in the cut, colours without a pen, figures that nobody sees, cameras that disagree. */
final class BuildRule implements Rule {
    private static final Pattern OF_FACES = Pattern.compile(".*\\.(faces\\[\\d+\\]|area)");

    @Override
    public void look(CheckedSheet sheet, Observations found) {
        for (Finding finding : sheet.findings()) {
            boolean isNote = finding.severity() == Finding.Severity.NOTE;
            found.add(
                    isNote ? Severity.NOTE : Severity.WARNING,
                    finding.key(),
                    finding.at(),
                    Clauses.first(finding.text()),
                    new Advice(
                            why(finding.key(), isNote),
                            Clauses.last(finding.text(), isNote ? "nothing" : "look at it")));
        }
    }

    private static String why(String key, boolean isNote) {
        if (OF_FACES.matcher(key).matches()) {
            return "faces follow the lines around them, and another face may lie at the point now";
        }
        return switch (key.split("[.\\[]", 2)[0]) {
            case "lines" -> "what is printed is what is seen of the lines, and nothing else of their file";
            case "cut" -> "a cut that does not close is hatched wrong or not at all";
            case "pens" -> "lines without a pen are drawn in the colour and width of the export";
            case "veils" -> "a veil that covers nothing hides nothing";
            case "figures" -> "a figure that is not seen is not drawn";
            case "sun" -> "shadows fall by it";
            default -> isNote ? "it is good to know" : "the drawing may not be as it is meant";
        };
    }
}
