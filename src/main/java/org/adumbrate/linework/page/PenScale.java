package org.adumbrate.linework.page;

import java.awt.geom.AffineTransform;

/**
 * What a map makes of a round pen. Where it stretches one way more than another, the pen becomes an ellipse (SVG 2, 13.4; ISO 32000-1,
 * 8.4.3.2), and a line is as wide as the ellipse is across it; strokes have one width, which is that of a circle of the same area.
 *
 * @param mean by how much widths grow on average
 * @param most by how much the widest lines are wider than that, at least 1
 */
public record PenScale(double mean, double most) {
    /** Above this, a line looks wider or thinner than it is taken. */
    private static final double SEEN = 1.05;

    /** What a map makes of a pen; its mean is 0 if it makes everything flat. */
    public static PenScale of(AffineTransform map) {
        double area = Math.abs(map.getDeterminant());
        double squares = map.getScaleX() * map.getScaleX()
                + map.getShearX() * map.getShearX()
                + map.getShearY() * map.getShearY()
                + map.getScaleY() * map.getScaleY();
        // the axes of the ellipse: a² + b² = squares, a b = area
        double across = Math.sqrt(Math.max(0, squares + 2 * area));
        double between = Math.sqrt(Math.max(0, squares - 2 * area));
        double mean = Math.sqrt(area);
        return new PenScale(mean, area == 0 ? 1 : (across + between) / 2 / mean);
    }

    /** Whether lines are wider one way than another, so that it shows. */
    public boolean distorts() {
        return most > SEEN;
    }
}
