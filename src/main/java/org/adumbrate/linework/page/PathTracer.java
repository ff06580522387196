package org.adumbrate.linework.page;

import java.awt.geom.AffineTransform;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.clip.TooIntricateException;

/**
 * Draws a path in a file's own coordinates and yields it in mm of the page. Moves that nothing follows leave no trace, and
 * a piece after a closing step begins a run of its own.
 */
public final class PathTracer {
    /** Far more than any drawing has in one path, and little enough to be held several times over. */
    private static final int MOST_POINTS = 5_000_000;

    private final AffineTransform toPage = new AffineTransform();
    private VectorPath.Builder<PagePoint> path = VectorPath.in(Space.PAGE);
    private int points;
    private boolean placed;
    private boolean drawing;
    private double startX;
    private double startY;
    private double x;
    private double y;

    /** Sets the map from the file's coordinates to mm of the page for what follows. */
    public void drawThrough(AffineTransform fileToPage) {
        toPage.setTransform(fileToPage);
    }

    /** Where the pen stands, in the file's coordinates. */
    public double x() {
        return x;
    }

    /** Where the pen stands, in the file's coordinates. */
    public double y() {
        return y;
    }

    public void moveTo(double toX, double toY) {
        placed = true;
        drawing = false;
        startX = x = toX;
        startY = y = toY;
    }

    /** A line without a move before it is taken as a move, as viewers do. */
    public void lineTo(double toX, double toY) {
        if (!placed) {
            moveTo(toX, toY);
            return;
        }
        begin(1);
        path.lineTo(pageX(toX, toY), pageY(toX, toY));
        x = toX;
        y = toY;
    }

    public void curveTo(double x1, double y1, double x2, double y2, double toX, double toY) {
        begin(3);
        path.curveTo(pageX(x1, y1), pageY(x1, y1), pageX(x2, y2), pageY(x2, y2), pageX(toX, toY), pageY(toX, toY));
        x = toX;
        y = toY;
    }

    /** A parabola, which as a cubic has its control points two thirds of the way to its own. */
    public void quadTo(double x1, double y1, double toX, double toY) {
        curveTo(
                x + 2 * (x1 - x) / 3,
                y + 2 * (y1 - y) / 3,
                toX + 2 * (x1 - toX) / 3,
                toY + 2 * (y1 - toY) / 3,
                toX,
                toY);
    }

    public void close() {
        if (placed) {
            begin(1);
            path.close();
            moveTo(startX, startY);
        }
    }

    public void rectangle(double left, double top, double width, double height) {
        moveTo(left, top);
        lineTo(left + width, top);
        lineTo(left + width, top + height);
        lineTo(left, top + height);
        close();
    }

    /** The path drawn since the last call; the next starts empty. */
    public VectorPath<PagePoint> take() {
        VectorPath<PagePoint> taken = path.build();
        path = VectorPath.in(Space.PAGE);
        points = 0;
        placed = false;
        drawing = false;
        x = y = 0;
        return taken;
    }

    /** Begins a run if none is begun, and counts the points to come. */
    private void begin(int more) {
        points += more;
        if (points > MOST_POINTS) {
            throw new TooIntricateException("has a path of more than " + MOST_POINTS + " points");
        }
        if (!drawing) {
            path.moveTo(pageX(x, y), pageY(x, y));
            drawing = true;
        }
    }

    private double pageX(double fromX, double fromY) {
        return toPage.getScaleX() * fromX + toPage.getShearX() * fromY + toPage.getTranslateX();
    }

    private double pageY(double fromX, double fromY) {
        return toPage.getShearY() * fromX + toPage.getScaleY() * fromY + toPage.getTranslateY();
    }
}
