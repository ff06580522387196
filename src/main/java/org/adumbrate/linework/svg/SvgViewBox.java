package org.adumbrate.linework.svg;

import java.awt.geom.AffineTransform;
import java.util.Locale;
import java.util.Optional;
import org.adumbrate.linework.svg.css.CssScanner;

/** The rectangle of user space that is shown in a viewport (SVG 1.1, 7.7 and 7.8). */
record SvgViewBox(double x, double y, double width, double height) {
    /** Reads a viewBox; empty if it is not sound or has no area. */
    static Optional<SvgViewBox> parse(String text) {
        CssScanner scanner = new CssScanner(text);
        SvgViewBox box = new SvgViewBox(scanner.number(), scanner.number(), scanner.number(), scanner.number());
        boolean sound = Double.isFinite(box.x) && Double.isFinite(box.y) && box.width > 0 && box.height > 0;
        return sound ? Optional.of(box) : Optional.empty();
    }

    /**
     * The map that brings it into a viewport at (0, 0).
     *
     * @param preserveAspectRatio the attribute; blank for its default, centred and wholly visible
     */
    AffineTransform into(double viewportWidth, double viewportHeight, String preserveAspectRatio) {
        String wish = preserveAspectRatio.toLowerCase(Locale.ROOT);
        double sx = viewportWidth / width;
        double sy = viewportHeight / height;
        if (!wish.contains("none")) {
            sx = sy = wish.contains("slice") ? Math.max(sx, sy) : Math.min(sx, sy);
        }
        double left = (viewportWidth - sx * width) * share(wish, "xmin", "xmax");
        double top = (viewportHeight - sy * height) * share(wish, "ymin", "ymax");
        return new AffineTransform(sx, 0, 0, sy, left - sx * x, top - sy * y);
    }

    private static double share(String wish, String none, String all) {
        return wish.contains(none) ? 0 : wish.contains(all) ? 1 : 0.5;
    }
}
