package org.adumbrate.preflight;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.adumbrate.preflight.Observation.Severity;
import org.adumbrate.preflight.Observations.Advice;
import org.adumbrate.prepare.finding.Finding;

/** What a build finds itself: gaps in the cut, colours without a pen, figures that nobody sees, cameras that disagree. */
final class BuildRule implements Rule {
    private static final Pattern KEY = Pattern.compile("([a-z-]+(?:\\.[a-z-]+)*): (?=.)");

    @Override
    public void look(CheckedSheet sheet, Observations found) {
        for (Finding finding : sheet.findings()) {
            Matcher key = KEY.matcher(finding.text());
            boolean isKeyed = key.lookingAt();
            boolean isNote = finding.severity() == Finding.Severity.NOTE;
            found.add(
                    isNote ? Severity.NOTE : Severity.WARNING,
                    isKeyed ? key.group(1) : "",
                    finding.at(),
                    Clauses.first(finding.text()),
                    new Advice(
                            why(isKeyed ? key.group(1) : "", isNote),
                            Clauses.last(finding.text(), isNote ? "nothing" : "look at it")));
        }
    }

    private static String why(String key, boolean isNote) {
        return switch (key) {
            case "cut" -> "a cut that does not close is hatched wrong or not at all";
            case "pens" -> "lines without a pen are drawn in the colour and width of the export";
            case "veils" -> "a veil that covers nothing hides nothing";
            case "figures" -> "a figure that is not seen is not drawn";
            case "sun" -> "shadows fall by it";
            default -> isNote ? "it is good to know" : "the drawing may not be as it is meant";
        };
    }
}
