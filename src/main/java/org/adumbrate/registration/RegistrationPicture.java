package org.adumbrate.registration;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;

/**
 * Shows a placement: the pass, pale, with the lines of the sheet over it, and in a corner, enlarged, the place where the two
 * disagree most. Of a refused pass it shows the best attempt, so that the eye sees why.
 */
public final class RegistrationPicture {
    private static final Color ALIGNED_LINES = new Color(0x00, 0x6E, 0xC8);
    private static final Color REFUSED_LINES = new Color(0xD0, 0x20, 0x20);
    private static final Color PAPER = Color.WHITE;
    private static final Color MARK = new Color(0xE0, 0x80, 0x00);

    /** The darkest tone that the pass is shown in, 0 to 255. */
    private static final int PALE = 110;

    /** Side of the inset as a share of the picture's shorter side, and how much it enlarges the pass's pixels at least. */
    private static final double INSET = 0.34;

    private static final int LEAST_ENLARGEMENT = 6;

    private final Placement placement;
    private final LinePattern lines;
    private final ToneImage tone;

    private RegistrationPicture(Placement placement, LinePattern lines, PassImage pass) {
        this.placement = placement;
        this.lines = lines;
        this.tone = ToneImage.of(pass);
    }

    /**
     * Draws a placement.
     *
     * @param longSide pixels of the picture's longer side, 200 to 8000
     */
    public static BufferedImage draw(Placement placement, LinePattern lines, PassImage pass, int longSide) {
        if (longSide < 200 || longSide > 8000) {
            throw new IllegalArgumentException("a picture of " + longSide + " pixels");
        }
        return new RegistrationPicture(placement, lines, pass).draw(longSide);
    }

    /**
     * Draws only the place where the two disagree most, each pixel of the pass enlarged sixfold.
     *
     * @param side pixels of each side of the picture, 60 to 2000
     */
    public static BufferedImage worst(Placement placement, LinePattern lines, PassImage pass, int side) {
        if (side < 60 || side > 2000) {
            throw new IllegalArgumentException("a picture of " + side + " pixels");
        }
        BufferedImage picture = new BufferedImage(side, side, BufferedImage.TYPE_INT_RGB);
        RegistrationPicture drawn = new RegistrationPicture(placement, lines, pass);
        drawn.paintWorst(picture, new Rectangle2D.Double(0, 0, side, side), LEAST_ENLARGEMENT);
        return picture;
    }

    private BufferedImage draw(int longSide) {
        double scale = (double) longSide / Math.max(tone.width, tone.height);
        int width = (int) Math.max(1, Math.round(tone.width * scale));
        int height = (int) Math.max(1, Math.round(tone.height * scale));
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Affine<RasterPoint, RasterPoint> view = Affine.scaling(Space.RASTER, Space.RASTER, scale, scale);
        Rectangle2D all = new Rectangle2D.Double(0, 0, width, height);
        paint(picture, all, view, 1f);
        inset(picture);
        return picture;
    }

    /** Draws the worst place, enlarged, in the corner that lies farthest from it, and marks where it was taken from. */
    private void inset(BufferedImage picture) {
        RasterPoint worst = worst();
        double side = INSET * Math.min(picture.getWidth(), picture.getHeight());
        double scale = (double) picture.getWidth() / tone.width;
        double enlargement = Math.max(LEAST_ENLARGEMENT, 4 * scale);
        double x = worst.x() * scale < picture.getWidth() / 2.0 ? picture.getWidth() - side - 8 : 8;
        double y = worst.y() * scale < picture.getHeight() / 2.0 ? picture.getHeight() - side - 8 : 8;
        Rectangle2D frame = new Rectangle2D.Double(x, y, side, side);
        paintWorst(picture, frame, enlargement);
        Graphics2D g = graphics(picture);
        double taken = side / enlargement * scale;
        g.setColor(MARK);
        g.setStroke(new BasicStroke(2));
        g.draw(frame);
        g.draw(new Rectangle2D.Double(worst.x() * scale - taken / 2, worst.y() * scale - taken / 2, taken, taken));
        g.dispose();
    }

    /** The worst place, in pixels of the tone image. */
    private RasterPoint worst() {
        return Lay.reduced(placement.passToSheet().inverse(), tone.reduction).apply(placement.worst());
    }

    private void paintWorst(BufferedImage picture, Rectangle2D frame, double enlargement) {
        RasterPoint worst = worst();
        Affine<RasterPoint, RasterPoint> view = Affine.scalingThenShift(
                Space.RASTER,
                Space.RASTER,
                enlargement,
                enlargement,
                frame.getCenterX() - enlargement * worst.x(),
                frame.getCenterY() - enlargement * worst.y());
        paint(picture, frame, view, 1.5f);
    }

    /**
     * Paints pass and lines into a part of the picture.
     *
     * @param view from pixels of the tone image to pixels of the picture
     */
    private void paint(
            BufferedImage picture, Rectangle2D part, Affine<RasterPoint, RasterPoint> view, float lineWidth) {
        paintPass(picture, part, view);
        Affine<SheetPoint, RasterPoint> map =
                Lay.reduced(placement.passToSheet().inverse(), tone.reduction).then(view);
        Graphics2D g = graphics(picture);
        g.clip(part);
        g.setStroke(new BasicStroke(lineWidth));
        g.setColor(placement.aligned() ? ALIGNED_LINES : REFUSED_LINES);
        double[] pieces = lines.pieces();
        for (int s = 0; s < pieces.length; s += 4) {
            Line2D line = new Line2D.Double(
                    map.mapX(pieces[s], pieces[s + 1]),
                    map.mapY(pieces[s], pieces[s + 1]),
                    map.mapX(pieces[s + 2], pieces[s + 3]),
                    map.mapY(pieces[s + 2], pieces[s + 3]));
            if (line.intersects(part)) {
                g.draw(line);
            }
        }
        g.dispose();
    }

    /** The pass in pale tones: each pixel the mean of the tones it spans, or the one it lies in. */
    private void paintPass(BufferedImage picture, Rectangle2D part, Affine<RasterPoint, RasterPoint> view) {
        Affine<RasterPoint, RasterPoint> back = view.inverse();
        int span = (int) Math.max(1, Math.floor(back.xx()));
        int right = (int) Math.min(picture.getWidth(), part.getMaxX());
        int bottom = (int) Math.min(picture.getHeight(), part.getMaxY());
        for (int py = (int) part.getMinY(); py < bottom; py++) {
            for (int px = (int) part.getMinX(); px < right; px++) {
                int x = (int) Math.floor(back.mapX(px + 0.5, py + 0.5) - (span - 1) / 2.0);
                int y = (int) Math.floor(back.mapY(px + 0.5, py + 0.5) - (span - 1) / 2.0);
                picture.setRGB(px, py, pale(x, y, span));
            }
        }
    }

    private int pale(int x, int y, int span) {
        float sum = 0;
        int count = 0;
        for (int row = Math.max(0, y); row < Math.min(tone.height, y + span); row++) {
            for (int column = Math.max(0, x); column < Math.min(tone.width, x + span); column++) {
                sum += tone.tone[row * tone.width + column];
                count++;
            }
        }
        if (count == 0) {
            return PAPER.getRGB();
        }
        int level = PALE + Math.round((255 - PALE) * Math.max(0, Math.min(1, sum / count)));
        return 0xFF000000 | level << 16 | level << 8 | level;
    }

    private static Graphics2D graphics(BufferedImage picture) {
        Graphics2D g = picture.createGraphics();
        g.setTransform(new AffineTransform());
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        return g;
    }
}
