package org.adumbrate.report.page;

import java.io.IOException;
import java.util.List;
import org.adumbrate.drawing.InlineSvg;

/** What the sheet is drawn with, at true weight. */
final class PensSection implements Section {
    private final Report report;

    PensSection(Report report) {
        this.report = report;
    }

    @Override
    public String id() {
        return "pens";
    }

    @Override
    public String title() {
        return "Pens";
    }

    @Override
    public void write(Html html) throws IOException {
        if (report.legend().isEmpty()) {
            html.element("p", "This sheet draws nothing.");
            return;
        }
        html.element(
                "p",
                "Samples are drawn at the weight that they have on the sheet. Weights are true where this page is printed at"
                        + " 100 %; on a screen they are near, as screens differ.");
        for (LegendEntry.Group part : LegendEntry.Group.values()) {
            List<LegendEntry> entries = report.legend().stream()
                    .filter(entry -> entry.part() == part)
                    .toList();
            if (!entries.isEmpty()) {
                part(html, part, entries);
            }
        }
    }

    private static void part(Html html, LegendEntry.Group part, List<LegendEntry> entries) throws IOException {
        html.element("h3", part.title(), "class", "legend-title");
        if (part == LegendEntry.Group.FILLS) {
            html.element(
                    "p",
                    "A fill is shown over a black bar: as much as it hides of that, it hides of the sheet behind it.");
        }
        html.open("ul", "class", "legend");
        for (LegendEntry entry : entries) {
            html.open("li")
                    .open("div", "class", "sample")
                    .raw(InlineSvg.of(LegendEntry.SAMPLE, entry.sample()))
                    .close();
            html.open("div").element("h4", entry.name());
            html.element("p", entry.depicts() + " · " + entry.look());
            if (entry.lines() > 0) {
                html.element("p", amount(entry), "class", "small");
            }
            html.close().closeLine();
        }
        html.closeLine();
    }

    private static String amount(LegendEntry entry) {
        double metres = entry.lengthMm() / 1000;
        return Words.counted(entry.lines(), "line", "lines") + ", " + Words.number(metres, metres < 10 ? 2 : 1)
                + " m on the sheet";
    }
}
