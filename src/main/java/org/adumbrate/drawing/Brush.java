package org.adumbrate.drawing;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;

/** A paint made ready for Java2D, with the rows of the sheet that each of its shapes can reach; in mm. */
final class Brush {
    /**
     * The least width of a line, in pixels. Widths are true, but a line much thinner than a pixel is too faint to be seen;
     * at half a pixel it still stands out against paper, and thin pens still look thinner than thick ones.
     */
    private static final double HAIRLINE_PX = 0.5;

    /** How far curves are straightened, in pixels: less than can be seen. */
    private static final double FLATNESS_PX = 0.05;

    private static final float MITER_LIMIT = 10;

    private final Color color;
    private final AlphaComposite composite;
    private final BasicStroke stroke;
    private final Path2D[] shapes;
    private final double[] tops;
    private final double[] bottoms;

    /**
     * @param color the paint's colour, or the grey that stands for it
     * @param pxPerMm the resolution that it is drawn at
     */
    Brush(Paint paint, Srgb color, double pxPerMm) {
        this.color = new Color(color.rgb());
        this.composite = AlphaComposite.getInstance(AlphaComposite.SRC_OVER, (float) paint.opacity());
        this.stroke = paint.pen().map(pen -> stroke(pen, HAIRLINE_PX / pxPerMm)).orElse(null);
        this.shapes = paint.isFill()
                ? new Path2D[] {shape(paint.paths(), pxPerMm)}
                : paint.paths().stream()
                        .map(path -> shape(List.of(path), pxPerMm))
                        .toArray(Path2D[]::new);
        this.tops = new double[shapes.length];
        this.bottoms = new double[shapes.length];
        double reach = stroke == null ? 0 : reach();
        for (int k = 0; k < shapes.length; k++) {
            Rectangle2D bounds = shapes[k].getBounds2D();
            tops[k] = bounds.getMinY() - reach;
            bottoms[k] = bounds.getMaxY() + reach;
        }
    }

    /** How far ink can lie from the middle of its line: at the tip of a pointed corner, or the corner of a cap. */
    private double reach() {
        double half = stroke.getLineWidth() / 2;
        return stroke.getLineJoin() == BasicStroke.JOIN_MITER ? half * MITER_LIMIT : half * Math.sqrt(2);
    }

    /** True if something may show between two heights. */
    boolean reaches(double topMm, double bottomMm) {
        for (int k = 0; k < shapes.length; k++) {
            if (tops[k] < bottomMm && bottoms[k] > topMm) {
                return true;
            }
        }
        return false;
    }

    /** Draws what may show between two heights. */
    void draw(Graphics2D graphics, double topMm, double bottomMm) {
        graphics.setColor(color);
        graphics.setComposite(composite);
        if (stroke != null) {
            graphics.setStroke(stroke);
        }
        for (int k = 0; k < shapes.length; k++) {
            if (tops[k] < bottomMm && bottoms[k] > topMm) {
                if (stroke == null) {
                    graphics.fill(shapes[k]);
                } else {
                    graphics.draw(shapes[k]);
                }
            }
        }
    }

    private static BasicStroke stroke(Pen pen, double leastMm) {
        int cap =
                switch (pen.cap()) {
                    case BUTT -> BasicStroke.CAP_BUTT;
                    case ROUND -> BasicStroke.CAP_ROUND;
                    case PROJECTING -> BasicStroke.CAP_SQUARE;
                };
        int join =
                switch (pen.join()) {
                    case MITER -> BasicStroke.JOIN_MITER;
                    case ROUND -> BasicStroke.JOIN_ROUND;
                    case BEVEL -> BasicStroke.JOIN_BEVEL;
                };
        float width = (float) Math.max(pen.widthMm(), leastMm);
        return new BasicStroke(width, cap, join, MITER_LIMIT, lengths(pen.dash()), (float)
                pen.dash().phaseMm());
    }

    private static float[] lengths(Dash dash) {
        if (dash.isNone()) {
            return null;
        }
        float[] lengths = new float[dash.lengthsMm().size()];
        for (int k = 0; k < lengths.length; k++) {
            lengths[k] = dash.lengthsMm().get(k).floatValue();
        }
        return lengths;
    }

    /**
     * A shape of straight pieces. Java2D cuts curves where its canvas ends and straightens the parts otherwise than the
     * whole, which moves dashes and would show where bands meet.
     */
    private static Path2D shape(List<VectorPath<SheetPoint>> paths, double pxPerMm) {
        Path2D shape = new Path2D.Double(Path2D.WIND_NON_ZERO);
        for (VectorPath<SheetPoint> path : paths) {
            path.visit(new VectorPath.Visitor() {
                @Override
                public void moveTo(double x, double y) {
                    shape.moveTo(x, y);
                }

                @Override
                public void lineTo(double x, double y) {
                    shape.lineTo(x, y);
                }

                @Override
                public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
                    shape.curveTo(x1, y1, x2, y2, x, y);
                }

                @Override
                public void close() {
                    shape.closePath();
                }
            });
        }
        Path2D straight = new Path2D.Double(Path2D.WIND_NON_ZERO);
        straight.append(shape.getPathIterator(null, FLATNESS_PX / pxPerMm), false);
        return straight;
    }
}
