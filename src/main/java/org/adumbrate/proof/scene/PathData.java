package org.adumbrate.proof.scene;

import org.adumbrate.geometry.VectorPath;

/** Paths as SVG path data (SVG 1.1, 8.3), to a hundredth of the unit. */
final class PathData implements VectorPath.Visitor {
    private final StringBuilder data = new StringBuilder();

    static String of(VectorPath<?> path) {
        PathData data = new PathData();
        path.visit(data);
        return data.text();
    }

    String text() {
        return data.toString();
    }

    int length() {
        return data.length();
    }

    @Override
    public void moveTo(double x, double y) {
        step('M', x, y);
    }

    @Override
    public void lineTo(double x, double y) {
        step('L', x, y);
    }

    @Override
    public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
        step('C', x1, y1, x2, y2, x, y);
    }

    @Override
    public void close() {
        data.append('Z');
    }

    private void step(char letter, double... numbers) {
        data.append(letter);
        for (int k = 0; k < numbers.length; k++) {
            number(numbers[k], k > 0);
        }
    }

    private void number(double value, boolean follows) {
        long hundredths = Math.round(100 * value);
        if (hundredths < 0) {
            data.append('-');
        } else if (follows) {
            data.append(' ');
        }
        long size = Math.abs(hundredths);
        data.append(size / 100);
        if (size % 100 != 0) {
            data.append('.').append(size % 100 / 10);
            if (size % 10 != 0) {
                data.append(size % 10);
            }
        }
    }
}
