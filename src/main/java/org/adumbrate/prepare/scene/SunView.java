package org.adumbrate.prepare.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.perspective.Contradiction;
import org.adumbrate.perspective.FittedCamera;
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
 * @param others the same view as it may be as well: a standard deviation off
 */
public record SunView(View view, boolean focalKnown, List<View> others) {
    /** A stated focal length that differs from a normal lens by less is the one that {@code start} supposes, rounded, in mm. */
    private static final double NORMAL_LENS_MM = 0.5;

    /** A principal point that is stated as near to the sheet's middle is the one that {@code start} supposes, in mm. */
    private static final double MIDDLE_MM = 0.06;

    /** A supposed principal point may lie so far from the middle of the sheet, as a share of its width. */
    private static final double CENTRED = 0.1;

    /** Copies the list. */
    public SunView {
        others = List.copyOf(others);
    }

    /**
     * The view.
     *
     * @throws Refusal if the principal point is neither stated nor shown by the lines, or they contradict the camera; says what to state
     */
    static SunView of(
            Sheet sheet,
            SheetSize size,
            FittedCamera camera,
            Optional<FittedHeights> heights,
            List<VanishingPoint> meeting)
            throws Refusal {
        View best = camera.best().orElseThrow();
        boolean focalKnown = camera.view().isPresent()
                && Math.abs(best.focalMm() - Math.hypot(size.widthMm(), size.heightMm())) > NORMAL_LENS_MM;
        List<View> others = new ArrayList<>();
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
            double x = level.get(0).at().x();
            double error = Math.min(
                    level.get(0).yErrorMm(),
                    heights.map(FittedHeights::horizonErrorMm).orElse(Double.POSITIVE_INFINITY));
            view = new View(best.focalMm(), new SheetPoint(x, best.horizonMm()), best.eyeHeightM(), 0);
            others.add(new View(best.focalMm(), new SheetPoint(x, best.horizonMm() + error), best.eyeHeightM(), 0));
        } else if (best.turn() != 0 && Math.abs(best.principal().x() - size.widthMm() / 2) < MIDDLE_MM) {
            others.addAll(centredElsewhere(best, CENTRED * size.widthMm()));
        }
        Optional<Contradiction> wrong = focalKnown ? ViewCheck.of(view, meeting) : Optional.empty();
        if (wrong.isPresent()) {
            throw new Refusal("camera", wrong.get().text());
        }
        return new SunView(view, focalKnown, others);
    }

    /** Two-point views in which the edges meet at the same two points, and whose principal point lies to either side. */
    private static List<View> centredElsewhere(View view, double byMm) {
        double along = view.principal().x() - view.focalMm() * Math.tan(view.turn());
        double across = view.principal().x() + view.focalMm() / Math.tan(view.turn());
        List<View> views = new ArrayList<>();
        for (double x :
                new double[] {view.principal().x() - byMm, view.principal().x() + byMm}) {
            double square = (x - along) * (across - x);
            if (square > 0) {
                double focal = Math.sqrt(square);
                views.add(new View(
                        focal, new SheetPoint(x, view.horizonMm()), view.eyeHeightM(), Math.atan((x - along) / focal)));
            }
        }
        return views;
    }
}
