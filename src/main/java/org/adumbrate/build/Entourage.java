package org.adumbrate.build;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.adumbrate.drawing.DrawingOrder;
import org.adumbrate.drawing.Layer;
import org.adumbrate.drawing.Mark;
import org.adumbrate.drawing.Pen;
import org.adumbrate.fault.Refusal;
import org.adumbrate.figure.Hiding;
import org.adumbrate.figure.PlacedFigure;
import org.adumbrate.figure.VisibleFigure;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.raster.trace.TooManyCornersException;
import org.adumbrate.sheetfile.Look;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.reading.SheetFile;

/**
 * Birds, planting and figures as they are drawn, the farthest first, each without what something hides of it.
 *
 * @param layers in drawing order; one name may occur several times, where what is on it stands before and behind others
 * @param figures the people, who cast shadows
 * @param findings figures of which nothing is seen
 */
record Entourage(List<Layer> layers, List<Standing> figures, List<Finding> findings) {
    private static final Comparator<Standing> BACK_TO_FRONT =
            Comparator.comparing(Standing::figure, PlacedFigure.BACK_TO_FRONT);

    static final Entourage NOBODY = new Entourage(List.of(), List.of(), List.of());

    /** @throws SheetFileFault if the depth pass is noise */
    static Entourage of(SheetFile asked, Scene scene) throws IOException, Refusal {
        PlacedEntourage placed = new PlacedEntourage(asked, scene);
        List<Standing> figures = placed.figures();
        Drawing drawing = new Drawing(scene);
        for (String flock : asked.sheet().birds().keySet()) {
            Look look =
                    asked.sheet().birds().get(flock).look().over(asked.sheet().entourage());
            placed.birds(flock).forEach(bird -> drawing.add(flock, bird, List.of(scene.cut()), look));
        }
        List<Standing> ordered = Stream.concat(placed.plants().stream(), figures.stream())
                .sorted(BACK_TO_FRONT)
                .toList();
        List<Standing> unseen = drawn(ordered, drawing, asked);
        return new Entourage(drawing.layers(), figures, unseen(unseen));
    }

    /** Draws items, and gives those of which nothing is seen. */
    private static List<Standing> drawn(List<Standing> items, Drawing drawing, SheetFile asked) throws SheetFileFault {
        try {
            return items.stream().filter(item -> !drawing.add(item)).toList();
        } catch (TooManyCornersException e) {
            Path file = asked.sheet().passes().depth().orElseThrow().file();
            String text = file + ": what stands before a figure " + e.getMessage() + "; render the depth without noise";
            SheetFileFault fault = new SheetFileFault(List.of(asked.complaint("passes.depth.file", text)));
            fault.initCause(e);
            throw fault;
        }
    }

    private static List<Finding> unseen(List<Standing> items) {
        return items.stream()
                .filter(item -> item.layer().equals(DrawingOrder.FIGURES))
                .map(item -> new Finding(
                        Finding.Severity.WARNING,
                        "figures: nothing is seen of '%s' at [%s, %s]; it is hidden or off the sheet"
                                .formatted(
                                        item.figure().outline().name(),
                                        item.figure().spot().foot().x(),
                                        item.figure().spot().foot().y()),
                        List.of(item.figure().spot().foot())))
                .toList();
    }

    /** Collects marks, and begins a layer anew whenever the name changes. */
    private static final class Drawing {
        private final Scene scene;
        private final Region<SheetPoint> page;
        private final List<Layer> layers = new ArrayList<>();
        private List<Mark> marks = new ArrayList<>();
        private String name = "";

        Drawing(Scene scene) {
            this.scene = scene;
            SheetSize sheet = scene.sheet();
            this.page = Region.rectangle(Space.SHEET, 0, 0, sheet.widthMm(), sheet.heightMm());
        }

        /** False if nothing is seen of it. */
        boolean add(Standing item) {
            Region<SheetPoint> body = item.figure().body(scene.view());
            List<Region<SheetPoint>> hiding = new ArrayList<>();
            if (scene.depth().isPresent()) {
                hiding.add(new Hiding(scene.depth().get(), scene.view()).before(item.figure(), body));
            }
            Map<String, Region<SheetPoint>> regions = scene.regions();
            item.behind().forEach(region -> hiding.add(regions.get(region)));
            hiding.add(scene.cut());
            return add(item.layer(), body, hiding, item.look());
        }

        boolean add(String layer, Region<SheetPoint> body, List<Region<SheetPoint>> hiding, Look look) {
            VisibleFigure visible = VisibleFigure.of(body, hiding);
            if (visible.area().within(page).isEmpty()) {
                return false;
            }
            if (!layer.equals(name)) {
                end();
                name = layer;
            }
            if (look.opacity().share() > 0) {
                marks.add(new Mark.Area(look.fill(), look.opacity().share(), visible.area()));
            }
            if (look.outline().mm() > 0) {
                marks.add(new Mark.Lines(Pen.round(look.outline().mm(), look.ink()), List.of(visible.outline())));
            }
            return true;
        }

        List<Layer> layers() {
            end();
            return layers;
        }

        private void end() {
            if (!marks.isEmpty()) {
                layers.add(Layer.of(name, marks).within(DrawingOrder.ENTOURAGE));
                marks = new ArrayList<>();
            }
        }
    }
}
