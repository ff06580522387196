package org.adumbrate.report.page;

import java.io.IOException;

/** The whole sheet, which can be enlarged. */
final class SheetSection implements Section {
    private final Report report;

    SheetSection(Report report) {
        this.report = report;
    }

    @Override
    public String id() {
        return "sheet";
    }

    @Override
    public String title() {
        return "The sheet";
    }

    @Override
    public void write(Html html) throws IOException {
        html.open("figure", "class", "viewer", "data-zoom", "1");
        html.open("div", "class", "window", "tabindex", "0", "role", "region", "aria-label", "The sheet as it prints");
        html.picture(
                report.picture(), "The whole sheet: the passes, the lines, the cut and the entourage as they print.");
        html.closeLine();
        html.open("div", "class", "controls", "role", "group", "aria-label", "Size of the sheet on the screen");
        button(html, "1", "Whole sheet", true);
        button(html, "2", "Twice as large", false);
        button(html, "4", "Four times", false);
        html.closeLine();
        html.open("figcaption");
        html.text("The sheet as it prints, reduced for the screen.");
        html.element(
                "span",
                " Enlarge it with the buttons, with a click on a place, or with the keys + and −; the arrow keys move it.",
                "class",
                "scripted");
        html.closeLine().closeLine();
    }

    private static void button(Html html, String zoom, String label, boolean pressed) throws IOException {
        html.element("button", label, "type", "button", "data-zoom", zoom, "aria-pressed", Boolean.toString(pressed));
    }
}
