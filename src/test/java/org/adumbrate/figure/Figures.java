package org.adumbrate.figure;

import java.util.OptionalDouble;
import org.adumbrate.figure.outline.FigureOutline;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.perspective.View;

/** Simple figures for tests. */
final class Figures {
    /** Two metres high, of which a metre is 10 units. */
    static final double HEIGHT = 20;

    private Figures() {}

    /** A board that reaches from one x to another, both in metres, and is two metres high. */
    static FigureOutline board(double left, double right) {
        return outline(Region.rectangle(Space.PAGE, 10 * left, -HEIGHT, 10 * right, 0));
    }

    static FigureOutline outline(Region<PagePoint> body) {
        return new FigureOutline("board", body, HEIGHT, OptionalDouble.empty());
    }

    static PlacedFigure on(View view, FigureOutline outline, SheetPoint foot, double turnDeg, boolean mirrored) {
        return new PlacedFigure(
                outline, Spot.on(view, foot, 0).orElseThrow(), new Stance(2, Math.toRadians(turnDeg), mirrored));
    }
}
