package org.adumbrate.report.page;

import java.io.IOException;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;

/**
 * A construction drawn over the pale drawing, in mm of the sheet: an SVG that may reach beyond the sheet, with the drawing
 * behind it.
 */
final class Plate {
    private final Html html;
    private final Extent reach;
    private final double unit;

    private Plate(Html html, Extent reach) {
        this.html = html;
        this.reach = reach;
        this.unit = reach.width() / 100;
    }

    /**
     * Opens a plate.
     *
     * @param reach how much of the sheet's plane it shows
     * @param alt what it shows, in words
     */
    static Plate open(Html html, SheetSize sheet, Extent reach, String alt) throws IOException {
        html.open(
                "div",
                "class",
                "plate pale",
                "style",
                "aspect-ratio: " + mm(reach.width()) + " / " + mm(reach.height()));
        html.open(
                "div",
                "class",
                "drawn under",
                "style",
                "left: %s; top: %s; width: %s; height: %s"
                        .formatted(
                                percent(-reach.left() / reach.width()),
                                percent(-reach.top() / reach.height()),
                                percent(sheet.widthMm() / reach.width()),
                                percent(sheet.heightMm() / reach.height())));
        html.closeLine();
        String box = mm(reach.left()) + " " + mm(reach.top()) + " " + mm(reach.width()) + " " + mm(reach.height());
        html.open(
                "svg",
                "viewBox",
                box,
                "role",
                "img",
                "aria-label",
                alt,
                "style",
                "--u: " + Words.number(reach.width() / 100, 4));
        return new Plate(html, reach);
    }

    /** A hundredth of the plate's width, in mm: what sizes of letters and dots are counted in. */
    double unit() {
        return unit;
    }

    Extent reach() {
        return reach;
    }

    boolean holds(SheetPoint p) {
        return p.x() >= reach.left() && p.x() <= reach.right() && p.y() >= reach.top() && p.y() <= reach.bottom();
    }

    void line(String kind, SheetPoint a, SheetPoint b) throws IOException {
        html.empty("line", "class", kind, "x1", mm(a.x()), "y1", mm(a.y()), "x2", mm(b.x()), "y2", mm(b.y()));
    }

    void dot(String kind, SheetPoint at, double units) throws IOException {
        html.empty("circle", "class", kind, "cx", mm(at.x()), "cy", mm(at.y()), "r", mm(units * unit));
    }

    /** A cross over a place. */
    void cross(String kind, SheetPoint at, double units) throws IOException {
        double r = units * unit;
        line(kind, new SheetPoint(at.x() - r, at.y() - r), new SheetPoint(at.x() + r, at.y() + r));
        line(kind, new SheetPoint(at.x() - r, at.y() + r), new SheetPoint(at.x() + r, at.y() - r));
    }

    /**
     * Words beside a place.
     *
     * @param anchor {@code start}, {@code middle} or {@code end}: which part of the words stands there
     */
    void label(String text, SheetPoint at, String anchor) throws IOException {
        html.element("text", text, "x", mm(at.x()), "y", mm(at.y()), "text-anchor", anchor);
    }

    /** The same point moved by hundredths of the plate's width. */
    SheetPoint beside(SheetPoint at, double right, double down) {
        return new SheetPoint(at.x() + right * unit, at.y() + down * unit);
    }

    /** An arrow from a point toward another beyond the plate's edge, ending at the edge; gives its tip. */
    SheetPoint arrowToEdge(String kind, SheetPoint from, double dx, double dy) throws IOException {
        double length = Math.hypot(dx, dy);
        double ux = dx / length;
        double uy = dy / length;
        double inset = unit;
        double across = ux > 0 ? reach.right() - inset - from.x() : reach.left() + inset - from.x();
        double down = uy > 0 ? reach.bottom() - inset - from.y() : reach.top() + inset - from.y();
        double t = Math.min(ux == 0 ? Double.MAX_VALUE : across / ux, uy == 0 ? Double.MAX_VALUE : down / uy);
        SheetPoint tip = new SheetPoint(from.x() + t * ux, from.y() + t * uy);
        line(kind, from, tip);
        double barb = 1.4 * unit;
        html.empty(
                "path",
                "class",
                kind + " head",
                "d",
                "M%s %sL%s %sL%s %sz"
                        .formatted(
                                mm(tip.x()),
                                mm(tip.y()),
                                mm(tip.x() - barb * ux + 0.4 * barb * uy),
                                mm(tip.y() - barb * uy - 0.4 * barb * ux),
                                mm(tip.x() - barb * ux - 0.4 * barb * uy),
                                mm(tip.y() - barb * uy + 0.4 * barb * ux)));
        return tip;
    }

    void close() throws IOException {
        html.close().closeLine();
    }

    private static String mm(double value) {
        return Words.number(value, 2);
    }

    private static String percent(double share) {
        return Words.number(100 * share, 3) + "%";
    }
}
