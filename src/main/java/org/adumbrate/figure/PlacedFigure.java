package org.adumbrate.figure;

import java.util.Comparator;
import org.adumbrate.figure.outline.FigureOutline;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.perspective.View;

/**
 * A figure or a plant that stands on the sheet.
 *
 * @param outline what shows it
 * @param spot where it stands
 * @param stance how it stands there
 */
public record PlacedFigure(FigureOutline outline, Spot spot, Stance stance) {
    /**
     * The order in which figures are drawn: what is drawn smaller stands farther back. That holds on every floor, below the
     * eye and above it. At one depth what stands lower on the sheet comes later.
     */
    public static final Comparator<PlacedFigure> BACK_TO_FRONT = Comparator.comparingDouble(
                    (PlacedFigure figure) -> figure.spot().mmPerMetre())
            .thenComparingDouble(figure -> figure.spot().foot().y())
            .thenComparingDouble(figure -> figure.spot().foot().x());

    /** Turned by less than this, in radians, a figure is drawn as its outline is. */
    private static final double UNTURNED = 1e-6;

    /** Corners that tell of less than this, in mm, are left out: a quarter of a pixel at 600 dpi. */
    static final double PLAIN_MM = 0.01;

    /** The point on the sheet where its stature ends above its foot. */
    public SheetPoint head() {
        return new SheetPoint(spot.foot().x(), spot.foot().y() - stance.statureM() * spot.mmPerMetre());
    }

    /**
     * What it covers on the sheet. One that does not face the picture is foreshortened, and its feet stand where they then are
     * on the floor; seen from the side it is as wide as a body is deep, and never a line.
     *
     * @param view the view that its spot is in
     * @throws IllegalArgumentException if its place in the model is not known
     */
    public Region<SheetPoint> body(View view) {
        double turn = stance.turn() + view.turn();
        if (isUnturned(turn)) {
            return facing();
        }
        return TurnedBody.of(this, TurnedEye.in(view, this, turn));
    }

    /** What it covers on the sheet where the view is not known: a turn foreshortens it alike at all depths. */
    public Region<SheetPoint> body() {
        return isUnturned(stance.turn()) ? facing() : TurnedBody.of(this, TurnedEye.distant(this));
    }

    private static boolean isUnturned(double turn) {
        return Math.cos(turn) > 0 && Math.abs(Math.sin(turn)) < UNTURNED;
    }

    private Region<SheetPoint> facing() {
        double scale = spot.mmPerMetre() * metresPerUnit();
        return outline.body()
                .transform(Affine.scalingThenShift(
                        Space.PAGE,
                        Space.SHEET,
                        stance.mirrored() ? -scale : scale,
                        scale,
                        spot.foot().x(),
                        spot.foot().y()))
                .simplified(PLAIN_MM);
    }

    /** What a unit of the outline stands for, in metres. */
    double metresPerUnit() {
        return stance.statureM() / outline.height();
    }
}
