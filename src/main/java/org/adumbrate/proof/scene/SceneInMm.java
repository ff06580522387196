package org.adumbrate.proof.scene;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.figure.Spot;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.json.Json;
import org.adumbrate.perspective.View;
import org.adumbrate.prepare.PreparedSheet;
import org.adumbrate.prepare.scene.SheetCamera;
import org.adumbrate.prepare.scene.StandingItem;
import org.adumbrate.sheetfile.edit.SheetText;

/**
 * What lies where on one state of a sheet. Never changed.
 *
 * @param prepared the sheet
 * @param sketch all that is drawn
 * @param points the points that stand in its text
 */
public record SceneInMm(PreparedSheet prepared, Sketch sketch, SheetPoints points) {
    /** How tall a person is where nothing says it; as figures are placed. */
    private static final double USUAL_STATURE_M = 1.70;

    /**
     * Looks at a sheet.
     *
     * @param text of which it was made ready
     * @param before the scene before, of which much may be the same
     */
    public static SceneInMm of(PreparedSheet prepared, Path file, String text, Optional<SceneInMm> before)
            throws IOException {
        return new SceneInMm(
                prepared,
                Sketch.of(prepared.layers(), before.map(SceneInMm::sketch).orElse(Sketch.NOTHING)),
                SheetPoints.of(new SheetText(file, text)));
    }

    private Optional<SheetCamera> camera() {
        return prepared.drawing().map(drawing -> drawing.scene().camera());
    }

    /** All things, the horizon and the floors. */
    public Map<String, Object> json(long version) {
        Map<String, Object> json = Json.object(
                "version", version,
                "sheet", paper(prepared.size()),
                "things", Things.of(prepared, sketch, points));
        camera().flatMap(SheetCamera::best).ifPresent(view -> json.put("horizonMm", view.horizonMm()));
        json.put(
                "floors",
                elevations().entrySet().stream()
                        .map(floor -> Json.object("name", floor.getKey(), "elevationM", floor.getValue()))
                        .toList());
        return json;
    }

    /** How large a sheet is. */
    public static Map<String, Object> paper(SheetSize size) {
        return Json.object("widthMm", size.widthMm(), "heightMm", size.heightMm());
    }

    private Map<String, Double> elevations() {
        return camera().map(SheetCamera::elevations).orElse(Map.of());
    }

    /** The keys of what is seen within reach of a point, the topmost first, and then of the passes that lie there. */
    public List<String> at(SheetPoint point, double reach) {
        List<String> keys = new ArrayList<>(sketch.at(point, reach));
        prepared.passes().prepared().stream()
                .filter(pass -> holds(Things.extent(pass.placement()), point))
                .forEach(pass -> keys.add(pass.request().key()));
        return keys;
    }

    private static boolean holds(Extent box, SheetPoint point) {
        return point.x() >= box.left()
                && point.x() <= box.right()
                && point.y() >= box.top()
                && point.y() <= box.bottom();
    }

    /** To what a point snaps. */
    public Map<String, Object> snap(SheetPoint point, double reach) {
        return Snapping.of(sketch, point, reach);
    }

    /** SVG path data of what a key draws; of faces their outline, of a pass its frame, of what is drawn by points these. */
    public String shape(String key) {
        String drawn = sketch.shape(key);
        if (!drawn.isEmpty()) {
            return drawn;
        }
        Optional<String> faces = Things.of(prepared, sketch, points).stream()
                .filter(thing -> thing.get("key").equals(key) && thing.containsKey("d"))
                .map(thing -> (String) thing.get("d"))
                .findFirst();
        if (faces.isPresent()) {
            return faces.get();
        }
        Optional<String> frame = prepared.passes().prepared().stream()
                .filter(pass -> pass.request().key().equals(key))
                .map(pass -> frame(Things.extent(pass.placement())))
                .findFirst();
        return frame.orElseGet(() -> polygons(key));
    }

    private static String frame(Extent box) {
        PathData data = new PathData();
        data.moveTo(box.left(), box.top());
        data.lineTo(box.right(), box.top());
        data.lineTo(box.right(), box.bottom());
        data.lineTo(box.left(), box.bottom());
        data.close();
        return data.text();
    }

    /** The points below a key, those of one list as a polygon. */
    private String polygons(String key) {
        Map<String, List<SheetPoint>> lists = new LinkedHashMap<>();
        points.below(key).byKey().forEach((path, point) -> lists.computeIfAbsent(
                        path.substring(0, Math.max(path.lastIndexOf('['), 0)), list -> new ArrayList<>())
                .add(point));
        PathData data = new PathData();
        for (List<SheetPoint> polygon : lists.values()) {
            for (int k = 0; k < polygon.size(); k++) {
                if (k == 0) {
                    data.moveTo(polygon.get(k).x(), polygon.get(k).y());
                } else {
                    data.lineTo(polygon.get(k).x(), polygon.get(k).y());
                }
            }
            data.close();
        }
        return data.text();
    }

    /**
     * The floors that are seen at a point, with the size that a person has on each.
     *
     * @param key of the person, such as {@code figures[3]}; of nobody that is placed, one of usual stature
     */
    public List<Map<String, Object>> floors(SheetPoint foot, String key) {
        Optional<View> view = camera().flatMap(SheetCamera::best);
        double stature = prepared.drawing().stream()
                .flatMap(drawing -> drawing.scene().entourage().figures().stream())
                .filter(item -> item.key().equals(key))
                .mapToDouble(SceneInMm::stature)
                .findFirst()
                .orElse(USUAL_STATURE_M);
        List<Map<String, Object>> floors = new ArrayList<>();
        elevations().forEach((name, elevation) -> view.flatMap(seen -> Spot.on(seen, foot, elevation))
                .ifPresent(spot -> {
                    double height = stature * spot.mmPerMetre();
                    floors.add(Json.object(
                            "name", name,
                            "head", SheetPoints.json(new SheetPoint(foot.x(), foot.y() - height)),
                            "heightMm", SheetPoints.rounded(height)));
                }));
        return floors;
    }

    private static double stature(StandingItem item) {
        return item.figure().stance().statureM();
    }
}
