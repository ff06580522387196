package org.adumbrate.figure.planting;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.fault.Refusal;
import org.adumbrate.figure.PlacedFigure;
import org.adumbrate.figure.Spot;
import org.adumbrate.figure.Stance;
import org.adumbrate.figure.outline.FigureOutline;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.perspective.View;

/** Scatters plants over what is seen of a floor. */
public final class Scatter {
    /** A plant drawn lower than this is left out, in mm of the sheet. */
    private static final double LEAST_MM = 0.4;

    private Scatter() {}

    /**
     * A view that stands in for one whose focal length is not known: horizon and eye height are as measured, so that sizes are
     * right, and the focal length is the sheet's diagonal, as that of a normal lens, by which alone depths are told.
     *
     * @param horizonMm y of the horizon on the sheet
     * @param eyeHeightM height of the eye above elevation 0
     */
    public static View supposedView(SheetSize sheet, double horizonMm, double eyeHeightM) {
        double diagonal = Math.hypot(sheet.widthMm(), sheet.heightMm());
        return new View(diagonal, new SheetPoint(sheet.widthMm() / 2, horizonMm), eyeHeightM, 0);
    }

    /**
     * Plants with their feet in a region, facing the picture; each shows one of the outlines by chance, as drawn or mirrored.
     *
     * @param outlines at least one; where the rule tells no height, each with a nominal one
     * @param region where the feet are; of it, what shows the floor
     * @param elevationM of the floor
     * @return the plants in drawing order, back to front
     * @throws Refusal if there would be more plants than a drawing can show
     * @throws IllegalArgumentException if there is no outline, or one without a height
     */
    public static List<PlacedFigure> plants(
            List<FigureOutline> outlines, Region<SheetPoint> region, View view, double elevationM, PlantingRule rule)
            throws Refusal {
        double tallest = outlines.stream()
                .mapToDouble(outline -> height(outline, rule))
                .max()
                .orElseThrow(() -> new IllegalArgumentException("planting needs an outline"));
        double farthest = view.focalMm() * tallest / LEAST_MM;
        SplitMix random = new SplitMix(rule.seed());
        List<PlacedFigure> plants = new ArrayList<>();
        for (ModelPoint foot : new FloorScatter(region, view, elevationM, rule.spacingM(), farthest, random).points()) {
            FigureOutline outline = outlines.get(random.below(outlines.size()));
            double height = height(outline, rule) * (1 + rule.variation() * random.between(-1, 1));
            Stance stance = new Stance(height, -view.turn(), random.nextFlag());
            view.project(foot)
                    .flatMap(seen -> Spot.on(view, seen, elevationM))
                    .ifPresent(spot -> plants.add(new PlacedFigure(outline, spot, stance)));
        }
        plants.sort(PlacedFigure.BACK_TO_FRONT);
        return plants;
    }

    private static double height(FigureOutline outline, PlantingRule rule) {
        if (rule.heightM().isPresent()) {
            return rule.heightM().getAsDouble();
        }
        return outline.nominalM()
                .orElseThrow(() -> new IllegalArgumentException("no height is told for the outline " + outline.name()));
    }
}
