package org.adumbrate.linework.svg;

import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.adumbrate.linework.svg.css.CssAngle;
import org.adumbrate.linework.svg.css.CssLength;
import org.adumbrate.linework.svg.css.CssScanner;

/** Reads transform lists as attributes and properties have them (CSS Transforms 1, 5.1, 8 and 10). */
final class SvgTransform {
    private SvgTransform() {}

    /**
     * The transforms of a list one after the other, the last nearest to the shape.
     *
     * @return empty if one is not sound, and then none of them counts
     */
    static Optional<AffineTransform> parse(String text, CssLength.Basis basis) {
        AffineTransform all = new AffineTransform();
        CssScanner scanner = new CssScanner(text);
        if (text.strip().equalsIgnoreCase("none")) {
            return Optional.of(all);
        }
        while (scanner.hasMore()) {
            String name = scanner.word().toLowerCase(Locale.ROOT);
            Optional<List<CssLength>> arguments = arguments(scanner);
            Optional<AffineTransform> one =
                    arguments.isEmpty() ? Optional.empty() : transform(name, arguments.get(), basis);
            if (one.isEmpty()) {
                return Optional.empty();
            }
            all.concatenate(one.get());
        }
        return Optional.of(all);
    }

    private static Optional<List<CssLength>> arguments(CssScanner scanner) {
        List<CssLength> read = new ArrayList<>();
        if (scanner.symbol() != '(') {
            return Optional.empty();
        }
        while (!scanner.isNext(')')) {
            Optional<CssLength> next = CssLength.read(scanner);
            if (next.isEmpty() || read.size() == 6) {
                return Optional.empty();
            }
            read.add(next.get());
        }
        scanner.symbol();
        return Optional.of(read);
    }

    private static Optional<AffineTransform> transform(String name, List<CssLength> n, CssLength.Basis basis) {
        return switch (name + n.size()) {
            case "matrix6" -> numbers(n).map(AffineTransform::new);
            case "translate1", "translatex1" ->
                lengths(n, basis).map(l -> AffineTransform.getTranslateInstance(l[0], 0));
            case "translatey1" -> lengths(n, basis).map(l -> AffineTransform.getTranslateInstance(0, l[0]));
            case "translate2" -> lengths(n, basis).map(l -> AffineTransform.getTranslateInstance(l[0], l[1]));
            case "scale1" -> shares(n).map(s -> AffineTransform.getScaleInstance(s[0], s[0]));
            case "scalex1" -> shares(n).map(s -> AffineTransform.getScaleInstance(s[0], 1));
            case "scaley1" -> shares(n).map(s -> AffineTransform.getScaleInstance(1, s[0]));
            case "scale2" -> shares(n).map(s -> AffineTransform.getScaleInstance(s[0], s[1]));
            case "rotate1", "rotatez1" -> angle(n, 0).map(AffineTransform::getRotateInstance);
            case "rotate3" ->
                lengths(n.subList(1, 3), basis)
                        .flatMap(l -> angle(n, 0).map(a -> AffineTransform.getRotateInstance(a, l[0], l[1])));
            case "skewx1", "skew1" -> angle(n, 0).map(a -> AffineTransform.getShearInstance(Math.tan(a), 0));
            case "skewy1" -> angle(n, 0).map(a -> AffineTransform.getShearInstance(0, Math.tan(a)));
            case "skew2" ->
                angle(n, 0)
                        .flatMap(a -> angle(n, 1).map(b -> AffineTransform.getShearInstance(Math.tan(a), Math.tan(b))));
            default -> Optional.empty();
        };
    }

    private static Optional<Double> angle(List<CssLength> n, int place) {
        OptionalDouble degrees = CssAngle.degrees(n.get(place));
        return degrees.isPresent() ? Optional.of(Math.toRadians(degrees.getAsDouble())) : Optional.empty();
    }

    private static Optional<double[]> numbers(List<CssLength> n) {
        return n.stream().allMatch(length -> length.unit().isEmpty())
                ? Optional.of(n.stream().mapToDouble(CssLength::value).toArray())
                : Optional.empty();
    }

    private static Optional<double[]> shares(List<CssLength> n) {
        return n.stream().allMatch(length -> length.unit().isEmpty() || length.isPercentage())
                ? Optional.of(n.stream()
                        .mapToDouble(length -> length.user(CssLength.Basis.SHARE))
                        .toArray())
                : Optional.empty();
    }

    private static Optional<double[]> lengths(List<CssLength> n, CssLength.Basis basis) {
        double[] lengths = n.stream().mapToDouble(length -> length.user(basis)).toArray();
        for (double length : lengths) {
            if (Double.isNaN(length)) {
                return Optional.empty();
            }
        }
        return Optional.of(lengths);
    }
}
