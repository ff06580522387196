package org.adumbrate.linework.svg;

import java.util.Optional;
import org.adumbrate.linework.page.PathTracer;
import org.w3c.dom.Element;

/** Rectangles (SVG 2, 10.2), with corners that may be round. */
final class SvgRectangle {
    private SvgRectangle() {}

    static void draw(Element element, SvgScene scene, PathTracer pen) {
        double x = SvgShapes.across(element, "x", scene);
        double y = SvgShapes.down(element, "y", scene);
        double w = SvgShapes.across(element, "width", scene);
        double h = SvgShapes.down(element, "height", scene);
        if (w <= 0 || h <= 0) {
            return;
        }
        Optional<Double> across = radius(element, "rx", scene, scene.width());
        Optional<Double> down = radius(element, "ry", scene, scene.height());
        double rx = across.or(() -> down).orElse(0.0);
        double ry = down.or(() -> across).orElse(0.0);
        if (rx <= 0 || ry <= 0) {
            pen.rectangle(x, y, w, h);
        } else {
            rounded(pen, x, y, w, h, Math.min(rx, w / 2), Math.min(ry, h / 2));
        }
    }

    /** A negative radius is in error, and as if it were not stated. */
    private static Optional<Double> radius(Element element, String attribute, SvgScene scene, double whole) {
        return SvgShapes.stated(element, attribute, scene, whole).filter(radius -> radius >= 0);
    }

    private static void rounded(PathTracer pen, double x, double y, double w, double h, double rx, double ry) {
        pen.moveTo(x + rx, y);
        pen.lineTo(x + w - rx, y);
        SvgArc.draw(pen, rx, ry, 0, false, true, x + w, y + ry);
        pen.lineTo(x + w, y + h - ry);
        SvgArc.draw(pen, rx, ry, 0, false, true, x + w - rx, y + h);
        pen.lineTo(x + rx, y + h);
        SvgArc.draw(pen, rx, ry, 0, false, true, x, y + h - ry);
        pen.lineTo(x, y + ry);
        SvgArc.draw(pen, rx, ry, 0, false, true, x + rx, y);
        pen.close();
    }
}
