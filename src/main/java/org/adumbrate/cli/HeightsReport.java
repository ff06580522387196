package org.adumbrate.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.json.Json;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.perspective.FittedFloor;
import org.adumbrate.perspective.FittedHeights;
import org.adumbrate.perspective.FloorDoubts;
import org.adumbrate.perspective.HeightLine;

/**
 * Horizon, floors and a figure, as people and machines read them.
 *
 * @param sheet the line sheet
 * @param fitted what its height lines tell
 * @param figure the figure asked for
 */
record HeightsReport(LineSheet sheet, FittedHeights fitted, Optional<FigureHeight> figure) {
    /**
     * A figure.
     *
     * @param floor on which it stands
     * @param statureM how tall it is, in metres
     * @param foot where it stands
     * @param head where its head is seen
     */
    record FigureHeight(FittedFloor floor, double statureM, SheetPoint foot, SheetPoint head) {}

    void print(PrintWriter out) {
        out.printf(
                Locale.ROOT,
                "%s: horizon at %.2f mm, give or take %.2f mm%n",
                sheet.file(),
                fitted.horizonMm(),
                fitted.horizonErrorMm());
        for (FittedFloor floor : fitted.floors()) {
            out.printf(
                    Locale.ROOT,
                    "  %-12s eye %7.3f m above it, give or take %.3f m; %s%n",
                    floor.name(),
                    floor.eyeHeightM(),
                    floor.eyeHeightErrorM(),
                    lines(floor));
        }
        for (HeightLine stray : fitted.outliers()) {
            out.printf(
                    Locale.ROOT,
                    "  left out: the line at (%.1f, %.1f), %.1f mm tall, fits no floor%n",
                    stray.foot().x(),
                    stray.foot().y(),
                    stray.heightMm());
        }
        FloorDoubts.of(fitted).forEach(doubt -> out.printf("  doubtful: %s%n", doubt.text()));
        figure.ifPresent(one -> out.printf(
                Locale.ROOT,
                "  a figure of %s m at (%.2f, %.2f) on %s is %.2f mm tall; its head is at y %.2f%n",
                Numbers.plain(one.statureM()),
                one.foot().x(),
                one.foot().y(),
                one.floor().name(),
                one.foot().y() - one.head().y(),
                one.head().y()));
    }

    private static String lines(FittedFloor floor) {
        int count = floor.lines().size();
        return count == 0
                ? "no lines, by its elevation"
                : String.format(
                        Locale.ROOT, "%d line%s, off by %.2f mm rms", count, count == 1 ? "" : "s", floor.rmsMm());
    }

    Map<String, Object> json() {
        Map<String, Object> result = Json.object(
                "sheet", Results.sheet(sheet.file(), sheet.page()),
                "horizonMm", fitted.horizonMm(),
                "horizonErrorMm", fitted.horizonErrorMm(),
                "floors", fitted.floors().stream().map(HeightsReport::json).toList(),
                "outliersMm",
                        fitted.outliers().stream().map(HeightsReport::json).toList(),
                "doubts",
                        FloorDoubts.of(fitted).stream()
                                .map(FloorDoubts.Doubt::text)
                                .toList());
        figure.ifPresent(one -> {
            result.put("floor", one.floor().name());
            result.put("footMm", json(one.foot()));
            result.put("headMm", json(one.head()));
        });
        return result;
    }

    private static Map<String, Object> json(FittedFloor floor) {
        return Json.object(
                "name", floor.name(),
                "eyeHeightM", floor.eyeHeightM(),
                "eyeHeightErrorM", floor.eyeHeightErrorM(),
                "lines", floor.lines().size(),
                "rmsMm", floor.rmsMm(),
                "outliers", floor.outliers().size());
    }

    private static List<List<Double>> json(HeightLine line) {
        return List.of(json(line.foot()), json(line.head()));
    }

    private static List<Double> json(SheetPoint point) {
        return List.of(point.x(), point.y());
    }
}
