package org.adumbrate.linework.svg;

import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.util.Optional;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.PieceVisitor;
import org.adumbrate.geometry.VectorPath;
import org.w3c.dom.Element;

/** Follows paints to what they refer to (SVG 2, 13.2). */
final class SvgPaints {
    private final SvgDocument document;

    SvgPaints(SvgDocument document) {
        this.document = document;
    }

    /**
     * The paint of a shape.
     *
     * @param outline its outline in mm of the page, through the scene's map
     */
    SvgPaint of(PaintValue value, VectorPath<PagePoint> outline, SvgScene scene) {
        return switch (value.kind()) {
            case NONE, CURRENT, CONTEXT_FILL, CONTEXT_STROKE -> SvgPaint.NONE;
            case COLOR -> SvgPaint.of(value.color());
            case SERVER -> server(value, outline, scene);
        };
    }

    private SvgPaint server(PaintValue value, VectorPath<PagePoint> outline, SvgScene scene) {
        Optional<Element> server =
                SvgReference.id(value.server()).flatMap(document::element).filter(SvgPaints::isServer);
        if (server.isEmpty()) {
            return value.fallback()
                    .map(fallback -> of(fallback, outline, scene))
                    .orElse(new SvgPaint(SvgPaint.Kind.BROKEN, value.color(), /* solid= */ false));
        }
        if (SvgGradients.isByBox(server.get(), document) && isFlat(outline, scene.toPage())) {
            // shares of a box without an area: the paint is as if it were not there (SVG 2, 8.11)
            return value.fallback()
                    .map(fallback -> of(fallback, outline, scene))
                    .orElse(SvgPaint.NONE);
        }
        return server.get().getLocalName().equals("pattern")
                ? SvgGradients.pattern(server.get(), document)
                : SvgGradients.gradient(server.get(), document);
    }

    /** The box around a path in user space, control points counted. */
    private static final class UserBox implements PieceVisitor {
        private static final double FLAT = 1e-9;

        private final AffineTransform back;
        private double left = Double.POSITIVE_INFINITY;
        private double right = Double.NEGATIVE_INFINITY;
        private double top = Double.POSITIVE_INFINITY;
        private double bottom = Double.NEGATIVE_INFINITY;

        UserBox(AffineTransform back) {
            this.back = back;
        }

        @Override
        public void piece(PathPiece piece) {
            double[] points = {
                piece.x0(), piece.y0(), piece.x1(), piece.y1(), piece.x2(), piece.y2(), piece.x3(), piece.y3()
            };
            back.transform(points, 0, points, 0, points.length / 2);
            for (int k = 0; k < points.length; k += 2) {
                left = Math.min(left, points[k]);
                right = Math.max(right, points[k]);
                top = Math.min(top, points[k + 1]);
                bottom = Math.max(bottom, points[k + 1]);
            }
        }

        boolean isFlat() {
            return !(right - left > FLAT && bottom - top > FLAT);
        }
    }

    private static boolean isServer(Element element) {
        return switch (element.getLocalName()) {
            case "linearGradient", "radialGradient", "pattern" -> true;
            default -> false;
        };
    }

    private static boolean isFlat(VectorPath<PagePoint> outline, AffineTransform toPage) {
        try {
            AffineTransform back = toPage.createInverse();
            UserBox box = new UserBox(back);
            outline.pieces(box);
            return box.isFlat();
        } catch (NoninvertibleTransformException e) {
            return true;
        }
    }
}
