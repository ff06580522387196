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
import org.adumbrate.perspective.TwoPoints;
import org.adumbrate.perspective.VanishingPoint;
import org.adumbrate.perspective.VanishingSearch;
import org.adumbrate.perspective.ViewCheck;

/**
 * How the drawing is seen, as far as its lines tell.
 *
 * @param lines the height lines that stand on floors
 * @param fitted horizon and floors
 * @param central where lines that run away meet, if at one point of the horizon
 * @param twoPoints where two directions of level edges meet, the one worth most first; empty if there are no two
 * @param trouble why nothing could be fitted, where there are height lines
 */
record DrawnView(
        List<HeightLine> lines,
        Optional<FittedHeights> fitted,
        Optional<SheetPoint> central,
        List<VanishingPoint> twoPoints,
        Optional<String> trouble) {
    /** How tall height lines are supposed to be, in metres: a drawing does not tell; common practice for people. */
    static final double SUPPOSED_M = 1.65;

    static final DrawnView NOTHING =
            new DrawnView(List.of(), Optional.empty(), Optional.empty(), List.of(), Optional.empty());

    /**
     * Fits horizon and floors to height lines with the help of the points where lines of the drawing meet.
     *
     * @param drawn the lines of the base
     */
    static DrawnView of(
            SheetRoles.ColorIn heights, Affine<PagePoint, SheetPoint> toSheet, List<VectorPath<SheetPoint>> drawn) {
        try {
            List<HeightLine> lines = HeightLines.of(heights.sheet().strokes(), heights.color(), toSheet);
            List<VanishingPoint> meeting = VanishingSearch.of(drawn);
            FittedHeights fitted = HeightFit.of(lines, SUPPOSED_M, Stated.NOTHING, meeting);
            List<VanishingPoint> level = ViewCheck.directions(ViewCheck.onHorizon(meeting, fitted.horizonMm()));
            Optional<SheetPoint> central =
                    level.size() == 1 ? Optional.of(level.get(0).at()) : Optional.empty();
            // a line that stands on no floor may be hidden in part, and seem smaller and farther off than it is
            List<HeightLine> standing = fitted.floors().stream()
                    .flatMap(floor -> floor.lines().stream())
                    .toList();
            return new DrawnView(
                    standing, Optional.of(fitted), central, level.size() > 1 ? level : List.of(), Optional.empty());
        } catch (Refusal reason) {
            return new DrawnView(
                    List.of(), Optional.empty(), Optional.empty(), List.of(), Optional.of(reason.getMessage()));
        }
    }

    /** Turn and focal length, if edges in two directions meet at either side of a supposed principal point. */
    Optional<TwoPoints> twoPoints(double principalX) {
        return twoPoints.isEmpty() ? Optional.empty() : TwoPoints.of(principalX, twoPoints.get(0), twoPoints.get(1));
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
