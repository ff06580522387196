package org.adumbrate.linework.svg;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.clip.Clip;
import org.adumbrate.linework.svg.css.CssAngle;
import org.adumbrate.linework.svg.css.CssLength;
import org.w3c.dom.Element;

/** Markers on the vertices of shapes (SVG 2, 13.7). */
final class SvgMarkers {
    private static final Set<String> MARKED = Set.of("path", "line", "polyline", "polygon");
    private static final double SIZE = 3;

    private final SvgDocument document;
    private final SvgWalk walk;
    private final SvgCanvas canvas;
    private final Set<Element> open = new HashSet<>();

    SvgMarkers(SvgDocument document, SvgWalk walk, SvgCanvas canvas) {
        this.document = document;
        this.walk = walk;
        this.canvas = canvas;
    }

    /** Whether an element asks for any. */
    static boolean are(Element element, SvgStyle style) {
        return MARKED.contains(element.getLocalName())
                && !(style.get("marker-start", "none")
                                + style.get("marker-mid", "none")
                                + style.get("marker-end", "none"))
                        .equals("nonenonenone");
    }

    /** Draws those of a shape. */
    void draw(Element shape, SvgScene scene) throws InputFault {
        List<SvgVertices.Vertex> vertices = vertices(shape, scene);
        for (int k = 0; k < vertices.size(); k++) {
            if (k == 0) {
                draw("marker-start", vertices.get(k), scene);
            }
            if (k > 0 && k < vertices.size() - 1) {
                draw("marker-mid", vertices.get(k), scene);
            }
            if (k == vertices.size() - 1) {
                draw("marker-end", vertices.get(k), scene);
            }
        }
    }

    private static List<SvgVertices.Vertex> vertices(Element shape, SvgScene scene) {
        SvgScene own = scene.mapped(new AffineTransform());
        if (!shape.getLocalName().equals("path")) {
            return SvgShapes.outline(shape, own)
                    .map(path -> SvgVertices.of(path, Optional.empty()))
                    .orElse(List.of());
        }
        List<Point2D> steps = new ArrayList<>();
        return SvgVertices.of(SvgShapes.path(shape, own, Optional.of(steps)), Optional.of(steps));
    }

    private void draw(String property, SvgVertices.Vertex vertex, SvgScene scene) throws InputFault {
        Optional<Element> marker = marker(scene.style().get(property, "none"));
        if (marker.isPresent() && open.add(marker.get())) {
            try {
                draw(marker.get(), property.equals("marker-start"), vertex, scene);
            } finally {
                open.remove(marker.get());
            }
        }
    }

    private Optional<Element> marker(String value) {
        String address = SvgReference.parse(value).map(SvgReference::address).orElse("");
        if (SvgReference.leadsOutside(address)) {
            canvas.told(LeftOut.Kind.OUTSIDE);
        }
        return SvgReference.id(address).flatMap(document::element).filter(target -> target.getLocalName()
                .equals("marker"));
    }

    private void draw(Element marker, boolean start, SvgVertices.Vertex vertex, SvgScene scene) throws InputFault {
        SvgStyle style = document.cascade().of(marker).inContextOf(scene.style());
        SvgScene around = scene.inside(style);
        double width = side(marker, "markerWidth", around, around.width());
        double height = side(marker, "markerHeight", around, around.height());
        if (width <= 0 || height <= 0 || !style.isDisplayed()) {
            return;
        }
        AffineTransform place = AffineTransform.getTranslateInstance(vertex.x(), vertex.y());
        place.rotate(turn(marker.getAttribute("orient"), start, vertex));
        if (!marker.getAttribute("markerUnits").equals("userSpaceOnUse")) {
            double scale = SvgLengths.strokeWidth(scene.style(), scene.diagonal());
            place.scale(scale, scale);
        }
        Optional<SvgViewBox> box = SvgViewBox.parse(marker.getAttribute("viewBox"));
        AffineTransform view = box.map(b -> b.into(width, height, marker.getAttribute("preserveAspectRatio")))
                .orElse(new AffineTransform());
        SvgScene units = around.sized(
                box.map(SvgViewBox::width).orElse(around.width()),
                box.map(SvgViewBox::height).orElse(around.height()));
        Point2D reference = view.transform(
                new Point2D.Double(
                        reference(
                                marker,
                                "refX",
                                units,
                                box.map(SvgViewBox::x).orElse(0.0),
                                box.map(SvgViewBox::width).orElse(width)),
                        reference(
                                marker,
                                "refY",
                                units,
                                box.map(SvgViewBox::y).orElse(0.0),
                                box.map(SvgViewBox::height).orElse(height))),
                null);
        place.translate(-reference.getX(), -reference.getY());
        SvgScene placed = units.moved(place);
        Clip<PagePoint> clip = style.clipsOverflow() ? SvgClips.within(placed, width, height) : placed.clip();
        walk.drawMarker(marker, placed.moved(view).clipped(clip));
    }

    private static double side(Element marker, String attribute, SvgScene scene, double whole) {
        return CssLength.parse(marker.getAttribute(attribute))
                .map(length -> length.user(scene.style().basis(whole)))
                .orElse(SIZE);
    }

    private static double reference(Element marker, String attribute, SvgScene scene, double least, double size) {
        String text = marker.getAttribute(attribute).strip().toLowerCase(Locale.ROOT);
        return switch (text) {
            case "left", "top" -> least;
            case "center" -> least + size / 2;
            case "right", "bottom" -> least + size;
            default ->
                CssLength.parse(text)
                        .map(length -> length.user(scene.style().basis(size)))
                        .orElse(0.0);
        };
    }

    private static double turn(String orient, boolean start, SvgVertices.Vertex vertex) {
        String text = orient.strip().toLowerCase(Locale.ROOT);
        if (text.equals("auto") || text.equals("auto-start-reverse")) {
            return vertex.direction() + (start && text.endsWith("reverse") ? Math.PI : 0);
        }
        OptionalDouble degrees = CssLength.parse(text).map(CssAngle::degrees).orElse(OptionalDouble.empty());
        return Math.toRadians(degrees.orElse(0));
    }
}
