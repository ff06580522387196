package org.adumbrate.svgsuite;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.Stroke;

/** Draws what was read of a file over a picture of what it fills. */
final class SuitePicture {
    /** Pixels in a pixel of CSS. */
    static final int SCALE = 2;

    private static final double PX_PER_MM = SCALE * 96 / 25.4;

    /** SVG's own, which strokes of a sheet do not state. */
    private static final float MITER_LIMIT = 4;

    private static final double CHORD_MM = 0.002;

    private SuitePicture() {}

    static BufferedImage over(BufferedImage bare, LineSheet sheet) {
        BufferedImage picture = new BufferedImage(bare.getWidth(), bare.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = picture.createGraphics();
        pen.drawImage(bare, 0, 0, null);
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.scale(PX_PER_MM, PX_PER_MM);
        for (Stroke stroke : sheet.strokes()) {
            pen.setColor(new Color(stroke.color().rgb()));
            pen.setStroke(style(stroke));
            pen.draw(chords(path(stroke)));
        }
        pen.dispose();
        return picture;
    }

    private static BasicStroke style(Stroke stroke) {
        int cap =
                switch (stroke.cap()) {
                    case ROUND -> BasicStroke.CAP_ROUND;
                    case PROJECTING -> BasicStroke.CAP_SQUARE;
                    case BUTT -> BasicStroke.CAP_BUTT;
                };
        int join =
                switch (stroke.join()) {
                    case ROUND -> BasicStroke.JOIN_ROUND;
                    case BEVEL -> BasicStroke.JOIN_BEVEL;
                    case MITER -> BasicStroke.JOIN_MITER;
                };
        int dashes = stroke.dash().lengthsMm().size();
        float[] dash = new float[dashes * (dashes % 2 + 1)];
        for (int k = 0; k < dash.length; k++) {
            dash[k] = stroke.dash().lengthsMm().get(k % dashes).floatValue();
        }
        double sum = 0;
        for (float length : dash) {
            sum += length;
        }
        double phase = sum == 0 ? 0 : (stroke.dash().phaseMm() % sum + sum) % sum;
        return new BasicStroke(
                (float) stroke.widthMm(), cap, join, MITER_LIMIT, dash.length == 0 ? null : dash, (float) phase);
    }

    /** As straight lines: Java's own pen loses its way where a curve turns back on itself. */
    private static Path2D chords(Path2D path) {
        Path2D.Double chords = new Path2D.Double();
        chords.append(path.getPathIterator(null, CHORD_MM), /* connect= */ false);
        return chords;
    }

    private static Path2D path(Stroke stroke) {
        Path2D.Double path = new Path2D.Double();
        stroke.path().visit(new VectorPath.Visitor() {
            @Override
            public void moveTo(double x, double y) {
                path.moveTo(x, y);
            }

            @Override
            public void lineTo(double x, double y) {
                path.lineTo(x, y);
            }

            @Override
            public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
                path.curveTo(x1, y1, x2, y2, x, y);
            }

            @Override
            public void close() {
                path.closePath();
            }
        });
        return path;
    }
}
