package org.adumbrate.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.List;
import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.VectorPath;

/** The drawing as a picture for the screen: lines over an image of the underlay, as the PDF has them. */
public final class PreviewDrawing {
    /**
     * The least width of a line, in pixels. Widths are true, but a line much thinner than a pixel is too faint to be seen;
     * at half a pixel it still stands out against paper, and thin pens still look thinner than thick ones.
     */
    static final double HAIRLINE_PX = 0.5;

    private static final float MITER_LIMIT = 10;

    private PreviewDrawing() {}

    /**
     * Draws groups of lines over an image, in their order.
     *
     * @param image covers the whole sheet; changed in place
     * @param sheet the size of the sheet
     * @param groups the lines
     */
    public static void draw(BufferedImage image, SheetSize sheet, List<LineGroup> groups) {
        double pxPerMm = Math.sqrt(image.getWidth() / sheet.widthMm() * image.getHeight() / sheet.heightMm());
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            graphics.scale(image.getWidth() / sheet.widthMm(), image.getHeight() / sheet.heightMm());
            for (LineGroup group : groups) {
                graphics.setColor(new Color(group.pen().ink().rgb()));
                graphics.setStroke(stroke(group.pen(), HAIRLINE_PX / pxPerMm));
                group.paths().forEach(path -> graphics.draw(shape(path)));
            }
        } finally {
            graphics.dispose();
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

    private static Path2D shape(VectorPath<SheetPoint> path) {
        Path2D shape = new Path2D.Double();
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
        return shape;
    }
}
