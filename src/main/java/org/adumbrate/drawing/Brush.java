package org.adumbrate.drawing;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.PieceVisitor;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;

/** A paint made ready for Java2D, with where on the sheet each of its shapes can leave ink; in mm. */
final class Brush {
    /**
     * The least width of a line, in pixels. Widths are true, but a line much thinner than a pixel is too faint to be seen;
     * at half a pixel it still stands out against paper, and thin pens still look thinner than thick ones.
     */
    private static final double HAIRLINE_PX = 0.5;

    /** How far curves are straightened, in pixels: less than can be seen. */
    private static final double FLATNESS_PX = 0.01;

    private static final float MITER_LIMIT = 10;

    private static final Extent EVERYWHERE =
            new Extent(-Double.MAX_VALUE / 4, -Double.MAX_VALUE / 4, Double.MAX_VALUE / 4, Double.MAX_VALUE / 4);

    private final Color color;
    private final AlphaComposite composite;
    private final BasicStroke stroke;
    private final double reach;
    private final List<Path2D> shapes;
    private final List<Extent> bounds;

    /** A brush for all shapes of a paint. */
    Brush(Paint paint, Srgb color, double pxPerMm) {
        this(paint, color, pxPerMm, EVERYWHERE);
    }

    /**
     * @param color the paint's colour, or the grey that stands for it
     * @param pxPerMm the resolution that it is drawn at
     * @param within where it is drawn, in mm; shapes that do not show there are left out
     */
    Brush(Paint paint, Srgb color, double pxPerMm, Extent within) {
        this(paint, color, pxPerMm, new ArrayList<>(), new ArrayList<>());
        if (paint.isFill()) {
            add(paint.paths(), pxPerMm, within);
        } else {
            paint.paths().forEach(path -> add(List.of(path), pxPerMm, within));
        }
    }

    private Brush(Paint paint, Srgb color, double pxPerMm, List<Path2D> shapes, List<Extent> bounds) {
        this.color = new Color(color.rgb());
        this.composite = AlphaComposite.getInstance(AlphaComposite.SRC_OVER, (float) paint.opacity());
        this.stroke = paint.pen().map(pen -> stroke(pen, HAIRLINE_PX / pxPerMm)).orElse(null);
        this.reach = stroke == null ? 0 : tip(stroke);
        this.shapes = shapes;
        this.bounds = bounds;
    }

    /** A brush for a paint of the same paths, which are not straightened again. */
    Brush as(Paint paint, Srgb other, double pxPerMm) {
        return new Brush(paint, other, pxPerMm, shapes, bounds);
    }

    private void add(List<VectorPath<SheetPoint>> paths, double pxPerMm, Extent within) {
        if (touches(around(paths), reach, within)) {
            Path2D shape = shape(paths, pxPerMm);
            Rectangle2D box = shape.getBounds2D();
            shapes.add(shape);
            bounds.add(new Extent(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY()));
        }
    }

    private static Extent around(List<VectorPath<SheetPoint>> paths) {
        return paths.stream()
                .map(path -> path.extent().orElseThrow())
                .reduce(Extent::with)
                .orElseThrow();
    }

    private static boolean touches(Extent extent, double reach, Extent within) {
        return extent.left() - reach < within.right()
                && extent.right() + reach > within.left()
                && extent.top() - reach < within.bottom()
                && extent.bottom() + reach > within.top();
    }

    /** How far ink can lie from the middle of its line: at the tip of a pointed corner, or the corner of a cap. */
    private static double tip(BasicStroke stroke) {
        double half = stroke.getLineWidth() / 2;
        return stroke.getLineJoin() == BasicStroke.JOIN_MITER ? half * MITER_LIMIT : half * Math.sqrt(2);
    }

    /** How far its ink can lie from its paths, in mm. */
    double reach() {
        return reach;
    }

    /** Where on the sheet each of its shapes can leave ink. */
    List<Extent> reaches() {
        return bounds.stream()
                .map(box ->
                        new Extent(box.left() - reach, box.top() - reach, box.right() + reach, box.bottom() + reach))
                .toList();
    }

    /** Makes the graphics draw with it. */
    void dip(Graphics2D graphics) {
        graphics.setColor(color);
        graphics.setComposite(composite);
        if (stroke != null) {
            graphics.setStroke(stroke);
        }
    }

    /** Draws one of its shapes. */
    void draw(Graphics2D graphics, int shape) {
        if (stroke == null) {
            graphics.fill(shapes.get(shape));
        } else {
            graphics.draw(shapes.get(shape));
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
            path.pieces(new PieceVisitor() {
                @Override
                public void begin(double x, double y) {
                    shape.moveTo(x, y);
                }

                @Override
                public void piece(PathPiece piece) {
                    piece.chords(FLATNESS_PX / pxPerMm, (x0, y0, x1, y1) -> shape.lineTo(x1, y1));
                }

                @Override
                public void closing(PathPiece piece) {
                    shape.closePath();
                }
            });
        }
        return shape;
    }
}
