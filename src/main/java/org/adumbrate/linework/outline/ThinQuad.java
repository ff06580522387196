package org.adumbrate.linework.outline;

import java.util.Optional;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;

/** A shape of four corners read as a line from the middle of one side to the middle of the opposite one. */
final class ThinQuad {
    /** Ends may be cut off at a slant, as where lines meet in a mitre: by this many widths at most. */
    private static final double MOST_SLANT = 2;

    private final Rim rim;
    private final VectorPath<PagePoint> outline;

    private ThinQuad(Rim rim, VectorPath<PagePoint> outline) {
        this.rim = rim;
        this.outline = outline;
    }

    static Optional<OutlinedLine> of(Rim rim, VectorPath<PagePoint> outline) {
        ThinQuad quad = new ThinQuad(rim, outline);
        boolean longFirst = rim.edge(0) + rim.edge(2) >= rim.edge(1) + rim.edge(3);
        Optional<OutlinedLine> along = quad.along(longFirst ? 0 : 1, Optional.empty());
        if (along.isPresent() && !Widths.isLine(along.get().lengthMm())) {
            return along;
        }
        Optional<OutlinedLine> across = quad.along(longFirst ? 1 : 0, Optional.empty());
        return along.isEmpty() ? across : quad.along(longFirst ? 0 : 1, across);
    }

    /** The line along the side that begins at a corner and the one opposite to it. */
    private Optional<OutlinedLine> along(int side, Optional<OutlinedLine> across) {
        double x0 = (rim.x(side) + rim.x(side + 3)) / 2;
        double y0 = (rim.y(side) + rim.y(side + 3)) / 2;
        double x1 = (rim.x(side + 1) + rim.x(side + 2)) / 2;
        double y1 = (rim.y(side + 1) + rim.y(side + 2)) / 2;
        double length = Math.hypot(x1 - x0, y1 - y0);
        if (length == 0) {
            return Optional.empty();
        }
        double ux = (x1 - x0) / length;
        double uy = (y1 - y0) / length;
        double beginX = rim.x(side + 3) - rim.x(side);
        double beginY = rim.y(side + 3) - rim.y(side);
        double endX = rim.x(side + 2) - rim.x(side + 1);
        double endY = rim.y(side + 2) - rim.y(side + 1);
        double begin = ux * beginY - uy * beginX;
        double end = ux * endY - uy * endX;
        double width = Math.abs(begin + end) / 2;
        double slant = Math.max(Math.abs(ux * beginX + uy * beginY), Math.abs(ux * endX + uy * endY));
        boolean constant = Math.abs(begin - end) <= Widths.tolerance(width);
        if (!constant || !Widths.isLine(width) || slant > MOST_SLANT * width) {
            return Optional.empty();
        }
        VectorPath.Builder<PagePoint> middle = VectorPath.in(Space.PAGE);
        middle.moveTo(x0, y0);
        middle.lineTo(x1, y1);
        return Optional.of(new OutlinedLine(outline, middle.build(), length, width, LineCap.BUTT, across));
    }
}
