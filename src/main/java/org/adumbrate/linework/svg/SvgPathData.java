package org.adumbrate.linework.svg;

import org.adumbrate.linework.page.PathTracer;

/** Draws path data (SVG 1.1, 8.3); in case of an error, as every viewer does, what comes before it. */
final class SvgPathData {
    private final SvgScanner scanner;
    private final PathTracer pen;
    private double controlX;
    private double controlY;
    private char curve;

    private SvgPathData(String data, PathTracer pen) {
        this.scanner = new SvgScanner(data);
        this.pen = pen;
    }

    static void draw(String data, PathTracer pen) {
        new SvgPathData(data, pen).drawAll();
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
