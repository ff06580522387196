package org.adumbrate.proof.scene;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.perspective.FittedFloor;
import org.adumbrate.perspective.FittedHeights;
import org.adumbrate.perspective.HeightLine;
import org.adumbrate.prepare.PreparedSheet;
import org.adumbrate.prepare.lines.KnownRegion;
import org.adumbrate.prepare.lines.SheetRegions;
import org.adumbrate.prepare.passes.PreparedPass;
import org.adumbrate.prepare.scene.SheetCamera;
import org.adumbrate.prepare.scene.StandingItem;
import org.adumbrate.registration.Placement;
import org.adumbrate.sheetfile.Figure;
import org.adumbrate.sheetfile.Outline;
import org.adumbrate.sheetfile.Sheet;

/** The things of a sheet that a page may point at, each with its key path and where it is, in mm. */
final class Things {
    private final PreparedSheet prepared;
    private final Sheet sheet;
    private final Sketch sketch;
    private final SheetPoints points;
    private final List<Map<String, Object>> things = new ArrayList<>();

    private Things(PreparedSheet prepared, Sketch sketch, SheetPoints points) {
        this.prepared = prepared;
        this.sheet = prepared.asked().sheet();
        this.sketch = sketch;
        this.points = points;
    }

    /** @param points those of the text */
    static List<Map<String, Object>> of(PreparedSheet prepared, Sketch sketch, SheetPoints points) {
        Things things = new Things(prepared, sketch, points);
        things.passes();
        things.floors();
        things.regions();
        things.veils();
        things.cut();
        things.heights();
        things.entourage();
        things.sun();
        things.camera();
        return things.things;
    }

    private Map<String, Object> thing(String key, String kind, String label, Optional<Extent> box) {
        Map<String, Object> thing = new LinkedHashMap<>();
        thing.put("key", key);
        thing.put("kind", kind);
        thing.put("label", label);
        box.ifPresent(extent -> thing.put("box", SheetPoints.json(extent)));
        return thing;
    }

    /** Adds what has points in the text, or is drawn; what is neither is nowhere. */
    private void add(String key, String kind, String label, Optional<Extent> drawn) {
        add(key, kind, label, drawn, Optional.empty());
    }

    private void add(String key, String kind, String label, Optional<Extent> drawn, Optional<String> outline) {
        SheetPoints own = points.below(key);
        Optional<Extent> box = drawn.isPresent() || own.isEmpty() ? drawn : Optional.of(own.extent());
        if (box.isPresent()) {
            Map<String, Object> thing = thing(key, kind, label, box);
            if (!own.isEmpty()) {
                own.addTo(thing);
            }
            outline.ifPresent(data -> thing.put("d", data));
            things.add(thing);
        }
    }

    private boolean hasFaces(String key) {
        return !points.below(key + ".faces").isEmpty();
    }

    /** Adds what is not drawn itself: of faces with their outline, as points in them do not tell it. */
    private void add(String key, String kind, String label, Function<SheetRegions, Map<String, KnownRegion>> known) {
        Optional<Region<SheetPoint>> faces = prepared.drawing()
                .filter(drawing -> hasFaces(key))
                .map(drawing -> known.apply(drawing.regions()).get(label))
                .map(KnownRegion::region);
        add(key, kind, label, faces.flatMap(Region::extent), faces.map(region -> PathData.of(region.outline())));
    }

    private void passes() {
        for (PreparedPass pass : prepared.passes().prepared()) {
            pass(pass.request().key(), extent(pass.placement()));
        }
        prepared.drawing()
                .flatMap(drawing -> drawing.scene().depth())
                .ifPresent(depth -> pass("passes.depth", extent(depth.placement())));
    }

    /** With two corners of its frame, be it stated or found: to move one is to state it. */
    private void pass(String key, Extent frame) {
        Map<String, Object> thing = thing(key, "pass", key.substring(key.indexOf('.') + 1), Optional.of(frame));
        thing.put(
                "points",
                List.of(
                        SheetPoints.json(new SheetPoint(frame.left(), frame.top())),
                        SheetPoints.json(new SheetPoint(frame.right(), frame.bottom()))));
        thing.put("pointKeys", List.of(key + ".frame"));
        things.add(thing);
    }

    static Extent extent(Placement placement) {
        PixelSize size = placement.pass();
        Extent box = null;
        for (int corner = 0; corner < 4; corner++) {
            SheetPoint at = placement.passToSheet().at(corner % 2 * size.width(), corner / 2 * size.height());
            Extent one = new Extent(at.x(), at.y(), at.x(), at.y());
            box = box == null ? one : box.with(one);
        }
        return box;
    }

    private void floors() {
        sheet.floors().keySet().forEach(name -> add("floors." + name, "floor", name, SheetRegions::floors));
    }

    private void regions() {
        sheet.regions().keySet().forEach(name -> add("regions." + name, "region", name, SheetRegions::byName));
    }

    private void veils() {
        for (String name : sheet.veils().keySet()) {
            String key = "veils." + name;
            Optional<String> outline = Optional.of(key).filter(this::hasFaces).map(sketch::shape);
            add(key, "veil", name, sketch.extent(key), outline);
        }
    }

    private void cut() {
        add("cut", "cut", "cut", sketch.extent("cut"));
    }

    private void heights() {
        Optional<FittedHeights> fitted =
                prepared.drawing().flatMap(drawing -> drawing.scene().camera().heights());
        for (FittedFloor floor : fitted.map(FittedHeights::floors).orElse(List.of())) {
            floor.lines().forEach(line -> height(line, floor.name()));
            floor.outliers().forEach(line -> height(line, ""));
        }
    }

    private void height(HeightLine line, String floor) {
        Map<String, Object> thing = thing("heights", "height", floor, Optional.of(box(line.foot(), line.head())));
        thing.put("foot", SheetPoints.json(line.foot()));
        thing.put("head", SheetPoints.json(line.head()));
        if (!floor.isEmpty()) {
            thing.put("floor", floor);
        }
        things.add(thing);
    }

    private static Extent box(SheetPoint foot, SheetPoint head) {
        return new Extent(
                Math.min(foot.x(), head.x()),
                Math.min(foot.y(), head.y()),
                Math.max(foot.x(), head.x()),
                Math.max(foot.y(), head.y()));
    }

    private void entourage() {
        sheet.birds().keySet().forEach(name -> add("birds." + name, "bird", name, sketch.extent("birds." + name)));
        sheet.planting()
                .keySet()
                .forEach(name -> add("planting." + name, "plant", name, sketch.extent("planting." + name)));
        Map<String, StandingItem> placed = new LinkedHashMap<>();
        prepared.drawing()
                .ifPresent(
                        drawing -> drawing.scene().entourage().figures().forEach(item -> placed.put(item.key(), item)));
        for (int k = 0; k < sheet.figures().size(); k++) {
            String key = "figures[" + k + "]";
            things.add(figure(key, sheet.figures().get(k), Optional.ofNullable(placed.get(key))));
        }
    }

    /** A person that cannot be placed, too, has a foot to be moved by. */
    private Map<String, Object> figure(String key, Figure asked, Optional<StandingItem> placed) {
        String label = asked.outline() instanceof Outline.Shipped shipped
                ? shipped.name()
                : ((Outline.Drawn) asked.outline()).file().getFileName().toString();
        Optional<Extent> box = sketch.extent(key)
                .or(() -> placed.map(
                        item -> box(item.figure().spot().foot(), item.figure().head())))
                .or(() -> Optional.of(box(asked.foot(), asked.foot())));
        Map<String, Object> thing = thing(key, "figure", label, box);
        thing.put("foot", SheetPoints.json(asked.foot()));
        placed.ifPresent(item -> {
            thing.put("head", SheetPoints.json(item.figure().head()));
            thing.put("floor", item.floor());
            thing.put("statureM", item.figure().stance().statureM());
        });
        return thing;
    }

    private void sun() {
        Map<String, SheetPoints> samples = new LinkedHashMap<>();
        for (String key : points.below("sun").byKey().keySet()) {
            String sample = key.substring(0, key.lastIndexOf('.'));
            samples.computeIfAbsent(sample, points::below);
        }
        samples.forEach((key, own) -> {
            Map<String, Object> thing = thing(key, "sun", "shadow sample", Optional.of(own.extent()));
            own.addTo(thing);
            things.add(thing);
        });
    }

    /** The principal point, be it stated or fitted: to move it is to state it. */
    private void camera() {
        prepared.drawing()
                .map(drawing -> drawing.scene().camera())
                .flatMap(SheetCamera::best)
                .ifPresent(view -> {
                    SheetPoint at = view.principal();
                    String key = "camera.principal-point";
                    Map<String, Object> thing = thing(key, "point", "principal point", Optional.of(box(at, at)));
                    new SheetPoints(Map.of(key, at)).addTo(thing);
                    things.add(thing);
                });
    }
}
