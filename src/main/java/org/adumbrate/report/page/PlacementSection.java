package org.adumbrate.report.page;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.adumbrate.registration.Explanation;
import org.adumbrate.registration.Placement;

/** Where the passes lie, and how sure that is. */
final class PlacementSection implements Section {
    private static final Map<Explanation, String> IN_WORDS = Map.of(
            Explanation.ROUNDED, "It fills the sheet; its rows or columns were rounded the other way",
            Explanation.BARS, "Bars were added around it to fit another ratio; they are left out",
            Explanation.CROPPED, "It shows another window of the view",
            Explanation.STRETCHED, "It was scaled more one way than the other",
            Explanation.SHIFTED, "Its window lies elsewhere than the sheet's",
            Explanation.ZOOMED, "It was taken with another focal length",
            Explanation.MIXED, "It differs from the sheet in more than one way",
            Explanation.REFUSED, "It does not belong to the sheet");

    private final Report report;

    PlacementSection(Report report) {
        this.report = report;
    }

    @Override
    public String id() {
        return "placement";
    }

    @Override
    public String title() {
        return "Placement";
    }

    @Override
    public void write(Html html) throws IOException {
        List<PassSheet> placed = report.passes().stream()
                .filter(pass -> pass.placement().isPresent())
                .toList();
        if (placed.isEmpty()) {
            html.element("p", "No pass had to be placed.");
            return;
        }
        html.element(
                "p",
                "How each pass was laid onto the sheet, and the place where it and the lines disagree most, enlarged. The lines"
                        + " of the sheet are blue, and each should lie on the edge in the pass that it stands for.");
        html.open("div", "class", "cards");
        for (PassSheet pass : placed) {
            card(html, pass, pass.placement().orElseThrow());
        }
        html.closeLine();
    }

    private static void card(Html html, PassSheet pass, Placement placement) throws IOException {
        html.open("article", "class", "card");
        html.element("h3", pass.name());
        html.element("p", placement.aligned() ? "Aligned" : "Refused", "class", "status");
        html.element("p", sentence(placement.message()));
        html.open("dl");
        if (placement.explains() != Explanation.SAME_RATIO) {
            term(html, "Against the sheet", IN_WORDS.get(placement.explains()));
        }
        term(html, "Size of the pass", placement.pass().toString().replace(" x ", " × "));
        if (Double.isFinite(placement.residualMm())) {
            term(
                    html,
                    "Edges beside their lines",
                    "half of them by less than " + Words.number(placement.residualMm(), 2) + " mm ("
                            + Words.number(placement.residualPx(), 2) + " px of the pass)");
        }
        if (Double.isFinite(placement.confidence())) {
            double percent = 100 * placement.confidence();
            term(
                    html,
                    "Belongs to this sheet",
                    percent > 99.9 ? "over 99.9\u00a0% sure" : Words.number(percent, 1) + "\u00a0% sure");
        }
        html.closeLine();
        inset(html, pass, placement);
        html.closeLine();
    }

    private static void inset(Html html, PassSheet pass, Placement placement) throws IOException {
        if (pass.inset().isEmpty()) {
            html.element("p", "It was not compared with the lines, so there is no place to show.");
            return;
        }
        html.open("figure");
        html.picture(
                pass.inset().get(),
                "The lines of the sheet in blue over " + pass.name()
                        + ", enlarged around the place where they disagree most");
        html.element("figcaption", "Where they disagree most: " + Words.place(placement.worst()) + ".");
        html.closeLine();
    }

    private static String sentence(String message) {
        return message.isEmpty() ? "" : Character.toUpperCase(message.charAt(0)) + message.substring(1) + ".";
    }

    private static void term(Html html, String term, String value) throws IOException {
        html.open("div").element("dt", term).element("dd", value).closeLine();
    }
}
