package org.adumbrate.proof.scene;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.edit.SheetText;
import org.adumbrate.sheetfile.edit.SheetValue;

/**
 * The points in mm of the sheet that stand in a text, whatever they mean there: each row of two numbers that are counted in mm.
 *
 * @param byKey in the order of the text
 */
record SheetPoints(Map<String, SheetPoint> byKey) {
    static SheetPoints of(SheetText text) throws SheetFileFault {
        Map<String, SheetValue> values = new LinkedHashMap<>();
        text.values().stream()
                .filter(value -> value.span().isPresent())
                .forEach(value -> values.put(value.key(), value));
        Map<String, SheetPoint> points = new LinkedHashMap<>();
        for (SheetValue value : values.values()) {
            if (value.allowed().type().equals("row") && !values.containsKey(value.key() + "[2]")) {
                Double x = coordinate(values.get(value.key() + "[0]"));
                Double y = coordinate(values.get(value.key() + "[1]"));
                if (x != null && y != null) {
                    points.put(value.key(), new SheetPoint(x, y));
                }
            }
        }
        return new SheetPoints(points);
    }

    private static Double coordinate(SheetValue value) {
        if (value == null
                || !value.allowed().units().stream()
                        .findFirst()
                        .filter("mm"::equals)
                        .isPresent()) {
            return null;
        }
        try {
            double number = Double.parseDouble(value.value().strip());
            return Double.isFinite(number) ? number : null;
        } catch (NumberFormatException withUnit) {
            return null;
        }
    }

    /** Those below a key path. */
    SheetPoints below(String key) {
        Map<String, SheetPoint> points = new LinkedHashMap<>();
        byKey.forEach((path, point) -> {
            if (path.startsWith(key + ".") || path.startsWith(key + "[")) {
                points.put(path, point);
            }
        });
        return new SheetPoints(points);
    }

    boolean isEmpty() {
        return byKey.isEmpty();
    }

    /** The box around them. */
    Extent extent() {
        Extent box = null;
        for (SheetPoint point : byKey.values()) {
            Extent one = new Extent(point.x(), point.y(), point.x(), point.y());
            box = box == null ? one : box.with(one);
        }
        return box;
    }

    /** Adds what the page hears of them. */
    void addTo(Map<String, Object> thing) {
        thing.put("points", byKey.values().stream().map(SheetPoints::json).toList());
        thing.put("pointKeys", List.copyOf(byKey.keySet()));
    }

    static List<Double> json(SheetPoint point) {
        return List.of(rounded(point.x()), rounded(point.y()));
    }

    static List<Double> json(Extent box) {
        return List.of(rounded(box.left()), rounded(box.top()), rounded(box.right()), rounded(box.bottom()));
    }

    /** To a thousandth of a millimetre. */
    static double rounded(double mm) {
        return Math.round(1000 * mm) / 1000.0;
    }
}
