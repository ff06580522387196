package org.adumbrate.prepare.scene;

import java.util.List;
import java.util.Optional;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.perspective.Contradiction;
import org.adumbrate.perspective.FittedHeights;
import org.adumbrate.perspective.VanishingPoint;
import org.adumbrate.perspective.View;
import org.adumbrate.perspective.ViewCheck;
import org.adumbrate.sheetfile.Camera;
import org.adumbrate.sheetfile.Sheet;

/**
 * The view of a sheet as exactly as the sun's shadows ask for it: people may stand in one whose principal point is taken to lie in the
 * middle of the sheet, but the sun would be degrees off.
 *
 * @param view the view
 * @param focalKnown whether its focal length is known; if not it is a normal lens, and angles of the sun mean nothing
 * @param horizonErrorMm how far the horizon may be off, as a standard deviation in mm
 */
public record SunView(View view, boolean focalKnown, double horizonErrorMm) {
    /**
     * The view.
     *
     * @throws Refusal if the principal point is neither stated nor shown by the lines, or they contradict the camera; says what to state
     */
    static SunView of(Sheet sheet, View best, boolean focalKnown, Optional<FittedHeights> heights, List<VanishingPoint> meeting)
            throws Refusal {
        double error = 0;
        View view = best;
        if (sheet.camera().flatMap(Camera::principalPoint).isEmpty()) {
            List<VanishingPoint> level = ViewCheck.directions(ViewCheck.onHorizon(meeting, best.horizonMm()));
            if (level.size() != 1 || best.turn() != 0) {
                throw new Refusal(
                        "camera",
                        "where the viewing direction meets the sheet is not known, as lines do not run away to one point of the"
                                + " horizon: state camera.principal-point"
                                + (level.size() > 1 ? ", with focal and turn" : ""));
            }
            view = new View(
                    best.focalMm(),
                    new SheetPoint(level.get(0).at().x(), best.horizonMm()),
                    best.eyeHeightM(),
                    0);
            error = Math.min(
                    level.get(0).yErrorMm(),
                    heights.map(FittedHeights::horizonErrorMm).orElse(Double.POSITIVE_INFINITY));
        }
        Optional<Contradiction> wrong = focalKnown ? ViewCheck.of(view, meeting) : Optional.empty();
        if (wrong.isPresent()) {
            throw new Refusal("camera", wrong.get().text());
        }
        return new SunView(view, focalKnown, error);
    }
}
