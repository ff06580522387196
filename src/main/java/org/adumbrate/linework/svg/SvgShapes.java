package org.adumbrate.linework.svg;

import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.page.PathTracer;
import org.adumbrate.linework.svg.css.CssLength;
import org.adumbrate.linework.svg.css.CssScanner;
import org.w3c.dom.Element;

/** The outlines of paths and of the basic shapes (SVG 2, 9 and 10). */
final class SvgShapes {
    private SvgShapes() {}

    /**
     * The outline of an element in mm of the page; empty, and not an empty path, if the element is no shape.
     *
     * @param scene that of the element itself, its own style included
     */
    static Optional<VectorPath<PagePoint>> outline(Element element, SvgScene scene) {
        PathTracer pen = new PathTracer();
        pen.drawThrough(scene.toPage());
        switch (element.getLocalName()) {
            case "path" -> {
                return Optional.of(path(element, scene, Optional.empty()));
            }
            case "line" -> {
                pen.moveTo(across(element, "x1", scene), down(element, "y1", scene));
                pen.lineTo(across(element, "x2", scene), down(element, "y2", scene));
            }
            case "polyline" -> points(element.getAttribute("points"), pen);
            case "polygon" -> {
                if (points(element.getAttribute("points"), pen)) {
                    pen.close();
                }
            }
            case "rect" -> SvgRectangle.draw(element, scene, pen);
            case "circle" -> {
                double r = stated(element, "r", scene, scene.diagonal()).orElse(0.0);
                ellipse(element, scene, r, r, pen);
            }
            case "ellipse" -> {
                // a negative radius is none, and then it is as long as the other (SVG 2, 10.4)
                Optional<Double> rx =
                        stated(element, "rx", scene, scene.width()).filter(r -> r >= 0);
                Optional<Double> ry =
                        stated(element, "ry", scene, scene.height()).filter(r -> r >= 0);
                ellipse(
                        element,
                        scene,
                        rx.or(() -> ry).orElse(0.0),
                        ry.or(() -> rx).orElse(0.0),
                        pen);
            }
            default -> {
                return Optional.empty();
            }
        }
        return Optional.of(pen.take());
    }

    /**
     * The outline of a path.
     *
     * @param steps where each step of its data ends is added here
     */
    static VectorPath<PagePoint> path(Element element, SvgScene scene, Optional<List<Point2D>> steps) {
        PathTracer pen = new PathTracer();
        pen.drawThrough(scene.toPage());
        String data = scene.style().stated("d").orElseGet(() -> element.getAttribute("d"));
        SvgPathData.draw(SvgPathData.ofProperty(data), pen, steps);
        return pen.take();
    }

    /** The rectangle that an element states. */
    static VectorPath<PagePoint> box(Element element, SvgScene scene) {
        PathTracer pen = new PathTracer();
        pen.drawThrough(scene.toPage());
        pen.rectangle(
                across(element, "x", scene),
                down(element, "y", scene),
                across(element, "width", scene),
                down(element, "height", scene));
        return pen.take();
    }

    /** Draws through points, as many as there are whole pairs of; false if there is none. */
    private static boolean points(String text, PathTracer pen) {
        CssScanner scanner = new CssScanner(text);
        boolean first = true;
        while (scanner.hasNumber()) {
            double x = scanner.number();
            double y = scanner.number();
            if (Double.isNaN(y)) {
                break;
            }
            if (first) {
                pen.moveTo(x, y);
            } else {
                pen.lineTo(x, y);
            }
            first = false;
        }
        return !first;
    }

    private static void ellipse(Element element, SvgScene scene, double rx, double ry, PathTracer pen) {
        if (rx > 0 && ry > 0) {
            SvgArc.drawEllipse(pen, across(element, "cx", scene), down(element, "cy", scene), rx, ry);
        }
    }

    /** A length across, in user units; 0 if it is missing or not sound. */
    static double across(Element element, String attribute, SvgScene scene) {
        return stated(element, attribute, scene, scene.width()).orElse(0.0);
    }

    /** A length down, in user units; 0 if it is missing or not sound. */
    static double down(Element element, String attribute, SvgScene scene) {
        return stated(element, attribute, scene, scene.height()).orElse(0.0);
    }

    /** A length that an attribute states, or a property of the same name in its place; empty if it is missing or not sound. */
    static Optional<Double> stated(Element element, String attribute, SvgScene scene, double whole) {
        String text = scene.style().stated(attribute).orElseGet(() -> element.getAttribute(attribute));
        return text.isEmpty()
                ? Optional.empty()
                : CssLength.parse(text)
                        .map(length -> length.user(scene.style().basis(whole)))
                        .filter(length -> !Double.isNaN(length));
    }
}
