package org.adumbrate.report;

import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.perspective.VanishingPoints;
import org.adumbrate.perspective.View;
import org.adumbrate.prepare.lines.KnownDepth;
import org.adumbrate.prepare.passes.PreparedPass;
import org.adumbrate.prepare.scene.SheetScene;
import org.adumbrate.prepare.scene.StandingItem;
import org.adumbrate.registration.PassImage;
import org.adumbrate.underlay.PassRole;

/** Picks the figure whose shadow shows best how shadows are found. */
final class ShownShadow {
    /** A floor is seen where the depth is its own to within this share. */
    private static final double SAME_DEPTH = 0.01;

    /** The sun arrives where a shadow pass has this much light. */
    private static final float LIT = 0.7f;

    /** What a shadow counts that falls where the building's shadow hides it. */
    private static final double HIDDEN = 0.01;

    private final SheetScene scene;
    private final SheetSize sheet;
    private final View view;
    private final VanishingPoints points;
    private final Optional<Light> light;

    /** A shadow pass, and from the sheet to its pixels. */
    private record Light(PassImage image, Affine<SheetPoint, RasterPoint> toPixels) {
        boolean isLit(SheetPoint point) {
            int x = (int) Math.floor(toPixels.mapX(point.x(), point.y()) / image.reduction());
            int y = (int) Math.floor(toPixels.mapY(point.x(), point.y()) / image.reduction());
            boolean within = x >= 0
                    && y >= 0
                    && x < image.grey().size().width()
                    && y < image.grey().size().height();
            return within && image.grey().at(x, y) >= LIT;
        }
    }

    /** @param passes the printed passes, of which the sun shadow tells where the sun arrives */
    ShownShadow(SheetScene scene, SheetSize sheet, View view, VanishingPoints points, List<PreparedPass> passes)
            throws IOException {
        this.scene = scene;
        this.sheet = sheet;
        this.view = view;
        this.points = points;
        Optional<PreparedPass> shadow = passes.stream()
                .filter(pass -> pass.request().role() == PassRole.SHADOW)
                .findFirst();
        this.light = shadow.isPresent()
                ? Optional.of(new Light(
                        shadow.get().pixels().image(),
                        shadow.get().placement().passToSheet().inverse()))
                : Optional.empty();
    }

    /** The figure; nothing where no shadow ends on the sheet and on its figure's own floor. */
    Optional<StandingItem> best() {
        return scene.entourage().figures().stream()
                .filter(figure -> shown(figure) > 0)
                .max(Comparator.comparingDouble(this::shown));
    }

    /** The lesser of how tall the figure and how long its shadow are on the sheet. */
    private double shown(StandingItem standing) {
        SheetPoint foot = standing.figure().spot().foot();
        SheetPoint head = standing.figure().head();
        return points.shadowTip(foot, head)
                .filter(tip -> tip.x() > 0 && tip.x() < sheet.widthMm() && tip.y() > 0 && tip.y() < sheet.heightMm())
                .filter(tip -> isOnFloor(tip, standing.floor()))
                .map(tip -> Math.min(tip.distanceTo(foot), head.distanceTo(foot)) * (isLit(foot, tip) ? 1 : HIDDEN))
                .orElse(0.0);
    }

    /** True if the depth pass shows the floor there, or there is none to tell. */
    private boolean isOnFloor(SheetPoint point, String floor) {
        Optional<KnownDepth> map = scene.map();
        double elevation = scene.camera().elevations().get(floor);
        return map.isEmpty()
                || view.onLevel(point, elevation)
                        .filter(at -> Math.abs(map.get().map().depthAt(point) / view.depth(at) - 1) < SAME_DEPTH)
                        .isPresent();
    }

    private boolean isLit(SheetPoint foot, SheetPoint tip) {
        SheetPoint middle = new SheetPoint((foot.x() + tip.x()) / 2, (foot.y() + tip.y()) / 2);
        return light.isEmpty() || (light.get().isLit(middle) && light.get().isLit(tip));
    }
}
