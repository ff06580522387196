package org.adumbrate.build;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.SheetFile;

/** What a sheet file may ask for and this version leaves out: told, so that nobody misses it on paper first. */
final class Unfinished {
    private Unfinished() {}

    static List<Finding> of(SheetFile file) {
        Sheet sheet = file.sheet();
        List<Finding> findings = new ArrayList<>();
        add(findings, !sheet.figures().isEmpty(), "figures: this version draws none of them");
        add(findings, !sheet.planting().isEmpty(), "planting: this version draws none of it");
        add(findings, !sheet.birds().isEmpty(), "birds: this version draws none of them");
        add(findings, !sheet.veils().isEmpty(), "veils: this version draws none of them");
        add(
                findings,
                sheet.cut().isPresent(),
                "cut: this version draws its lines as the outline, without backing or hatch");
        add(findings, sheet.profile().isPresent(), "profile: this version draws none");
        add(
                findings,
                sheet.pens().values().stream().anyMatch(pen -> pen.fades().isPresent()),
                "pens: this version draws each in one width, near and far");
        add(findings, file.places().containsKey("clean-up"), "clean-up: this version draws the lines as they are");
        add(findings, !sheet.order().isEmpty(), "order: this version draws the layers in their usual order");
        return findings;
    }

    private static void add(List<Finding> findings, boolean asked, String text) {
        if (asked) {
            findings.add(new Finding(Finding.Severity.NOTE, text));
        }
    }
}
