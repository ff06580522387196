package org.adumbrate.prepare.scene;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.adumbrate.drawing.DrawingOrder;
import org.adumbrate.drawing.Layer;
import org.adumbrate.drawing.Mark;
import org.adumbrate.drawing.Pen;
import org.adumbrate.fault.Refusal;
import org.adumbrate.figure.PlacedFigure;
import org.adumbrate.figure.VisibleFigure;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.prepare.memory.Run;
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
public record Entourage(List<Layer> layers, List<StandingItem> figures, List<Finding> findings) {
    private static final Comparator<StandingItem> BACK_TO_FRONT =
            Comparator.comparing(StandingItem::figure, PlacedFigure.BACK_TO_FRONT);

    static final Entourage NOBODY = new Entourage(List.of(), List.of(), List.of());

    /** @throws SheetFileFault if the depth pass is noise */
    static Entourage of(SheetFile asked, Scene scene, Run run) throws IOException, Refusal {
        PlacedEntourage placed = new PlacedEntourage(asked, scene, run);
        List<StandingItem> figures = placed.figures();
        Drawing drawing = new Drawing();
        for (String flock : asked.sheet().birds().keySet()) {
            Look look =
                    asked.sheet().birds().get(flock).look().over(asked.sheet().entourage());
            placed.birds(flock, page(scene)).forEach(bird -> drawing.add("birds." + flock, flock, bird, look));
        }
        List<StandingItem> ordered = Stream.concat(placed.plants().stream(), figures.stream())
                .sorted(BACK_TO_FRONT)
                .toList();
        List<StandingItem> unseen = drawn(ordered, new SeenItems(scene, page(scene), run), drawing, asked);
        return new Entourage(drawing.layers(), figures, unseen(unseen, scene));
    }

    /** Draws items, and gives those of which nothing is seen. */
    private static List<StandingItem> drawn(
            List<StandingItem> items, SeenItems seeing, Drawing drawing, SheetFile asked) throws IOException {
        try {
            List<StandingItem> unseen = new ArrayList<>();
            List<Seen> seen = seeing.of(items);
            for (int k = 0; k < items.size(); k++) {
                StandingItem item = items.get(k);
                if (!drawing.add(item.key(), item.layer(), seen.get(k), item.look())) {
                    unseen.add(item);
                }
            }
            return unseen;
        } catch (TooManyCornersException e) {
            Path file = asked.sheet().passes().depth().orElseThrow().file();
            String text = file + ": what stands before a figure " + e.getMessage() + "; render the depth without noise";
            SheetFileFault fault = new SheetFileFault(List.of(asked.complaint("passes.depth.file", text)));
            fault.initCause(e);
            throw fault;
        }
    }

    private static Region<SheetPoint> page(Scene scene) {
        SheetSize sheet = scene.sheet();
        return Region.rectangle(Space.SHEET, 0, 0, sheet.widthMm(), sheet.heightMm());
    }

    private static List<Finding> unseen(List<StandingItem> items, Scene scene) {
        return items.stream()
                .filter(item -> item.layer().equals(DrawingOrder.FIGURES))
                .map(item -> new Finding(
                        Finding.Severity.WARNING,
                        item.key(),
                        "figures: nothing is seen of '%s' at [%s, %s]; %s"
                                .formatted(
                                        item.figure().outline().name(),
                                        item.figure().spot().foot().x(),
                                        item.figure().spot().foot().y(),
                                        isWithinCut(item, scene)
                                                ? "the cut covers it: move it, or if a room is there, look whether the cut's"
                                                        + " outline is whole around that room"
                                                : "it is hidden or off the sheet"),
                        List.of(item.figure().spot().foot())))
                .toList();
    }

    private static boolean isWithinCut(StandingItem item, Scene scene) {
        SheetPoint foot = item.figure().spot().foot();
        double halfMm = item.figure().stance().statureM() * item.figure().spot().mmPerMetre() / 2;
        return scene.cut().region().contains(new SheetPoint(foot.x(), foot.y() - halfMm));
    }

    /** Collects marks, and begins a layer anew whenever the name changes. */
    private static final class Drawing {
        private final List<Layer> layers = new ArrayList<>();
        private List<Mark> marks = new ArrayList<>();
        private String name = "";

        /** False if nothing is seen of it. */
        boolean add(String key, String layer, Seen seen, Look look) {
            if (!seen.onPage()) {
                return false;
            }
            VisibleFigure visible = seen.figure();
            if (!layer.equals(name)) {
                end();
                name = layer;
            }
            if (look.opacity().share() > 0) {
                marks.add(new Mark.Area(key, look.fill(), look.opacity().share(), visible.area()));
            }
            if (look.outline().mm() > 0) {
                marks.add(new Mark.Lines(key, Pen.round(look.outline().mm(), look.ink()), List.of(visible.outline())));
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
