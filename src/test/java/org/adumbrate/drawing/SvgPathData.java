package org.adumbrate.drawing;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** The path data of SVG 1.1, 8.3, as far as lines, cubic curves and closing go. */
final class SvgPathData {
    private static final Pattern TOKEN = Pattern.compile("[A-Za-z]|-?(?:\\d+\\.?\\d*|\\.\\d+)");

    private final List<String> tokens;
    private final Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
    private int next;

    private SvgPathData(String data) {
        this.tokens = TOKEN.matcher(data).results().map(MatchResult::group).toList();
    }

    static Path2D shape(String data) {
        return new SvgPathData(data).read();
    }

    private Path2D read() {
        char command = ' ';
        while (next < tokens.size()) {
            if (Character.isLetter(tokens.get(next).charAt(0))) {
                command = tokens.get(next++).charAt(0);
            }
            Point2D at = path.getCurrentPoint();
            boolean relative = Character.isLowerCase(command) && at != null;
            double x = relative ? at.getX() : 0;
            double y = relative ? at.getY() : 0;
            switch (Character.toUpperCase(command)) {
                case 'M' -> {
                    path.moveTo(x + number(), y + number());
                    command = command == 'M' ? 'L' : 'l';
                }
                case 'L' -> path.lineTo(x + number(), y + number());
                case 'C' ->
                    path.curveTo(x + number(), y + number(), x + number(), y + number(), x + number(), y + number());
                case 'Z' -> path.closePath();
                default -> throw new AssertionError("unknown command: " + command);
            }
        }
        return path;
    }

    private double number() {
        return Double.parseDouble(tokens.get(next++));
    }
}
