package org.adumbrate.figure.shadow;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.PixelBox;
import org.adumbrate.perspective.View;

/**
 * One figure that casts a shadow.
 *
 * @param silhouette how it hides the sun
 * @param foot where it stands, in the sun's frame
 * @param shapes where on the canvas its shadow may be seen
 * @param top the first row of them
 * @param bottom the row after the last
 */
record Caster(SunSilhouette silhouette, SunView.Place foot, List<ScreenShape> shapes, int top, int bottom) {
    /** A figure's shadow on the grid of a canvas; none if nothing of it reaches the window. */
    static Optional<Caster> of(SunFigure figure, View view, double leastDepth, Canvas canvas) {
        PixelBox window = canvas.window();
        List<ScreenShape> shapes = new ArrayList<>();
        int top = Integer.MAX_VALUE;
        int bottom = Integer.MIN_VALUE;
        for (List<ModelPoint> body : figure.bodies()) {
            Optional<ScreenShape> shape = ScreenShape.of(body, view, leastDepth, canvas.toPixels());
            if (shape.isPresent()) {
                shapes.add(shape.get());
                top = Math.min(top, shape.get().top());
                bottom = Math.max(bottom, shape.get().bottom());
            }
        }
        double left = CastShadows.pieceAt(window.left());
        double right = CastShadows.pieceAt(window.right() - 1) + (double) CastShadows.PIECE;
        boolean reaches = top < window.bottom()
                && bottom > window.top()
                && shapes.stream().anyMatch(shape -> shape.right() >= left && shape.left() <= right);
        return reaches
                ? Optional.of(new Caster(figure.silhouette(), figure.foot(), shapes, top, bottom))
                : Optional.empty();
    }

    /** The columns that its shadow may touch in a row, if there are any. */
    Optional<RowReach> reach(int row) {
        if (row < top || row >= bottom) {
            return Optional.empty();
        }
        double from = Double.POSITIVE_INFINITY;
        double to = Double.NEGATIVE_INFINITY;
        for (ScreenShape shape : shapes) {
            from = Math.min(from, shape.leftIn(row));
            to = Math.max(to, shape.rightIn(row));
        }
        return from <= to ? Optional.of(new RowReach(this, from, to)) : Optional.empty();
    }
}
