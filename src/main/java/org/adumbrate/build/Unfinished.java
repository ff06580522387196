package org.adumbrate.build;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.sheetfile.Sheet;

/** What a sheet file may ask for and this version leaves out: told, so that nobody misses it on paper first. */
final class Unfinished {
    private Unfinished() {}

    static List<Finding> of(Sheet sheet) {
        List<Finding> findings = new ArrayList<>();
        add(findings, !sheet.figures().isEmpty(), "figures: this version draws none of them");
        add(findings, !sheet.veils().isEmpty(), "veils: this version draws none of them");
        add(
                findings,
                sheet.cut().isPresent(),
                "cut: this version draws its lines as the outline, without backing or hatch");
        return findings;
    }

    private static void add(List<Finding> findings, boolean asked, String text) {
        if (asked) {
            findings.add(new Finding(Finding.Severity.NOTE, text));
        }
    }
}
