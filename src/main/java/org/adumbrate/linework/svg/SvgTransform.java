package org.adumbrate.linework.svg;

import java.awt.geom.AffineTransform;
import java.util.Arrays;

/** Reads transform lists (SVG 1.1, 7.6). */
final class SvgTransform {
    private SvgTransform() {}

    /** The transforms of a list one after the other, the last nearest to the shape; up to the first that is not sound. */
    static AffineTransform parse(String text) {
        AffineTransform all = new AffineTransform();
        SvgScanner scanner = new SvgScanner(text);
        while (scanner.hasMore()) {
            String name = scanner.word();
            double[] n = arguments(scanner);
            AffineTransform one = n == null ? null : transform(name, n);
            if (one == null) {
                return all;
            }
            all.concatenate(one);
        }
        return all;
    }

    private static double[] arguments(SvgScanner scanner) {
        if (scanner.symbol() != '(') {
            return null;
        }
        double[] numbers = new double[6];
        int count = 0;
        while (count < numbers.length && scanner.hasNumber()) {
            numbers[count++] = scanner.number();
        }
        return scanner.symbol() == ')' ? Arrays.copyOf(numbers, count) : null;
    }

    private static AffineTransform transform(String name, double[] n) {
        return switch (name + n.length) {
            case "matrix6" -> new AffineTransform(n);
            case "translate1" -> AffineTransform.getTranslateInstance(n[0], 0);
            case "translate2" -> AffineTransform.getTranslateInstance(n[0], n[1]);
            case "scale1" -> AffineTransform.getScaleInstance(n[0], n[0]);
            case "scale2" -> AffineTransform.getScaleInstance(n[0], n[1]);
            case "rotate1" -> AffineTransform.getRotateInstance(Math.toRadians(n[0]));
            case "rotate3" -> AffineTransform.getRotateInstance(Math.toRadians(n[0]), n[1], n[2]);
            case "skewX1" -> AffineTransform.getShearInstance(Math.tan(Math.toRadians(n[0])), 0);
            case "skewY1" -> AffineTransform.getShearInstance(0, Math.tan(Math.toRadians(n[0])));
            default -> null;
        };
    }
}
