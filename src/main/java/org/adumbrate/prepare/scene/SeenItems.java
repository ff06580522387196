package org.adumbrate.prepare.scene;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.adumbrate.figure.Hiding;
import org.adumbrate.figure.VisibleFigure;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.raster.OrderedStrips;

/** Works out what is seen of figures and plants: each is a part of its own, and several are worked out at once. */
final class SeenItems {
    private final Scene scene;
    private final Region<SheetPoint> page;
    private final Run run;

    /** @param page the sheet */
    SeenItems(Scene scene, Region<SheetPoint> page, Run run) {
        this.scene = scene;
        this.page = page;
        this.run = run;
    }

    /**
     * What is seen of each item, in their order.
     *
     * @throws org.adumbrate.raster.trace.TooManyCornersException if the depth pass is noise
     */
    List<Seen> of(List<StandingItem> items) throws IOException {
        Seen[] seen = new Seen[items.size()];
        OrderedStrips.<SeenItems, Seen>run(
                seen.length,
                Runtime.getRuntime().availableProcessors(),
                () -> this,
                (same, k) -> of(items.get(k)),
                (k, one) -> seen[k] = one);
        return Arrays.asList(seen);
    }

    private Seen of(StandingItem item) throws IOException {
        List<Object> behind = List.copyOf(item.behind().stream()
                .map(region -> scene.regions().get(region).content())
                .toList());
        return run.of(
                Part.BODIES,
                Seen.class,
                List.of(
                        item.outline(),
                        item.figure().spot(),
                        item.figure().stance(),
                        scene.view(),
                        scene.depthContent(),
                        behind,
                        scene.cut().content(),
                        scene.sheet()),
                () -> Seen.of(visible(item), page));
    }

    private VisibleFigure visible(StandingItem item) {
        Region<SheetPoint> body = item.figure().body(scene.view());
        List<Region<SheetPoint>> hiding = new ArrayList<>();
        if (scene.depth().isPresent()) {
            hiding.add(new Hiding(scene.depth().get().map(), scene.view()).before(item.figure(), body));
        }
        item.behind().forEach(region -> hiding.add(scene.regions().get(region).region()));
        hiding.add(scene.cut().region());
        return VisibleFigure.of(body, hiding);
    }
}
