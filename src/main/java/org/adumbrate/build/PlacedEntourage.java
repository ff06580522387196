package org.adumbrate.build;

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
import org.adumbrate.figure.outline.FigureOutline;
import org.adumbrate.figure.planting.Flock;
import org.adumbrate.figure.planting.FlockRule;
import org.adumbrate.figure.planting.PlantingRule;
import org.adumbrate.figure.planting.Scatter;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
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

    PlacedEntourage(SheetFile file, Scene scene) {
        this.file = file;
        this.sheet = file.sheet();
        this.scene = scene;
        this.outlines = new Outlines(file);
    }

    /**
     * The people, in the order of the sheet file.
     *
     * @throws SheetFileFault if an outline or a floor is not known, or a floor is not seen where a foot is
     */
    List<Standing> figures() throws IOException {
        List<Standing> standing = new ArrayList<>();
        for (int k = 0; k < sheet.figures().size(); k++) {
            Figure asked = sheet.figures().get(k);
            String key = "figures[" + k + "]";
            FigureOutline outline = outlines.of(asked.outline(), key + ".outline");
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
            double stature =
                    asked.stature().map(Metres::m).orElse(outline.nominalM().orElse(USUAL_STATURE_M));
            Stance stance = new Stance(stature, asked.turn().radians(), asked.mirrored());
            standing.add(new Standing(
                    DrawingOrder.FIGURES,
                    floor,
                    new PlacedFigure(outline, spot, stance),
                    asked.behind(),
                    asked.look().over(sheet.entourage())));
        }
        return standing;
    }

    /** The plants of all beds. */
    List<Standing> plants() throws IOException, Refusal {
        List<Standing> standing = new ArrayList<>();
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
            List<FigureOutline> shown = outlines(asked.outlines(), key);
            if (asked.height().isEmpty()
                    && shown.stream().anyMatch(outline -> outline.nominalM().isEmpty())) {
                throw fault(key, "'" + key + "' needs 'height': one of its outlines does not say how tall it is");
            }
            for (PlacedFigure plant : Scatter.plants(
                    shown,
                    scene.regions().get(asked.region()),
                    scene.view(),
                    scene.elevations().get(floor),
                    rule)) {
                standing.add(new Standing(
                        entry.getKey(),
                        floor,
                        plant,
                        asked.behind(),
                        asked.look().over(sheet.entourage())));
            }
        }
        return standing;
    }

    /** The birds of a flock, the farthest first. */
    List<Region<SheetPoint>> birds(String name) throws IOException {
        Birds asked = sheet.birds().get(name);
        FlockRule rule = new FlockRule(
                asked.count(),
                asked.wingspan().m(),
                asked.distance().nearest().m(),
                asked.distance().farthest().m(),
                asked.seed());
        return Flock.birds(
                outlines(asked.outlines(), "birds." + name),
                scene.regions().get(asked.region()),
                scene.view().focalMm(),
                rule);
    }

    private List<FigureOutline> outlines(List<Outline> asked, String key) throws IOException {
        List<FigureOutline> read = new ArrayList<>();
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
