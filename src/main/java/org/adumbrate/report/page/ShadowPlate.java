package org.adumbrate.report.page;

import java.io.IOException;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.perspective.Homogeneous;
import org.adumbrate.perspective.VanishingPoints;

/** The classical construction of one shadow over the pale drawing: its foot, its head, the two points, its tip. */
final class ShadowPlate {
    /** A vanishing point is drawn if the plate need not grow beyond this many sheets for it, each way. */
    private static final double MOST_SHEETS = 1.7;

    private static final double MARGIN = 0.02;

    /** Below this share of the picture's width, in mm for a unit of depth, a point is as good as at infinity. */
    private static final double INFINITE = 1e-6;

    private final SheetSize sheet;
    private final Sunlight sun;
    private final Sunlight.Upright upright;
    private final VanishingPoints points;

    /** What is told of points that do not show. */
    private final StringBuilder off = new StringBuilder();

    ShadowPlate(SheetSize sheet, Sunlight sun, Sunlight.Upright upright) {
        this.sheet = sheet;
        this.sun = sun;
        this.upright = upright;
        this.points = VanishingPoints.of(sun.view(), sun.direction());
    }

    void write(Html html) throws IOException {
        SheetPoint tip = points.shadowTip(upright.foot(), upright.head()).orElse(upright.foot());
        html.open("figure");
        Plate plate = Plate.open(
                html, sheet, reach(), "The construction of the shadow of " + upright.name() + " over the pale drawing");
        double y = sun.view().horizonMm();
        plate.line(
                "horizon",
                new SheetPoint(plate.reach().left(), y),
                new SheetPoint(plate.reach().right(), y));
        plate.label("horizon", plate.beside(new SheetPoint(plate.reach().left(), y), 2, -0.6), "start");
        toward(plate, upright.foot(), "foot", tip, points.shadow(), "shadow point");
        toward(plate, upright.head(), "head", tip, points.ray(), isBefore() ? "sun" : "ray point");
        plate.line("height", upright.foot(), upright.head());
        plate.line("cast", upright.foot(), tip);
        plate.dot("dot", upright.foot(), 0.35);
        plate.dot("dot", upright.head(), 0.35);
        plate.dot("ring", tip, 0.6);
        double side = tip.x() >= upright.foot().x() ? -1 : 1;
        String anchor = side < 0 ? "end" : "start";
        plate.label("foot", plate.beside(upright.foot(), 0.8 * side, 1.4), anchor);
        plate.label("head", plate.beside(upright.head(), 0.8 * side, -0.4), anchor);
        plate.label("tip", plate.beside(tip, -0.8 * side, 1.6), side < 0 ? "start" : "end");
        plate.close();
        html.element("figcaption", caption());
        html.closeLine();
    }

    private boolean isBefore() {
        return points.ray().w() < 0;
    }

    private String caption() {
        String rays = isBefore()
                ? "The sun stands before the viewer: its picture is marked, and straight below it on the horizon lies the shadow"
                        + " point. A line from the shadow point through the foot, and one from the sun through the head,"
                : "The sun stands behind the viewer: shadows on level ground run toward the shadow point on the horizon, and rays"
                        + " toward the ray point straight below it. A line from the foot to the shadow point, and one from the"
                        + " head to the ray point,";
        return "The shadow of " + upright.name() + ". " + rays + " meet where the shadow of the head falls." + off;
    }

    private Extent reach() {
        double margin = MARGIN * sheet.widthMm();
        Extent reach = new Extent(-margin, -margin, sheet.widthMm() + margin, sheet.heightMm() + margin);
        for (Homogeneous point : new Homogeneous[] {points.shadow(), points.ray()}) {
            SheetPoint at = finite(point);
            if (at != null) {
                Extent wider = new Extent(
                        Math.min(reach.left(), at.x() - 4 * margin),
                        Math.min(reach.top(), at.y() - 3 * margin),
                        Math.max(reach.right(), at.x() + 4 * margin),
                        Math.max(reach.bottom(), at.y() + 3 * margin));
                boolean fits = wider.width() <= MOST_SHEETS * sheet.widthMm()
                        && wider.height() <= MOST_SHEETS * sheet.heightMm();
                reach = fits ? wider : reach;
            }
        }
        return reach;
    }

    /** Where a point lies in the picture plane, on either side of the viewer; null where it is too far to tell. */
    private static SheetPoint finite(Homogeneous point) {
        if (Math.abs(point.w()) < INFINITE) {
            return null;
        }
        return new SheetPoint(point.x() / point.w(), point.y() / point.w());
    }

    /** The line from an end of the upright through the tip of its shadow, on to a vanishing point or toward it. */
    private void toward(Plate plate, SheetPoint from, String end, SheetPoint tip, Homogeneous point, String name)
            throws IOException {
        SheetPoint at = finite(point);
        if (at != null && plate.holds(at)) {
            plate.line("ray", from, at);
            plate.line("ray", from, tip);
            plate.dot("ring", at, 0.8);
            plate.dot("dot", at, 0.25);
            plate.label(name, plate.beside(at, 0, at.y() > sun.view().horizonMm() ? 2.4 : -1.4), "middle");
            return;
        }
        double dx = at == null ? tip.x() - from.x() : at.x() - from.x();
        double dy = at == null ? tip.y() - from.y() : at.y() - from.y();
        plate.line("ray", from, tip);
        SheetPoint edge = plate.arrowToEdge("ray", from, dx, dy);
        boolean right = edge.x() > sheet.widthMm() / 2;
        boolean low = edge.y() > sheet.heightMm() / 2;
        if (at != null) {
            off.append(" The " + name + " lies off this picture, " + Words.number(from.distanceTo(at), 0)
                    + " mm from the " + end + ".");
        }
        plate.label(
                at == null ? "parallel" : "to the " + name,
                plate.beside(edge, right ? -2 : 2, low ? -1.5 : 2.5),
                right ? "end" : "start");
    }
}
