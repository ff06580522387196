package org.adumbrate.linework.svg;

import java.awt.geom.Point2D;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.adumbrate.linework.page.PathTracer;
import org.adumbrate.linework.svg.css.CssScanner;

/** Draws path data (SVG 1.1, 8.3); in case of an error, as every viewer does, what comes before it. */
final class SvgPathData {
    private final CssScanner scanner;
    private final PathTracer pen;
    private final Optional<List<Point2D>> steps;
    private double controlX;
    private double controlY;
    private char curve;

    private SvgPathData(String data, PathTracer pen, Optional<List<Point2D>> steps) {
        this.scanner = new CssScanner(data);
        this.pen = pen;
        this.steps = steps;
    }

    /**
     * Draws path data.
     *
     * @param steps where each step ends, in the pen's coordinates, is added here
     */
    static void draw(String data, PathTracer pen, Optional<List<Point2D>> steps) {
        new SvgPathData(data, pen, steps).drawAll();
    }

    /** Path data as the property {@code d} has it, {@code path("...")} (SVG 2, 9.3.2); any other as it is. */
    static String ofProperty(String value) {
        String text = value.strip();
        int first = text.indexOf('"') + 1;
        boolean written = text.toLowerCase(Locale.ROOT).startsWith("path(") && first > 0;
        return written ? text.substring(first, Math.max(first, text.lastIndexOf('"'))) : value;
    }

    private void drawAll() {
        char command = 0;
        boolean sound = true;
        while (sound && scanner.hasMore()) {
            boolean repeated = scanner.hasNumber();
            char next = repeated ? following(command) : scanner.symbol();
            boolean first = command == 0;
            command = next;
            sound = first ? "Mm".indexOf(command) >= 0 && draw(command) : draw(command);
        }
    }

    /** The command that numbers without one belong to. */
    private static char following(char command) {
        return switch (command) {
            case 'M' -> 'L';
            case 'm' -> 'l';
            case 'Z', 'z' -> 0;
            default -> command;
        };
    }

    private boolean draw(char command) {
        boolean relative = Character.isLowerCase(command);
        double x0 = relative ? pen.x() : 0;
        double y0 = relative ? pen.y() : 0;
        char kind = Character.toUpperCase(command);
        boolean drawn =
                switch (kind) {
                    case 'M', 'L', 'H', 'V', 'Z' -> straight(kind, x0, y0);
                    case 'C', 'S', 'Q', 'T' -> curve(kind, x0, y0);
                    case 'A' -> arc(x0, y0);
                    default -> false;
                };
        curve = kind;
        steps.ifPresent(ends -> ends.add(new Point2D.Double(pen.x(), pen.y())));
        return drawn;
    }

    private boolean straight(char kind, double x0, double y0) {
        if (kind == 'Z') {
            pen.close();
            return true;
        }
        double x = kind == 'V' ? pen.x() : x0 + scanner.number();
        double y = kind == 'H' ? pen.y() : y0 + scanner.number();
        if (Double.isNaN(x + y)) {
            return false;
        }
        if (kind == 'M') {
            pen.moveTo(x, y);
        } else {
            pen.lineTo(x, y);
        }
        return true;
    }

    private boolean curve(char kind, double x0, double y0) {
        boolean cubic = kind == 'C' || kind == 'S';
        boolean smooth = kind == 'S' || kind == 'T';
        boolean goesOn = smooth && (cubic ? "CS" : "QT").indexOf(curve) >= 0;
        double x1 = smooth ? goesOn ? 2 * pen.x() - controlX : pen.x() : x0 + scanner.number();
        double y1 = smooth ? goesOn ? 2 * pen.y() - controlY : pen.y() : y0 + scanner.number();
        controlX = cubic ? x0 + scanner.number() : x1;
        controlY = cubic ? y0 + scanner.number() : y1;
        double x = x0 + scanner.number();
        double y = y0 + scanner.number();
        if (Double.isNaN(x1 + y1 + controlX + controlY + x + y)) {
            return false;
        }
        if (cubic) {
            pen.curveTo(x1, y1, controlX, controlY, x, y);
        } else {
            pen.quadTo(x1, y1, x, y);
        }
        return true;
    }

    private boolean arc(double x0, double y0) {
        double rx = scanner.number();
        double ry = scanner.number();
        double turn = scanner.number();
        double large = scanner.flag();
        double sweep = scanner.flag();
        double x = x0 + scanner.number();
        double y = y0 + scanner.number();
        if (Double.isNaN(rx + ry + turn + large + sweep + x + y)) {
            return false;
        }
        SvgArc.draw(pen, Math.abs(rx), Math.abs(ry), Math.toRadians(turn), large == 1, sweep == 1, x, y);
        return true;
    }
}
