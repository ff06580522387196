package org.adumbrate.report.page;

import java.io.IOException;
import java.util.List;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.perspective.FittedFloor;
import org.adumbrate.perspective.FittedHeights;
import org.adumbrate.perspective.HeightLine;

/** The horizon, the principal point and the height lines over the pale drawing. */
final class PerspectivePlate {
    /** The horizon is drawn if it lies no farther off the sheet than this share of its height. */
    private static final double MOST_BEYOND = 0.6;

    private static final double MARGIN = 0.02;

    private final SheetSize sheet;
    private final Perspective perspective;

    PerspectivePlate(SheetSize sheet, Perspective perspective) {
        this.sheet = sheet;
        this.perspective = perspective;
    }

    /** The letter of a floor, {@code A}, {@code B} ...; numbers once letters run out. */
    static String letter(int floor) {
        return floor < 26 ? String.valueOf((char) ('A' + floor)) : Integer.toString(floor + 1);
    }

    void write(Html html) throws IOException {
        html.open("figure");
        Plate plate = Plate.open(
                html,
                sheet,
                reach(),
                "The drawing, pale, with the horizon, the principal point and the height lines over it");
        horizon(plate);
        List<FittedFloor> floors =
                perspective.heights().map(FittedHeights::floors).orElse(List.of());
        for (int k = 0; k < floors.size(); k++) {
            floor(plate, floors.get(k), letter(k));
        }
        principal(plate);
        plate.close();
        html.element("figcaption", caption(floors));
        html.closeLine();
    }

    private String caption(List<FittedFloor> floors) {
        long strays =
                floors.stream().mapToLong(floor -> floor.outliers().size()).sum();
        String lines = floors.isEmpty()
                ? "The horizon and the principal point as the sheet file states them."
                : "Dark uprights are the height lines; the letter at the foot is the floor's in the table below.";
        return strays == 0
                ? lines
                : lines + " Crossed out: " + Words.counted(strays, "line", "lines")
                        + " that fit no floor, with the letter of" + " the one missed by least.";
    }

    private Extent reach() {
        double margin = MARGIN * sheet.widthMm();
        double top = -margin;
        double bottom = sheet.heightMm() + margin;
        double y = perspective.horizonMm().orElse(0.0);
        if (Math.abs(y - sheet.heightMm() / 2) <= (0.5 + MOST_BEYOND) * sheet.heightMm()) {
            top = Math.min(top, y - 3 * margin);
            bottom = Math.max(bottom, y + 3 * margin);
        }
        return new Extent(-margin, top, sheet.widthMm() + margin, bottom);
    }

    private void horizon(Plate plate) throws IOException {
        if (perspective.horizonMm().isEmpty()) {
            return;
        }
        double y = perspective.horizonMm().get();
        SheetPoint left = new SheetPoint(plate.reach().left(), y);
        SheetPoint right = new SheetPoint(plate.reach().right(), y);
        if (plate.holds(left)) {
            plate.line("horizon", left, right);
            plate.label("horizon", plate.beside(left, 2.5, -0.7), "start");
            return;
        }
        double middle = sheet.widthMm() / 2;
        boolean above = y < 0;
        SheetPoint from = new SheetPoint(middle, (above ? 0.12 : 0.88) * sheet.heightMm());
        SheetPoint tip = plate.arrowToEdge("horizon", from, 0, above ? -1 : 1);
        double off = above ? -y : y - sheet.heightMm();
        plate.label(
                "horizon, " + Words.number(off, 0) + " mm " + (above ? "above" : "below") + " the sheet",
                plate.beside(tip, 1.5, above ? 2.5 : -1.5),
                "start");
    }

    private void principal(Plate plate) throws IOException {
        if (perspective.view().isPresent()) {
            SheetPoint at = perspective.view().get().principal();
            if (plate.holds(at)) {
                plate.dot("ring", at, 0.9);
                plate.dot("dot", at, 0.25);
                plate.label("principal point", plate.beside(at, 1.5, -0.9), "start");
            }
        }
    }

    private static void floor(Plate plate, FittedFloor floor, String letter) throws IOException {
        for (HeightLine line : floor.lines()) {
            plate.line("height", line.foot(), line.head());
            plate.dot("dot", line.foot(), 0.22);
            plate.label(letter, plate.beside(line.foot(), 0, 1.7), "middle");
        }
        for (HeightLine line : floor.outliers()) {
            SheetPoint middle = new SheetPoint(
                    (line.foot().x() + line.head().x()) / 2,
                    (line.foot().y() + line.head().y()) / 2);
            plate.line("stray", line.foot(), line.head());
            plate.cross("stray", middle, 0.7);
            plate.label("stray " + letter, plate.beside(line.foot(), 0, 1.7), "middle");
        }
    }
}
