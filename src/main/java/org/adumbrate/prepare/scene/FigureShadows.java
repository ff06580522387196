package org.adumbrate.prepare.scene;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.figure.outline.FigureOutline;
import org.adumbrate.figure.shadow.Casting;
import org.adumbrate.figure.shadow.FigureShadow;
import org.adumbrate.figure.shadow.HeldShadow;
import org.adumbrate.figure.shadow.Receiver;
import org.adumbrate.figure.shadow.SliceSolid;
import org.adumbrate.figure.shadow.StandingSolid;
import org.adumbrate.figure.shadow.SunlitFigures;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.perspective.SunDirection;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.prepare.passes.FigureLight;
import org.adumbrate.raster.LightRows;
import org.adumbrate.sheetfile.Sheet;

/**
 * The shadows of a sheet's figures: on everything that a depth pass shows, or each on its own floor.
 *
 * @param content by what they are known: the view, the sun, the figures, and what their shadows fall on
 * @param lit the figures in the sun
 */
record FigureShadows(List<Object> content, SunlitFigures lit) implements FigureLight {
    private static final int THREADS = Runtime.getRuntime().availableProcessors();

    /** @param sheet for where the floors end, if it says that */
    static FigureShadows of(Scene scene, SunDirection sun, List<StandingItem> figures, Sheet sheet, Run run)
            throws IOException {
        Optional<FloorFaces> faces =
                scene.depth().isPresent() ? Optional.empty() : Optional.of(FloorFaces.of(sheet, scene, run));
        Map<Receiver.Floor, List<StandingSolid>> byFloor = new LinkedHashMap<>();
        List<StandingSolid> all = new ArrayList<>();
        List<Object> standing = new ArrayList<>();
        for (StandingItem item : figures) {
            StandingSolid solid = solid(item, run);
            all.add(solid);
            faces.ifPresent(seen -> byFloor.computeIfAbsent(seen.under(item), floor -> new ArrayList<>())
                    .add(solid));
            standing.add(
                    List.of(item.outline(), item.figure().spot(), item.figure().stance(), item.floor()));
        }
        List<Object> receivers = new ArrayList<>();
        List<Casting> castings = new ArrayList<>();
        if (scene.depth().isPresent()) {
            receivers.add(List.of(scene.depthContent(), scene.files().content()));
            castings.add(new Casting(surfaces(scene, run), all));
        } else {
            byFloor.forEach((floor, solids) -> {
                receivers.add(floor);
                castings.add(new Casting(floor, solids));
            });
        }
        return new FigureShadows(
                List.of(scene.view(), sun, receivers, standing), lit(scene, sun, receivers, castings, run));
    }

    /** Begins with the figures that stood in the same place before: those that stand there still, in the same sun, are ready. */
    private static SunlitFigures lit(
            Scene scene, SunDirection sun, List<Object> receivers, List<Casting> castings, Run run) throws IOException {
        List<Object> place = List.of(scene.view(), receivers);
        Optional<SunlitFigures> before = run.find(Part.FIGURE_LIGHT, SunlitFigures.class, place);
        SunlitFigures lit = before.isPresent()
                ? before.get().with(sun, castings, run::step)
                : SunlitFigures.of(scene.view(), sun, castings, run::step);
        run.keep(Part.FIGURE_LIGHT, SunlitFigures.class, place, lit);
        return lit;
    }

    private static Receiver surfaces(Scene scene, Run run) throws IOException {
        return run.of(
                Part.RECEIVERS,
                Receiver.class,
                List.of(scene.depthContent(), scene.files().content()),
                () -> new Receiver.Surfaces(scene.depth().orElseThrow().map(), scene.edges()));
    }

    private static StandingSolid solid(StandingItem item, Run run) throws IOException {
        FigureOutline outline = item.figure().outline();
        double stature = item.figure().stance().statureM();
        SliceSolid solid = run.of(
                Part.SOLIDS,
                SliceSolid.class,
                List.of(item.outline(), stature),
                () -> SliceSolid.of(outline.body(), outline.height(), stature));
        return new StandingSolid(
                item.figure().spot().model().orElseThrow(),
                item.figure().stance().turn(),
                item.figure().stance().mirrored(),
                solid);
    }

    @Override
    public LightRows on(Canvas canvas) {
        return lit.on(canvas);
    }

    @Override
    public boolean isNearlyHeld(Canvas canvas, Run run) {
        return run.find(Part.FIGURE_LIGHT, HeldShadow.class, List.of(canvas))
                .filter(held -> held.isNear(lit.on(canvas)))
                .isPresent();
    }

    @Override
    public LightRows held(Canvas canvas, Run run) throws IOException {
        FigureShadow shadow = lit.on(canvas);
        Optional<HeldShadow> before = run.find(Part.FIGURE_LIGHT, HeldShadow.class, List.of(canvas));
        HeldShadow held = before.isPresent()
                ? before.get().with(shadow, THREADS, run::step)
                : HeldShadow.of(shadow, canvas, THREADS, run::step);
        run.keep(Part.FIGURE_LIGHT, HeldShadow.class, List.of(canvas), held);
        return held;
    }
}
