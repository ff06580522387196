package org.adumbrate.prepare.lines;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.adumbrate.linework.Hidden;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.ReadingNote;
import org.adumbrate.prepare.finding.Finding;

/** What there is to say of line sheets whose files show more than lines. */
final class LeftOutMarks {
    private LeftOutMarks() {}

    /**
     * What a line sheet does not draw of its file.
     *
     * @param key the key path of the sheet file that names the line sheet
     */
    static List<Finding> of(String key, LaidLines laid) {
        List<Finding> findings = new ArrayList<>();
        LineSheet lines = laid.lines();
        for (ReadingNote remark : lines.remarks()) {
            findings.add(new Finding(
                    remark.kind().isDoubtful() ? Finding.Severity.WARNING : Finding.Severity.NOTE,
                    key,
                    lines.file() + ": " + remark.told() + "; " + remedy(remark.kind())));
        }
        Hidden hidden = lines.hidden();
        if (!hidden.isNothing()) {
            findings.add(new Finding(
                    Finding.Severity.NOTE,
                    key,
                    String.format(
                            Locale.ROOT,
                            "%s: areas painted over lines hide %s, %.0f mm in all, which are not drawn;"
                                    + " if lines are missed, export without fills",
                            lines.file(),
                            hidden.told(),
                            hidden.lengthMm() * laid.toSheet().meanScale())));
        }
        if (!lines.recovered().told().isEmpty()) {
            findings.add(new Finding(
                    Finding.Severity.NOTE,
                    key,
                    lines.file() + ": " + String.join("; ", lines.recovered().told())
                            + (lines.recovered().wide() + lines.recovered().areas() > 0
                                    ? "; if that is wrong, export lines as strokes"
                                    : "")));
        }
        String strokes = told(lines, kind -> kind == LeftOut.Kind.UNCOLORED_STROKE);
        if (!strokes.isEmpty()) {
            findings.add(new Finding(
                    Finding.Severity.WARNING,
                    key,
                    lines.file() + ": not drawn for want of a colour to sort by: " + strokes
                            + "; export lines in plain colours"));
        }
        String otherwise = told(lines, LeftOut.Kind::isTakenOtherwise);
        if (!otherwise.isEmpty()) {
            findings.add(new Finding(
                    Finding.Severity.NOTE,
                    key,
                    lines.file() + ": lines may look otherwise in their file: " + otherwise
                            + "; compare it with the preview, and export plain lines if they differ"));
        }
        String others =
                told(lines, kind -> kind.shows() && kind != LeftOut.Kind.UNCOLORED_STROKE && !kind.isTakenOtherwise());
        if (!others.isEmpty()) {
            findings.add(new Finding(
                    Finding.Severity.NOTE,
                    key,
                    lines.file() + ": not drawn, as it is no line: " + others
                            + "; if something is missed, export it as lines or as a pass"));
        }
        return findings;
    }

    private static String remedy(ReadingNote.Kind kind) {
        return switch (kind) {
            case PAGE -> "if another page is meant, export it alone";
            case MENDED -> "copy it again from where it came, to be safe";
            case SKIPPED -> "if lines are missed, export it again";
            case ANNOTATIONS -> "if they are no part of the drawing, take them off the page";
            case HALF_SHOWN -> "if too much is drawn, export without masks";
        };
    }

    private static String told(LineSheet lines, Predicate<LeftOut.Kind> wanted) {
        return lines.leftOut().stream()
                .filter(left -> wanted.test(left.kind()))
                .map(LeftOut::told)
                .collect(Collectors.joining(", "));
    }
}
