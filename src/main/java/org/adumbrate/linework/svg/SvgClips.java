package org.adumbrate.linework.svg;

import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.clip.Clip;
import org.adumbrate.linework.clip.ClipShape;
import org.adumbrate.linework.clip.FillRule;
import org.adumbrate.linework.page.PathTracer;
import org.w3c.dom.Element;

/** Clip paths (SVG 1.1, 14.3); those in units of a bounding box are taken as if they were not there. */
final class SvgClips {
    private static final int DEEPEST = 20;

    /** What a shape costs that is made to clip by, in shapes that are drawn. */
    private static final int COST = 3;

    private final SvgDocument document;

    SvgClips(SvgDocument document) {
        this.document = document;
    }

    /** The clip of a scene, narrowed by the clip path that its style names. */
    Clip<PagePoint> within(SvgScene scene) {
        return within(scene, 0);
    }

    /** The clip of a scene, narrowed to a rectangle at the origin of its user space. */
    Clip<PagePoint> within(SvgScene scene, double width, double height) {
        PathTracer pen = new PathTracer();
        pen.drawThrough(scene.toPage());
        pen.rectangle(0, 0, width, height);
        return scene.clip().within(pen.take(), FillRule.NON_ZERO);
    }

    private Clip<PagePoint> within(SvgScene scene, int depth) {
        Optional<Element> path = scene.style().clipPathId().flatMap(document::element);
        if (path.isEmpty()
                || depth > DEEPEST
                || !path.get().getLocalName().equals("clipPath")
                || path.get().getAttribute("clipPathUnits").equals("objectBoundingBox")) {
            return scene.clip();
        }
        Element clipPath = path.get();
        SvgScene inner = inside(clipPath, scene);
        List<ClipShape<PagePoint>> shapes = new ArrayList<>();
        for (Element child = SvgDocument.nextElement(clipPath.getFirstChild());
                child != null;
                child = SvgDocument.nextElement(child.getNextSibling())) {
            shape(child, inner).ifPresent(shapes::add);
        }
        return within(inner, depth + 1).withinAny(shapes);
    }

    private Optional<ClipShape<PagePoint>> shape(Element element, SvgScene outer) {
        SvgScene scene = inside(element, outer);
        if (!scene.style().isDisplayed() || !scene.style().isVisible()) {
            return Optional.empty();
        }
        Optional<Element> used = element.getLocalName().equals("use") ? document.referredTo(element) : Optional.empty();
        if (used.isPresent()) {
            SvgScene moved = scene.moved(AffineTransform.getTranslateInstance(
                    SvgShapes.across(element, "x", scene), SvgShapes.down(element, "y", scene)));
            return used.get().getLocalName().equals("use") ? Optional.empty() : shape(used.get(), moved);
        }
        Optional<VectorPath<PagePoint>> outline = SvgShapes.outline(element, scene);
        return outline.map(path -> new ClipShape<>(path, scene.style().clipRule()));
    }

    private SvgScene inside(Element element, SvgScene outer) {
        document.read(element, COST);
        return outer.inside(outer.style().with(document.stylesheet().declared(element)))
                .moved(SvgTransform.parse(element.getAttribute("transform")));
    }
}
