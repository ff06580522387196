package org.adumbrate.perspective.shadows;

import java.util.Optional;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.perspective.SunDirection;
import org.adumbrate.perspective.SunSample;
import org.adumbrate.perspective.VanishingPoints;
import org.adumbrate.perspective.View;

/**
 * A sun written as the shadow of an upright on the sheet. It casts the same shadows on floors whatever the focal length is, so it
 * holds where a view is known but for that and angles are not.
 */
public final class ShownSample {
    private static final int PLACES = 12;
    private static final int HEIGHTS = 8;

    private ShownSample() {}

    /**
     * An upright and its shadow that lie on the sheet and are large on it.
     *
     * @return nothing if none lies on the sheet
     */
    public static Optional<SunSample> of(View view, SunDirection sun, SheetSize sheet) {
        VanishingPoints points = VanishingPoints.of(view, sun);
        SunSample best = null;
        double most = 0;
        for (int i = 1; i < PLACES; i++) {
            for (int j = 1; j < PLACES; j++) {
                double y = view.horizonMm() + (sheet.heightMm() - view.horizonMm()) * j / PLACES;
                SheetPoint foot = new SheetPoint(sheet.widthMm() * i / PLACES, y);
                for (int k = 1; k <= HEIGHTS; k++) {
                    SheetPoint head = new SheetPoint(foot.x(), y - sheet.heightMm() / 3 * k / HEIGHTS);
                    Optional<SheetPoint> tip = points.shadowTip(foot, head).filter(at -> isOn(sheet, at));
                    double size = tip.map(at -> size(view, foot, head, at)).orElse(0.0);
                    if (size > most && isOn(sheet, foot) && isOn(sheet, head)) {
                        most = size;
                        best = new SunSample(foot, head, tip.orElseThrow());
                    }
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** What is short, or near the horizon, cannot be written down or read exactly. */
    private static double size(View view, SheetPoint foot, SheetPoint head, SheetPoint tip) {
        double below = Math.min(foot.y(), tip.y()) - view.horizonMm();
        return Math.min(below, Math.min(foot.distanceTo(head), foot.distanceTo(tip)));
    }

    private static boolean isOn(SheetSize sheet, SheetPoint at) {
        return at.x() > 0 && at.y() > 0 && at.x() < sheet.widthMm() && at.y() < sheet.heightMm();
    }
}
