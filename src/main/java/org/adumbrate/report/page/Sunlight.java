package org.adumbrate.report.page;

import java.util.Optional;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.perspective.SunDirection;
import org.adumbrate.perspective.View;

/**
 * The sun of a sheet.
 *
 * @param direction toward it
 * @param northDeg north, clockwise from the model's +Y, seen from above
 * @param source how it is known, in words
 * @param view how the sheet shows the model
 * @param upright one upright whose shadow is constructed; nothing where no shadow is seen
 */
public record Sunlight(SunDirection direction, double northDeg, String source, View view, Optional<Upright> upright) {
    /**
     * An upright on a level floor.
     *
     * @param name what it is
     * @param foot where it stands
     * @param head its upper end
     */
    public record Upright(String name, SheetPoint foot, SheetPoint head) {}
}
