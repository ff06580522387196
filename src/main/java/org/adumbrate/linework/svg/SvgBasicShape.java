package org.adumbrate.linework.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.linework.clip.ClipShape;
import org.adumbrate.linework.clip.FillRule;
import org.adumbrate.linework.page.PathTracer;
import org.adumbrate.linework.svg.css.CssLength;
import org.adumbrate.linework.svg.css.CssScanner;

/** Shapes that are written as values, to clip by (CSS Shapes 1, 3): {@code circle()}, {@code ellipse()}, {@code inset()}, {@code polygon()}. */
final class SvgBasicShape {
    private final SvgScene scene;
    private final Extent box;
    private final CssScanner scanner;
    private final PathTracer pen = new PathTracer();

    private SvgBasicShape(SvgScene scene, Extent box, String arguments) {
        this.scene = scene;
        this.box = box;
        this.scanner = new CssScanner(arguments);
        pen.drawThrough(scene.toPage());
    }

    /** Whether a value is a shape, or a box to clip by. */
    static boolean isOne(String value) {
        return value.strip().toLowerCase(Locale.ROOT).matches("[a-z]+(-[a-z]+)*(\\(.*)?")
                && SvgReference.parse(value).isEmpty();
    }

    /** The shape; empty if it is of a kind, or written in words, that are not known here. */
    static Optional<ClipShape<PagePoint>> outline(String value, SvgScene scene, SvgPlacing.Box bounds)
            throws InputFault {
        String text = value.strip().toLowerCase(Locale.ROOT);
        int open = text.indexOf('(');
        int end = text.lastIndexOf(')');
        if (open < 0 || end < open) {
            return Optional.empty();
        }
        String reference = text.substring(end + 1).strip();
        boolean ofView = reference.equals("view-box");
        boolean known = ofView || reference.isEmpty() || reference.equals("fill-box") || reference.equals("border-box");
        if (!known) {
            return Optional.empty();
        }
        Extent box = ofView
                ? new Extent(0, 0, scene.width(), scene.height())
                : bounds.of(scene).orElse(new Extent(0, 0, 0, 0));
        SvgBasicShape shape = new SvgBasicShape(scene, box, text.substring(open + 1, end));
        return switch (text.substring(0, open)) {
            case "circle" -> shape.round(1);
            case "ellipse" -> shape.round(2);
            case "inset" -> shape.inset();
            case "polygon" -> shape.polygon();
            default -> Optional.empty();
        };
    }

    private Optional<ClipShape<PagePoint>> round(int radii) {
        List<Double> radius = new ArrayList<>();
        double diagonal = Math.hypot(box.width(), box.height()) / Math.sqrt(2);
        while (radius.size() < radii && scanner.hasNumber()) {
            double whole = radii == 1 ? diagonal : radius.isEmpty() ? box.width() : box.height();
            radius.add(length(whole));
        }
        double x = box.left() + box.width() / 2;
        double y = box.top() + box.height() / 2;
        if (scanner.hasMore()) {
            boolean placed = scanner.word().equals("at") && scanner.hasNumber();
            x = box.left() + (placed ? length(box.width()) : Double.NaN);
            y = box.top() + (scanner.hasNumber() ? length(box.height()) : box.height() / 2);
        }
        double nearX = Math.min(Math.abs(x - box.left()), Math.abs(box.right() - x));
        double nearY = Math.min(Math.abs(y - box.top()), Math.abs(box.bottom() - y));
        double rx = !radius.isEmpty() ? radius.get(0) : radii == 1 ? Math.min(nearX, nearY) : nearX;
        double ry = radii == 1 ? rx : radius.size() == 2 ? radius.get(1) : nearY;
        if (scanner.hasMore() || Double.isNaN(x + y + rx + ry)) {
            return Optional.empty();
        }
        if (rx > 0 && ry > 0) {
            SvgArc.drawEllipse(pen, x, y, rx, ry);
        }
        return shape(FillRule.NON_ZERO);
    }

    private Optional<ClipShape<PagePoint>> inset() {
        List<Double> sides = new ArrayList<>();
        while (sides.size() < 4 && scanner.hasNumber()) {
            sides.add(length(sides.size() % 2 == 0 ? box.height() : box.width()));
        }
        if (sides.isEmpty() || scanner.hasMore() || sides.contains(Double.NaN)) {
            return Optional.empty();
        }
        double top = sides.get(0);
        double right = sides.size() > 1 ? sides.get(1) : top;
        double bottom = sides.size() > 2 ? sides.get(2) : top;
        double left = sides.size() > 3 ? sides.get(3) : right;
        double width = Math.max(0, box.width() - left - right);
        double height = Math.max(0, box.height() - top - bottom);
        pen.rectangle(box.left() + left, box.top() + top, width, height);
        return shape(FillRule.NON_ZERO);
    }

    private Optional<ClipShape<PagePoint>> polygon() {
        FillRule rule = FillRule.NON_ZERO;
        if (!scanner.hasNumber()) {
            rule = scanner.word().equals("evenodd") ? FillRule.EVEN_ODD : FillRule.NON_ZERO;
        }
        boolean first = true;
        while (scanner.hasNumber()) {
            double x = box.left() + length(box.width());
            double y = box.top() + length(box.height());
            if (Double.isNaN(x + y)) {
                return Optional.empty();
            }
            if (first) {
                pen.moveTo(x, y);
            } else {
                pen.lineTo(x, y);
            }
            first = false;
        }
        if (scanner.hasMore() || first) {
            return Optional.empty();
        }
        pen.close();
        return shape(rule);
    }

    private Optional<ClipShape<PagePoint>> shape(FillRule rule) {
        return Optional.of(new ClipShape<>(pen.take(), rule));
    }

    private double length(double whole) {
        return CssLength.read(scanner)
                .map(length -> length.user(scene.style().basis(whole)))
                .orElse(Double.NaN);
    }
}
