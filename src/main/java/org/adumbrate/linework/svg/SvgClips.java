package org.adumbrate.linework.svg;

import java.awt.geom.AffineTransform;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.clip.Clip;
import org.adumbrate.linework.clip.ClipShape;
import org.adumbrate.linework.clip.FillRule;
import org.adumbrate.linework.page.PathTracer;
import org.w3c.dom.Element;

/** Clip paths (CSS Masking 1, 5 and 6). */
final class SvgClips {
    /** What a shape costs that is made to clip by, in shapes that are drawn. */
    private static final int COST = 3;

    private final Path file;
    private final SvgDocument document;
    private final SvgCanvas canvas;
    private final Set<Element> open = new HashSet<>();

    SvgClips(Path file, SvgDocument document, SvgCanvas canvas) {
        this.file = file;
        this.document = document;
        this.canvas = canvas;
    }

    /** The clip of a scene, narrowed to a rectangle at the origin of its user space. */
    static Clip<PagePoint> within(SvgScene scene, double width, double height) {
        PathTracer pen = new PathTracer();
        pen.drawThrough(scene.toPage());
        pen.rectangle(0, 0, width, height);
        return scene.clip().within(pen.take(), FillRule.NON_ZERO);
    }

    /** The clip of an element's scene, narrowed by the clip path that its style names. */
    Clip<PagePoint> within(Element element, SvgScene scene) throws InputFault {
        Optional<String> value = scene.style().stated("clip-path");
        if (value.isEmpty() || value.get().equals("none")) {
            return scene.clip();
        }
        Optional<Element> path = clipPath(value.get());
        if (path.isPresent()) {
            return within(path.get(), element, scene);
        }
        if (SvgBasicShape.isOne(value.get())) {
            return SvgBasicShape.outline(value.get(), scene, box -> SvgBounds.of(element, scene, file, document))
                    .map(shape -> scene.clip().withinAny(List.of(shape)))
                    .orElseGet(() -> {
                        canvas.told(LeftOut.Kind.MASK);
                        return scene.clip();
                    });
        }
        return scene.clip();
    }

    private Optional<Element> clipPath(String value) {
        String address = SvgReference.parse(value).map(SvgReference::address).orElse("");
        if (SvgReference.leadsOutside(address)) {
            canvas.told(LeftOut.Kind.OUTSIDE);
        }
        return SvgReference.id(address).flatMap(document::element).filter(target -> target.getLocalName()
                .equals("clipPath"));
    }

    /** The clip of a scene narrowed by a clip path; one that goes round in circles does not narrow itself again. */
    private Clip<PagePoint> within(Element clipPath, Element element, SvgScene scene) throws InputFault {
        if (!open.add(clipPath)) {
            return scene.clip();
        }
        try {
            Optional<SvgScene> inner = inside(clipPath, element, scene);
            if (inner.isEmpty()) {
                return scene.clip().withinAny(List.of());
            }
            Optional<List<ClipShape<PagePoint>>> shapes = shapes(clipPath, inner.get());
            Clip<PagePoint> outer = within(clipPath, scene.inside(inner.get().style()));
            return shapes.map(outer::withinAny).orElse(outer);
        } finally {
            open.remove(clipPath);
        }
    }

    /** The scene of what is in a clip path; empty if nothing of it has an area. */
    private Optional<SvgScene> inside(Element clipPath, Element element, SvgScene scene) throws InputFault {
        document.read(clipPath, COST);
        SvgStyle style = document.cascade().of(clipPath);
        SvgScene moved = SvgPlacing.placed(scene.inside(style), box -> SvgBounds.of(element, scene, file, document));
        if (moved.toPage().getDeterminant() == 0) {
            return Optional.empty();
        }
        if (!clipPath.getAttribute("clipPathUnits").equals("objectBoundingBox")) {
            return Optional.of(moved);
        }
        return SvgBounds.unit(SvgBounds.of(element, scene, file, document))
                .map(unit -> moved.moved(unit).sized(1, 1));
    }

    /** The shapes that a clip path consists of; empty if they cannot be followed, as those of text. */
    private Optional<List<ClipShape<PagePoint>>> shapes(Element clipPath, SvgScene scene) throws InputFault {
        List<ClipShape<PagePoint>> shapes = new ArrayList<>();
        for (Element child = SvgDocument.nextElement(clipPath.getFirstChild());
                child != null;
                child = SvgDocument.nextElement(child.getNextSibling())) {
            SvgScene inner = inside(child, scene);
            Optional<Element> used = used(child);
            SvgScene target = used.isEmpty()
                    ? inner
                    : inside(
                            used.get(),
                            inner.moved(AffineTransform.getTranslateInstance(
                                    SvgShapes.across(child, "x", inner), SvgShapes.down(child, "y", inner))));
            Element shown = used.orElse(child);
            if (!inner.style().isBoxed()
                    || !target.style().isBoxed()
                    || !target.style().isVisible()) {
                continue;
            }
            if (shown.getLocalName().equals("text")) {
                canvas.told(LeftOut.Kind.MASK);
                return Optional.empty();
            }
            Optional<VectorPath<PagePoint>> outline = SvgShapes.outline(shown, target);
            if (outline.isPresent() && !outline.get().isEmpty()) {
                clipped(child, shown, inner, target, outline.get()).ifPresent(shapes::add);
            }
        }
        return Optional.of(shapes);
    }

    private Optional<Element> used(Element child) {
        return child.getLocalName().equals("use") ? document.referredTo(child) : Optional.empty();
    }

    private SvgScene inside(Element element, SvgScene outer) throws InputFault {
        document.read(element, COST);
        SvgScene scene = outer.inside(outer.style().with(document.cascade().declared(element)));
        return SvgPlacing.placed(scene, box -> SvgBounds.of(element, scene, file, document));
    }

    /** A shape less what clip paths of its own, and of whatever uses it, hide of it; empty if that is all. */
    private Optional<ClipShape<PagePoint>> clipped(
            Element child, Element shown, SvgScene inner, SvgScene target, VectorPath<PagePoint> outline)
            throws InputFault {
        ClipShape<PagePoint> whole = new ClipShape<>(outline, target.style().clipRule());
        Optional<Region<PagePoint>> byChild = region(child, inner);
        Optional<Region<PagePoint>> byShown = shown == child ? Optional.empty() : region(shown, target);
        if (byChild.isEmpty() && byShown.isEmpty()) {
            return Optional.of(whole);
        }
        Region<PagePoint> region = SvgRegions.of(outline, target.style().clipRule());
        region = byChild.isPresent() ? region.within(byChild.get()) : region;
        region = byShown.isPresent() ? region.within(byShown.get()) : region;
        return region.isEmpty() ? Optional.empty() : Optional.of(new ClipShape<>(region.outline(), FillRule.EVEN_ODD));
    }

    /** The region of the clip path that an element in a clip path names; empty if it names none. */
    private Optional<Region<PagePoint>> region(Element element, SvgScene scene) throws InputFault {
        Optional<Element> path = scene.style().stated("clip-path").flatMap(this::clipPath);
        if (path.isEmpty()) {
            return Optional.empty();
        }
        if (!open.add(path.get())) {
            return Optional.empty();
        }
        try {
            Optional<SvgScene> inner = inside(path.get(), element, scene);
            Optional<List<ClipShape<PagePoint>>> shapes =
                    inner.isEmpty() ? Optional.of(List.of()) : shapes(path.get(), inner.get());
            return shapes.map(SvgRegions::union);
        } finally {
            open.remove(path.get());
        }
    }
}
