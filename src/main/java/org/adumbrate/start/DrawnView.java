package org.adumbrate.start;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.perspective.FittedFloor;
import org.adumbrate.perspective.FittedHeights;
import org.adumbrate.perspective.HeightFit;
import org.adumbrate.perspective.HeightLine;
import org.adumbrate.perspective.HeightLines;
import org.adumbrate.perspective.Stated;
import org.adumbrate.perspective.VanishingSearch;

/**
 * How the drawing is seen, as far as its lines tell.
 *
 * @param lines the height lines
 * @param fitted horizon and floors
 * @param central where lines that run away meet, if at one point of the horizon
 * @param trouble why nothing could be fitted, where there are height lines
 */
record DrawnView(
        List<HeightLine> lines,
        Optional<FittedHeights> fitted,
        Optional<SheetPoint> central,
        Optional<String> trouble) {
    /** How tall height lines are supposed to be, in metres: a drawing does not tell; common practice for people. */
    static final double SUPPOSED_M = 1.65;

    static final DrawnView NOTHING = new DrawnView(List.of(), Optional.empty(), Optional.empty(), Optional.empty());

    /** A point this near to the horizon of the height lines lies on it, in mm or in standard errors. */
    private static final double ON_HORIZON_MM = 1;

    private static final double ON_HORIZON_ERRORS = 3;

    /**
     * Fits horizon and floors to height lines, and then again with the horizon that the lines of the drawing tell better.
     *
     * @param drawn the lines of the base
     */
    static DrawnView of(
            SheetRoles.ColorIn heights, Affine<PagePoint, SheetPoint> toSheet, List<VectorPath<SheetPoint>> drawn) {
        try {
            List<HeightLine> lines = HeightLines.of(heights.sheet().strokes(), heights.color(), toSheet);
            FittedHeights fitted = HeightFit.of(lines, SUPPOSED_M, Stated.NOTHING, VanishingSearch.of(drawn));
            Optional<SheetPoint> central =
                    CentralPoint.of(drawn, fitted.horizonMm()).filter(point -> isOn(point, fitted));
            FittedHeights settled = central.isPresent()
                    ? HeightFit.of(
                            lines, SUPPOSED_M, Stated.horizon(central.get().y()))
                    : fitted;
            return new DrawnView(lines, Optional.of(settled), central, Optional.empty());
        } catch (Refusal reason) {
            return new DrawnView(List.of(), Optional.empty(), Optional.empty(), Optional.of(reason.getMessage()));
        }
    }

    private static boolean isOn(SheetPoint point, FittedHeights fitted) {
        return Math.abs(point.y() - fitted.horizonMm())
                <= Math.max(ON_HORIZON_MM, ON_HORIZON_ERRORS * fitted.horizonErrorMm());
    }

    /** The floors' elevations in metres, the lowest at 0, to whole centimetres. */
    Map<String, Double> elevations() {
        Map<String, Double> elevations = new LinkedHashMap<>();
        fitted.ifPresent(told -> {
            double lowest = told.floors().get(0).eyeHeightM();
            for (FittedFloor floor : told.floors()) {
                elevations.put(floor.name(), Math.round(100 * (lowest - floor.eyeHeightM())) / 100.0);
            }
        });
        return elevations;
    }
}
