package org.adumbrate.report.page;

import java.io.IOException;

/** Each pass with the lines over part of it. */
final class PassesSection implements Section {
    private final Report report;

    PassesSection(Report report) {
        this.report = report;
    }

    @Override
    public String id() {
        return "passes";
    }

    @Override
    public String title() {
        return "Passes under the lines";
    }

    @Override
    public void write(Html html) throws IOException {
        if (report.passes().isEmpty()) {
            html.element("p", "This sheet has no passes: its lines stand on bare paper.");
            return;
        }
        html.element(
                "p",
                "Each pass as it lies on the sheet. Move the slider to draw the lines over it from the left. Where a pass lies"
                        + " rightly, walls, openings and furniture in it end at their lines; the edges of cast shadows have no"
                        + " lines of their own.");
        for (int k = 0; k < report.passes().size(); k++) {
            pass(html, report.passes().get(k), "lines-over-" + (k + 1));
        }
    }

    private static void pass(Html html, PassSheet pass, String id) throws IOException {
        html.open("figure", "class", "swipe", "style", "--at: 50%");
        html.open("figcaption")
                .element("h3", pass.name())
                .element("p", pass.shows())
                .closeLine();
        html.open("div", "class", "plate");
        html.picture(pass.picture(), pass.name() + " on the sheet, without lines");
        html.open("span", "class", "drawn over").closeLine();
        html.closeLine();
        html.open("div", "class", "controls");
        html.element("label", "Lines over the pass", "for", id);
        html.empty(
                "input",
                "type",
                "range",
                "id",
                id,
                "min",
                "0",
                "max",
                "100",
                "value",
                "50",
                "step",
                "1",
                "aria-valuetext",
                "lines over 50 percent of the width");
        html.element("output", "50\u00a0%", "for", id);
        html.closeLine().closeLine();
    }
}
