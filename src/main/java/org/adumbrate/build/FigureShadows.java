package org.adumbrate.build;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.figure.outline.FigureOutline;
import org.adumbrate.figure.shadow.Casting;
import org.adumbrate.figure.shadow.Receiver;
import org.adumbrate.figure.shadow.SliceSolid;
import org.adumbrate.figure.shadow.StandingSolid;
import org.adumbrate.figure.shadow.SunlitFigures;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.perspective.SunDirection;
import org.adumbrate.raster.LightRows;
import org.adumbrate.sheetfile.Floor;

/** The shadows of a sheet's figures: on everything that a depth pass shows, or each on its own floor. */
final class FigureShadows implements FigureLight {
    private final SunlitFigures lit;

    /** @param floors for where the floors end, if the sheet file says that */
    FigureShadows(Scene scene, SunDirection sun, List<Standing> figures, Map<String, Floor> floors) {
        Map<String, List<StandingSolid>> byFloor = solids(figures);
        List<Casting> castings = new ArrayList<>();
        if (scene.depth().isPresent()) {
            List<StandingSolid> all =
                    byFloor.values().stream().flatMap(List::stream).toList();
            castings.add(new Casting(new Receiver.Surfaces(scene.depth().get(), scene.edges()), all));
        } else {
            byFloor.forEach((floor, solids) -> castings.add(new Casting(
                    new Receiver.Floor(scene.elevations().get(floor), outline(floors.get(floor))), solids)));
        }
        this.lit = SunlitFigures.of(scene.view(), sun, castings);
    }

    private static Map<String, List<StandingSolid>> solids(List<Standing> figures) {
        record Cast(FigureOutline outline, double stature) {}
        Map<Cast, SliceSolid> cut = new HashMap<>();
        Map<String, List<StandingSolid>> byFloor = new LinkedHashMap<>();
        for (Standing item : figures) {
            FigureOutline outline = item.figure().outline();
            double stature = item.figure().stance().statureM();
            SliceSolid solid = cut.computeIfAbsent(
                    new Cast(outline, stature), key -> SliceSolid.of(outline.body(), outline.height(), stature));
            byFloor.computeIfAbsent(item.floor(), floor -> new ArrayList<>())
                    .add(new StandingSolid(
                            item.figure().spot().model().orElseThrow(),
                            item.figure().stance().turn(),
                            item.figure().stance().mirrored(),
                            solid));
        }
        return byFloor;
    }

    private static Optional<Region<SheetPoint>> outline(Floor floor) {
        return floor == null || floor.outline().isEmpty()
                ? Optional.empty()
                : Optional.of(SheetRegions.ofPolygons(floor.outline()));
    }

    @Override
    public LightRows on(Canvas canvas) {
        return lit.on(canvas);
    }
}
