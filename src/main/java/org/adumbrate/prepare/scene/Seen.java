package org.adumbrate.prepare.scene;

import org.adumbrate.figure.VisibleFigure;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;

/**
 * What is seen of a figure, a plant or a bird.
 *
 * @param figure without what hides it
 * @param onPage whether any of it lies on the sheet
 */
record Seen(VisibleFigure figure, boolean onPage) {
    static Seen of(VisibleFigure figure, Region<SheetPoint> page) {
        return new Seen(figure, !figure.area().within(page).isEmpty());
    }
}
