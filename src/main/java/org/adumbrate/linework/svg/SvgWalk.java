package org.adumbrate.linework.svg;

import java.awt.geom.AffineTransform;
import java.nio.file.Path;
import java.util.IdentityHashMap;
import java.util.Optional;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.clip.Clip;
import org.w3c.dom.Element;

/** Goes through the elements that are drawn, in order, and tells a canvas of each. */
final class SvgWalk {
    static final int DEEPEST = 500;
    private static final int MOST_ELEMENTS = 2_000_000;

    /** What is wrong with a drawing that goes deeper; one that uses itself does so without end. */
    static final String TOO_DEEP = "nests elements deeper than " + DEEPEST + " or draws more than " + MOST_ELEMENTS;

    private final Path file;
    private final SvgDocument document;
    private final SvgClips clips;
    private final SvgCanvas canvas;
    private final IdentityHashMap<Element, Optional<String>> names = new IdentityHashMap<>();
    private int drawn;

    SvgWalk(Path file, SvgDocument document, SvgCanvas canvas) {
        this.file = file;
        this.document = document;
        this.clips = new SvgClips(document);
        this.canvas = canvas;
    }

    /** Draws an element and what is in it. */
    void draw(Element element, SvgScene outer) throws InputFault {
        if (++drawn > MOST_ELEMENTS || outer.depth() > DEEPEST) {
            throw new InputFault(file, TOO_DEEP, "export it with its symbols resolved, or fewer objects at a time");
        }
        document.read(element);
        SvgStyle style = outer.style().with(document.stylesheet().declared(element));
        if (style.isDisplayed()) {
            SvgScene level = style.isSeenThrough() ? outer.apart(canvas.painted()) : outer;
            SvgScene scene = level.inside(style).moved(SvgTransform.parse(element.getAttribute("transform")));
            drawDisplayed(element, scene.clipped(clips.within(scene)));
        }
    }

    private void drawDisplayed(Element element, SvgScene scene) throws InputFault {
        switch (element.getLocalName()) {
            case "g", "a" -> drawChildren(element, scene.named(name(element)));
            case "svg" -> drawViewport(element, element, scene.named(name(element)));
            case "use" -> drawUsed(element, scene);
            case "switch" -> drawSwitch(element, scene);
            case "text", "image", "foreignObject" -> {
                if (scene.style().isVisible()) {
                    canvas.mark(element, scene);
                }
            }
            default -> {
                Optional<VectorPath<PagePoint>> outline = SvgShapes.outline(element, scene);
                if (outline.isPresent() && scene.style().isVisible()) {
                    canvas.shape(outline.get(), scene);
                }
            }
        }
    }

    /** Draws all that is in an element. */
    void drawChildren(Element element, SvgScene scene) throws InputFault {
        for (Element child = SvgDocument.nextElement(element.getFirstChild());
                child != null;
                child = SvgDocument.nextElement(child.getNextSibling())) {
            draw(child, scene);
        }
    }

    /** Draws the first alternative that needs nothing but SVG. */
    private void drawSwitch(Element element, SvgScene scene) throws InputFault {
        for (Element child = SvgDocument.nextElement(element.getFirstChild());
                child != null;
                child = SvgDocument.nextElement(child.getNextSibling())) {
            if (!child.hasAttribute("requiredExtensions")) {
                draw(child, scene);
                return;
            }
        }
    }

    private void drawUsed(Element use, SvgScene scene) throws InputFault {
        Optional<Element> target = document.referredTo(use);
        if (target.isEmpty()) {
            return;
        }
        SvgScene moved = scene.moved(AffineTransform.getTranslateInstance(
                SvgShapes.across(use, "x", scene), SvgShapes.down(use, "y", scene)));
        Element used = target.get();
        boolean symbol = used.getLocalName().equals("symbol");
        if (symbol || used.getLocalName().equals("svg")) {
            SvgStyle style = scene.style().with(document.stylesheet().declared(used));
            if (symbol || style.isDisplayed()) {
                SvgScene level = style.isSeenThrough() ? moved.apart(canvas.painted()) : moved;
                drawViewport(used, use, level.inside(style));
            }
        } else {
            draw(used, moved);
        }
    }

    /** Draws what is in an inner svg or a symbol, whose size another element may state (SVG 1.1, 5.6). */
    private void drawViewport(Element element, Element sized, SvgScene outer) throws InputFault {
        double width = size("width", element, sized, outer.width());
        double height = size("height", element, sized, outer.height());
        if (width <= 0 || height <= 0) {
            return;
        }
        SvgScene scene = outer.moved(AffineTransform.getTranslateInstance(
                SvgShapes.across(element, "x", outer), SvgShapes.down(element, "y", outer)));
        Clip<PagePoint> clip = scene.style().clipsOverflow() ? clips.within(scene, width, height) : scene.clip();
        Optional<SvgViewBox> box = SvgViewBox.parse(element.getAttribute("viewBox"));
        SvgScene inner = box.map(b -> scene.moved(b.into(width, height, element.getAttribute("preserveAspectRatio")))
                        .sized(b.width(), b.height()))
                .orElseGet(() -> scene.sized(width, height));
        drawChildren(element, inner.clipped(clip));
    }

    private static double size(String attribute, Element element, Element sized, double whole) {
        Element stating = sized.hasAttribute(attribute) ? sized : element;
        return SvgLength.parse(stating.getAttribute(attribute))
                .map(length -> length.user(whole))
                .orElse(whole);
    }

    /** What a group is called: its title, or else its id. */
    private Optional<String> name(Element group) {
        return names.computeIfAbsent(group, SvgWalk::nameOf);
    }

    private static Optional<String> nameOf(Element group) {
        for (Element child = SvgDocument.nextElement(group.getFirstChild());
                child != null;
                child = SvgDocument.nextElement(child.getNextSibling())) {
            if (child.getLocalName().equals("title") && !child.getTextContent().isBlank()) {
                return Optional.of(child.getTextContent().strip());
            }
        }
        return Optional.of(group.getAttribute("id")).filter(id -> !id.isEmpty());
    }
}
