package org.adumbrate.drawing;

import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;

/**
 * Writes a path as path data: where a run begins, and from there on the way to go. Steps are counted between rounded
 * points, so that their rounding never adds up; everything is exact to a micrometre.
 */
final class SvgLine implements VectorPath.Visitor {
    private static final int DECIMALS = 3;
    private static final double PER_MM = 1000;

    private final StringBuilder data = new StringBuilder();
    private char command;
    private long startX;
    private long startY;
    private long x;
    private long y;

    private SvgLine() {}

    static String data(VectorPath<SheetPoint> path) {
        SvgLine line = new SvgLine();
        path.visit(line);
        return line.data.toString();
    }

    @Override
    public void moveTo(double toX, double toY) {
        command('M');
        startX = x = rounded(toX);
        startY = y = rounded(toY);
        number(x);
        number(y);
    }

    @Override
    public void lineTo(double toX, double toY) {
        command('l');
        step(toX, toY);
        arrive(toX, toY);
    }

    @Override
    public void curveTo(double x1, double y1, double x2, double y2, double toX, double toY) {
        command('c');
        step(x1, y1);
        step(x2, y2);
        step(toX, toY);
        arrive(toX, toY);
    }

    @Override
    public void close() {
        command('z');
        x = startX;
        y = startY;
    }

    private void step(double toX, double toY) {
        number(rounded(toX) - x);
        number(rounded(toY) - y);
    }

    private void arrive(double toX, double toY) {
        x = rounded(toX);
        y = rounded(toY);
    }

    /** Names a command, unless it only goes on. */
    private void command(char next) {
        if (next != command) {
            data.append(next);
        }
        command = next == 'M' || next == 'z' ? 0 : next;
    }

    private void number(long value) {
        boolean setOff = value < 0 || data.length() == 0 || Character.isLetter(data.charAt(data.length() - 1));
        if (!setOff) {
            data.append(' ');
        }
        CompactNumber.append(data, value, DECIMALS);
    }

    private static long rounded(double mm) {
        return Math.round(mm * PER_MM);
    }
}
