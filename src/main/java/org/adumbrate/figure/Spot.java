package org.adumbrate.figure;

import java.util.Optional;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.perspective.View;

/**
 * Where something stands.
 *
 * @param foot its foot point on the sheet
 * @param mmPerMetre how long a metre parallel to the picture is there, in mm of the sheet, above zero
 * @param model its foot point in the model; nothing where the view is not known
 */
public record Spot(SheetPoint foot, double mmPerMetre, Optional<ModelPoint> model) {
    /** @throws IllegalArgumentException if the scale is not above zero */
    public Spot {
        if (!(mmPerMetre > 0 && Double.isFinite(mmPerMetre))) {
            throw new IllegalArgumentException("a spot needs a scale above zero, not " + mmPerMetre);
        }
    }

    /** A spot on a level of a view; nothing if the level is not seen at that place. */
    public static Optional<Spot> on(View view, SheetPoint foot, double elevationM) {
        return view.onLevel(foot, elevationM)
                .map(model -> new Spot(foot, view.scaleAt(view.depth(model)), Optional.of(model)));
    }

    /** A spot of which only the scale is known, as height lines alone tell it. */
    public static Spot scaled(SheetPoint foot, double mmPerMetre) {
        return new Spot(foot, mmPerMetre, Optional.empty());
    }
}
