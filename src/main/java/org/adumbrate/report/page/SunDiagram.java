package org.adumbrate.report.page;

import java.io.IOException;

/** The sun in plan, north up, and in elevation, along the shadow. */
final class SunDiagram {
    private static final double RADIUS = 62;

    /** Where the plan's middle lies. */
    private static final double CX = 90;

    private static final double CY = 92;

    /** Where the elevation stands, and how much room it has. */
    private static final double LEFT = 215;

    private static final double GROUND = 160;
    private static final double WIDTH = 165;
    private static final double HEIGHT = 110;

    private final Sunlight sun;

    SunDiagram(Sunlight sun) {
        this.sun = sun;
    }

    void write(Html html) throws IOException {
        html.open("figure", "class", "diagram");
        html.open(
                "svg",
                "viewBox",
                "0 0 400 200",
                "role",
                "img",
                "aria-label",
                "The sun in plan and in elevation: azimuth, altitude and the shadow of one metre");
        plan(html);
        elevation(html);
        html.closeLine();
        html.element(
                "figcaption", "Left: in plan, north up. Right: in elevation, along the shadow of an upright of 1 m.");
        html.closeLine();
    }

    private void plan(Html html) throws IOException {
        double azimuth = sun.direction().azimuthDeg(sun.northDeg());
        double view = Math.toDegrees(sun.view().turn()) - sun.northDeg();
        html.empty("circle", "class", "thin", "cx", n(CX), "cy", n(CY), "r", n(RADIUS));
        for (int k = 0; k < 360; k += 30) {
            ray(html, "thin", k, RADIUS - 4, RADIUS);
        }
        text(html, "N", CX, CY - RADIUS - 6, "middle");
        arc(html, azimuth);
        ray(html, "ray", azimuth, RADIUS - 6, 9);
        html.empty("circle", "class", "sun", "cx", x(azimuth, RADIUS), "cy", y(azimuth, RADIUS), "r", "6");
        ray(html, "shadow", azimuth + 180, 0, shadowInPlan());
        html.empty("circle", "class", "dot", "cx", n(CX), "cy", n(CY), "r", "3");
        arrow(html, "view", view, 14, RADIUS + 14);
        label(html, "view", view, RADIUS + 22);
        label(html, "sun " + SunSection.degrees(azimuth), azimuth, RADIUS + 22);
        double right = Math.cos(Math.toRadians(azimuth + 180)) >= 0 ? 90 : -90;
        label(html, "shadow", azimuth + 180 + right, 14);
    }

    private double shadowInPlan() {
        return Math.min(RADIUS - 16, 30 * sun.direction().shadowPerMetre());
    }

    private void arc(Html html, double azimuth) throws IOException {
        double r = 20;
        html.empty(
                "path",
                "class",
                "thin",
                "d",
                "M%s %sA%s %s 0 %s 1 %s %s"
                        .formatted(x(0, r), y(0, r), n(r), n(r), azimuth > 180 ? 1 : 0, x(azimuth, r), y(azimuth, r)));
        ray(html, "thin", 0, 0, RADIUS);
    }

    private static void ray(Html html, String kind, double azimuth, double from, double to) throws IOException {
        html.empty(
                "line",
                "class",
                kind,
                "x1",
                x(azimuth, from),
                "y1",
                y(azimuth, from),
                "x2",
                x(azimuth, to),
                "y2",
                y(azimuth, to));
    }

    private static void arrow(Html html, String kind, double azimuth, double from, double to) throws IOException {
        ray(html, kind, azimuth, from, to);
        html.empty(
                "path",
                "class",
                kind + " head",
                "d",
                "M%s %sL%s %sL%s %sz"
                        .formatted(
                                x(azimuth, to),
                                y(azimuth, to),
                                x(azimuth - 4, to - 8),
                                y(azimuth - 4, to - 8),
                                x(azimuth + 4, to - 8),
                                y(azimuth + 4, to - 8)));
    }

    private static void label(Html html, String text, double azimuth, double r) throws IOException {
        double across = Math.sin(Math.toRadians(azimuth));
        // words at the top keep clear of the N
        double sideways = Math.cos(Math.toRadians(azimuth)) > 0.8 ? 0 : 0.4;
        String anchor = across > sideways ? "start" : across < -sideways ? "end" : "middle";
        double inward = Math.abs(across) > 0.4 ? 8 : 0;
        text(html, text, CX + (r - inward) * across, CY - r * Math.cos(Math.toRadians(azimuth)) + 4, anchor);
    }

    private void elevation(Html html) throws IOException {
        double shadow = sun.direction().shadowPerMetre();
        double scale = Math.min(HEIGHT, WIDTH / Math.max(shadow, 1e-6));
        double tip = LEFT + scale * shadow;
        double top = GROUND - scale;
        line(html, "thin", LEFT - 12, GROUND, 396, GROUND);
        line(html, "height", LEFT, GROUND, LEFT, top);
        line(html, "shadow", LEFT, GROUND, tip, GROUND);
        double beyond = 0.22;
        line(html, "ray", LEFT - beyond * (tip - LEFT), top - beyond * scale, tip, GROUND);
        double r = Math.min(26, 0.45 * (tip - LEFT));
        double altitude = Math.toRadians(sun.direction().altitudeDeg());
        html.empty(
                "path",
                "class",
                "thin",
                "d",
                "M%s %sA%s %s 0 0 1 %s %s"
                        .formatted(
                                n(tip - r),
                                n(GROUND),
                                n(r),
                                n(r),
                                n(tip - r * Math.cos(altitude)),
                                n(GROUND - r * Math.sin(altitude))));
        text(html, SunSection.degrees(sun.direction().altitudeDeg()), tip + 4, GROUND - 8, "start");
        text(html, "1 m", LEFT - 5, GROUND - scale / 2, "end");
        text(html, "shadow " + Words.number(shadow, 2) + " m", (LEFT + tip) / 2, GROUND + 16, "middle");
    }

    private static void line(Html html, String kind, double x1, double y1, double x2, double y2) throws IOException {
        html.empty("line", "class", kind, "x1", n(x1), "y1", n(y1), "x2", n(x2), "y2", n(y2));
    }

    private static void text(Html html, String text, double x, double y, String anchor) throws IOException {
        html.element("text", text, "x", n(x), "y", n(y), "text-anchor", anchor);
    }

    private static double at(double middle, double across, double r) {
        return middle + r * across;
    }

    private static String x(double azimuth, double r) {
        return n(at(CX, Math.sin(Math.toRadians(azimuth)), r));
    }

    private static String y(double azimuth, double r) {
        return n(at(CY, -Math.cos(Math.toRadians(azimuth)), r));
    }

    private static String n(double value) {
        return Words.number(value, 1);
    }
}
