package org.adumbrate.report.page;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.adumbrate.perspective.FittedFloor;
import org.adumbrate.perspective.FittedHeights;
import org.adumbrate.perspective.View;

/** The horizon, the point of view, the height lines and the floors. */
final class PerspectiveSection implements Section {
    private final Report report;

    PerspectiveSection(Report report) {
        this.report = report;
    }

    @Override
    public String id() {
        return "perspective";
    }

    @Override
    public String title() {
        return "Perspective";
    }

    @Override
    public void write(Html html) throws IOException {
        if (report.perspective().isEmpty()) {
            html.element(
                    "p",
                    "Nothing is known of the camera: the sheet file states none, and there are no height lines to tell it.");
            return;
        }
        Perspective perspective = report.perspective().get();
        new PerspectivePlate(report.sheet(), perspective).write(html);
        if (perspective.heights().isPresent()) {
            html.element("p", ruleOf(perspective.heights().get()));
        }
        html.open("dl");
        if (perspective.horizonMm().isPresent()) {
            term(
                    html,
                    "Horizon",
                    Words.number(perspective.horizonMm().get(), 2) + " mm below the sheet's top edge"
                            + perspective
                                    .heights()
                                    .map(heights -> error(
                                            heights, perspective.horizonMm().get()))
                                    .orElse(""));
        }
        if (perspective.view().isPresent()) {
            view(html, perspective.view().get(), perspective.focalSupposed());
        }
        html.closeLine();
        floors(html, perspective);
    }

    private static String ruleOf(FittedHeights heights) {
        return "Each upright is a reference line that is " + Words.number(heights.heightM(), 2)
                + " m tall in the model. On one floor the horizon cuts all of them, or their lines produced, at the same share"
                + " of their height: it is as high above that floor as the eye.";
    }

    private static String error(FittedHeights heights, double used) {
        if (heights.horizonErrorMm() == 0) {
            return "; stated, not fitted";
        }
        String error = " ± " + Words.number(heights.horizonErrorMm(), 2) + " mm (standard error)";
        return Math.abs(heights.horizonMm() - used) < 0.005
                ? "," + error + ", by the height lines"
                : "; the height lines alone put it at " + Words.number(heights.horizonMm(), 2) + error;
    }

    private static void view(Html html, View view, boolean supposed) throws IOException {
        term(html, "Principal point", Words.place(view.principal()) + "; there the eye looks straight at the sheet");
        term(html, "Eye", Words.number(view.eyeHeightM(), 2) + " m above elevation 0, as the sheet is built");
        term(
                html,
                "Focal length",
                Words.number(view.focalMm(), 1)
                        + " mm at the size of the sheet: from so far the print shows the true perspective"
                        + (supposed ? "; supposed, as nothing tells it" : ""));
        if (view.turn() != 0) {
            term(html, "Turn", Words.number(Math.toDegrees(view.turn()), 1) + "° clockwise from the model's +Y");
        }
    }

    private static void term(Html html, String term, String value) throws IOException {
        html.open("div").element("dt", term).element("dd", value).closeLine();
    }

    private static void floors(Html html, Perspective perspective) throws IOException {
        List<FittedFloor> fitted =
                perspective.heights().map(FittedHeights::floors).orElse(List.of());
        if (fitted.isEmpty() && perspective.elevationsM().isEmpty()) {
            return;
        }
        Table table = Table.open(
                html,
                "The floors",
                "Floor",
                "Mark",
                "Elevation",
                "Eye above it, by its lines",
                "Height lines",
                "They fit to",
                "Strays");
        for (int k = 0; k < fitted.size(); k++) {
            FittedFloor floor = fitted.get(k);
            table.row(
                    floor.name(),
                    floor.lines().isEmpty() && floor.outliers().isEmpty() ? "–" : PerspectivePlate.letter(k),
                    elevation(perspective, floor.name()),
                    Words.number(floor.eyeHeightM(), 3) + " m"
                            + (floor.eyeHeightErrorM() > 0 ? " ± " + Words.number(floor.eyeHeightErrorM(), 3) : ""),
                    Integer.toString(floor.lines().size()),
                    floor.lines().isEmpty() ? "–" : Words.number(floor.rmsMm(), 3) + " mm",
                    floor.outliers().isEmpty()
                            ? "none"
                            : Integer.toString(floor.outliers().size()));
        }
        for (String name : perspective.elevationsM().keySet()) {
            if (fitted.stream().noneMatch(floor -> floor.name().equals(name))) {
                Optional<Double> eye = perspective.view().map(View::eyeHeightM);
                table.row(
                        name,
                        "–",
                        elevation(perspective, name),
                        eye.map(height -> Words.number(
                                                height
                                                        - perspective
                                                                .elevationsM()
                                                                .get(name),
                                                3) + " m")
                                .orElse("–"),
                        "0",
                        "–",
                        "none");
            }
        }
        table.close();
    }

    private static String elevation(Perspective perspective, String floor) {
        Double elevation = perspective.elevationsM().get(floor);
        return elevation == null ? "–" : Words.number(elevation, 2) + " m";
    }
}
