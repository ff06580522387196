package org.adumbrate.linework.svg;

import java.util.Optional;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.page.PathTracer;
import org.w3c.dom.Element;

/** The outlines of paths and of the basic shapes (SVG 1.1, 8 and 9). */
final class SvgShapes {
    private SvgShapes() {}

    /** The outline of an element in mm of the page; empty, and not an empty path, if the element is no shape. */
    static Optional<VectorPath<PagePoint>> outline(Element element, SvgScene scene) {
        PathTracer pen = new PathTracer();
        pen.drawThrough(scene.toPage());
        switch (element.getLocalName()) {
            case "path" -> SvgPathData.draw(element.getAttribute("d"), pen);
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
            case "rect" -> rectangle(element, scene, pen);
            case "circle" -> {
                double r = length(element, "r", scene.diagonal());
                ellipse(element, scene, r, r, pen);
            }
            case "ellipse" -> ellipse(element, scene, across(element, "rx", scene), down(element, "ry", scene), pen);
            default -> {
                return Optional.empty();
            }
        }
        return Optional.of(pen.take());
    }

    /** Draws through points, as many as there are whole pairs of; false if there is none. */
    private static boolean points(String text, PathTracer pen) {
        SvgScanner scanner = new SvgScanner(text);
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

    private static void rectangle(Element element, SvgScene scene, PathTracer pen) {
        double x = across(element, "x", scene);
        double y = down(element, "y", scene);
        double w = across(element, "width", scene);
        double h = down(element, "height", scene);
        if (w <= 0 || h <= 0) {
            return;
        }
        double rx = across(element, element.hasAttribute("rx") ? "rx" : "ry", scene);
        double ry = down(element, element.hasAttribute("ry") ? "ry" : "rx", scene);
        if (rx <= 0 || ry <= 0) {
            pen.rectangle(x, y, w, h);
        } else {
            rounded(pen, x, y, w, h, Math.min(rx, w / 2), Math.min(ry, h / 2));
        }
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

    /** A length across, in user units; 0 if it is missing or not sound. */
    static double across(Element element, String attribute, SvgScene scene) {
        return length(element, attribute, scene.width());
    }

    /** A length down, in user units; 0 if it is missing or not sound. */
    static double down(Element element, String attribute, SvgScene scene) {
        return length(element, attribute, scene.height());
    }

    private static double length(Element element, String attribute, double whole) {
        return SvgLength.parse(element.getAttribute(attribute))
                .map(length -> length.user(whole))
                .orElse(0.0);
    }
}
