package org.adumbrate.prepare.scene;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.adumbrate.drawing.DrawingOrder;
import org.adumbrate.fault.Refusal;
import org.adumbrate.figure.PlacedFigure;
import org.adumbrate.figure.Spot;
import org.adumbrate.figure.Stance;
import org.adumbrate.figure.VisibleFigure;
import org.adumbrate.figure.outline.FigureOutline;
import org.adumbrate.figure.planting.Flock;
import org.adumbrate.figure.planting.FlockRule;
import org.adumbrate.figure.planting.PlantingRule;
import org.adumbrate.figure.planting.Scatter;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.prepare.lines.KnownRegion;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.sheetfile.Birds;
import org.adumbrate.sheetfile.Figure;
import org.adumbrate.sheetfile.Metres;
import org.adumbrate.sheetfile.Outline;
import org.adumbrate.sheetfile.Planting;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.reading.SheetFile;

/** Places the figures, the planting and the birds of a sheet in its scene. */
final class PlacedEntourage {
    /** How tall a person is where neither the sheet file nor the outline says it; common practice. */
    private static final double USUAL_STATURE_M = 1.70;

    private final SheetFile file;
    private final Sheet sheet;
    private final Scene scene;
    private final Outlines outlines;
    private final Run run;

    PlacedEntourage(SheetFile file, Scene scene, Run run) {
        this.file = file;
        this.sheet = file.sheet();
        this.scene = scene;
        this.outlines = new Outlines(file, run);
        this.run = run;
    }

    /**
     * The people, in the order of the sheet file.
     *
     * @throws SheetFileFault if an outline or a floor is not known, or a floor is not seen where a foot is
     */
    List<StandingItem> figures() throws IOException {
        List<StandingItem> standing = new ArrayList<>();
        for (int k = 0; k < sheet.figures().size(); k++) {
            Figure asked = sheet.figures().get(k);
            String key = "figures[" + k + "]";
            KnownOutline outline = outlines.of(asked.outline(), key + ".outline");
            String floor = floor(asked.floor(), key);
            Spot spot = Spot.on(scene.view(), asked.foot(), scene.elevations().get(floor))
                    .orElseThrow(() -> fault(
                            key + ".foot",
                            "no point of floor '" + floor + "' is seen there: "
                                    + (scene.view().eyeHeightM()
                                                    > scene.elevations().get(floor)
                                            ? "it lies above"
                                            : "it lies below")
                                    + " the horizon at y = "
                                    + Math.round(10 * scene.view().horizonMm()) / 10.0 + " mm"));
            double stature = asked.stature()
                    .map(Metres::m)
                    .orElse(outline.shape().nominalM().orElse(USUAL_STATURE_M));
            Stance stance = new Stance(stature, asked.turn().radians(), asked.mirrored());
            standing.add(new StandingItem(
                    key,
                    DrawingOrder.FIGURES,
                    floor,
                    outline.content(),
                    new PlacedFigure(outline.shape(), spot, stance),
                    asked.behind(),
                    asked.look().over(sheet.entourage())));
        }
        return standing;
    }

    /** The plants of all beds. */
    List<StandingItem> plants() throws IOException, Refusal {
        List<StandingItem> standing = new ArrayList<>();
        for (Map.Entry<String, Planting> entry : sheet.planting().entrySet()) {
            Planting asked = entry.getValue();
            String key = "planting." + entry.getKey();
            String floor = floor(asked.floor(), key);
            PlantingRule rule = new PlantingRule(
                    asked.spacing().m(),
                    asked.height().isPresent()
                            ? OptionalDouble.of(asked.height().get().m())
                            : OptionalDouble.empty(),
                    Math.min(0.99, asked.variation().share()),
                    asked.seed());
            List<KnownOutline> shown = outlines(asked.outlines(), key);
            if (asked.height().isEmpty()
                    && shown.stream()
                            .anyMatch(outline -> outline.shape().nominalM().isEmpty())) {
                throw fault(key, "'" + key + "' needs 'height': one of its outlines does not say how tall it is");
            }
            for (PlacedFigure plant : scattered(shown, asked, floor, rule)) {
                standing.add(new StandingItem(
                        key,
                        entry.getKey(),
                        floor,
                        content(shown, plant.outline()),
                        plant,
                        asked.behind(),
                        asked.look().over(sheet.entourage())));
            }
        }
        return standing;
    }

    /** Plants where they stand, or why there are none. */
    private record Scattered(List<PlacedFigure> plants, Optional<String> refusal) {}

    private List<PlacedFigure> scattered(List<KnownOutline> shown, Planting asked, String floor, PlantingRule rule)
            throws IOException, Refusal {
        double elevation = scene.elevations().get(floor);
        KnownRegion region = scene.regions().get(asked.region());
        Scattered scattered = run.of(
                Part.PLANTS,
                Scattered.class,
                List.of(contents(shown), region.content(), scene.view(), elevation, rule),
                () -> {
                    try {
                        return new Scattered(
                                Scatter.plants(shapes(shown), region.region(), scene.view(), elevation, rule),
                                Optional.empty());
                    } catch (Refusal tooMany) {
                        return new Scattered(List.of(), Optional.of(tooMany.getMessage()));
                    }
                });
        if (scattered.refusal().isPresent()) {
            throw new Refusal(scattered.refusal().get());
        }
        return scattered.plants();
    }

    private static List<FigureOutline> shapes(List<KnownOutline> outlines) {
        return outlines.stream().map(KnownOutline::shape).toList();
    }

    private static List<Object> contents(List<KnownOutline> outlines) {
        return List.copyOf(outlines.stream().map(KnownOutline::content).toList());
    }

    private static List<Object> content(List<KnownOutline> outlines, FigureOutline shape) {
        return outlines.stream()
                .filter(known -> known.shape().equals(shape))
                .findFirst()
                .map(KnownOutline::content)
                .orElseThrow();
    }

    /** Birds as they are seen, the farthest first. */
    private record Flight(List<Seen> birds) {}

    /** The birds of a flock, the farthest first, each without what the cut hides of it. */
    List<Seen> birds(String name, Region<SheetPoint> page) throws IOException {
        Birds asked = sheet.birds().get(name);
        FlockRule rule = new FlockRule(
                asked.count(),
                asked.wingspan().m(),
                asked.distance().nearest().m(),
                asked.distance().farthest().m(),
                asked.seed());
        List<KnownOutline> shown = outlines(asked.outlines(), "birds." + name);
        KnownRegion region = scene.regions().get(asked.region());
        double focal = scene.view().focalMm();
        return run.of(
                        Part.BIRDS,
                        Flight.class,
                        List.of(
                                contents(shown),
                                region.content(),
                                focal,
                                rule,
                                scene.cut().content(),
                                scene.sheet()),
                        () -> new Flight(Flock.birds(shapes(shown), region.region(), focal, rule).stream()
                                .map(bird -> Seen.of(
                                        VisibleFigure.of(
                                                bird, List.of(scene.cut().region())),
                                        page))
                                .toList()))
                .birds();
    }

    private List<KnownOutline> outlines(List<Outline> asked, String key) throws IOException {
        List<KnownOutline> read = new ArrayList<>();
        for (int k = 0; k < asked.size(); k++) {
            read.add(outlines.of(asked.get(k), key + ".outlines[" + k + "]"));
        }
        return read;
    }

    private String floor(Optional<String> asked, String key) throws SheetFileFault {
        if (asked.isPresent() && scene.elevations().containsKey(asked.get())) {
            return asked.get();
        }
        if (asked.isPresent()) {
            throw new SheetFileFault(List.of(file.unknown(
                    key + ".floor", "floor", asked.get(), scene.elevations().keySet())));
        }
        if (scene.elevations().size() != 1) {
            throw fault(
                    key,
                    "'" + key + "' needs 'floor': one of "
                            + String.join(", ", scene.elevations().keySet()));
        }
        return scene.elevations().keySet().iterator().next();
    }

    private SheetFileFault fault(String keyPath, String text) {
        return new SheetFileFault(List.of(file.complaint(keyPath, text)));
    }
}
