package org.adumbrate.linework.svg;

import java.awt.geom.AffineTransform;
import java.nio.file.Path;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Optional;
import java.util.Set;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.clip.Clip;
import org.adumbrate.linework.clip.TooIntricateException;
import org.w3c.dom.Element;

/** Goes through the elements that are drawn, in order, and tells a canvas of each. */
final class SvgWalk {
    static final int DEEPEST = 500;
    private static final int MOST_ELEMENTS = 2_000_000;

    /** What is wrong with a drawing that goes deeper. */
    static final String TOO_DEEP = "nests elements deeper than " + DEEPEST + " or draws more than " + MOST_ELEMENTS;

    private final Path file;
    private final SvgDocument document;
    private final SvgCanvas canvas;
    private final SvgEffects effects;
    private final SvgMarkers markers;
    private final boolean measuring;
    private final IdentityHashMap<Element, Optional<String>> names = new IdentityHashMap<>();

    /** The elements that are being drawn: what is used now, and whatever that stands in. */
    private final Set<Element> open = Collections.newSetFromMap(new IdentityHashMap<>());

    private int drawn;
    private int marked;
    private int inMarkers;

    /** What is drawn within an element. */
    @FunctionalInterface
    private interface Drawing {
        void draw() throws InputFault;
    }

    SvgWalk(Path file, SvgDocument document, SvgCanvas canvas) {
        this(file, document, canvas, new SvgMasks(file, document, canvas));
    }

    /** A walk within a mask, which knows the masks that are being made. */
    SvgWalk(Path file, SvgDocument document, SvgCanvas canvas, SvgMasks masks) {
        this(file, document, canvas, masks, /* measuring= */ false);
    }

    private SvgWalk(Path file, SvgDocument document, SvgCanvas canvas, SvgMasks masks, boolean measuring) {
        this.file = file;
        this.document = document;
        this.canvas = canvas;
        this.effects = new SvgEffects(new SvgClips(file, document, canvas), masks, canvas);
        this.markers = new SvgMarkers(document, this, canvas);
        this.measuring = measuring;
    }

    /** A walk past everything that has a shape, seen or not, without clips, masks and markers. */
    static SvgWalk measuring(Path file, SvgDocument document, SvgCanvas canvas) {
        return new SvgWalk(file, document, canvas, new SvgMasks(file, document, canvas), /* measuring= */ true);
    }

    /**
     * Draws a document.
     *
     * @param outer the page
     * @param frame how the page lies
     */
    void drawRoot(SvgScene outer, SvgPageFrame frame) throws InputFault {
        Element root = document.root();
        document.read(root);
        SvgStyle style = document.cascade().of(root);
        if (style.isDisplayed()) {
            SvgScene scene = outer.inside(style);
            SvgScene placed = scene.mapped(frame.toPage(SvgPlacing.ofRoot(scene, frame.widthPx(), frame.heightPx())));
            effects.apply(root, placed, shown -> drawChildren(root, shown));
        }
    }

    /** Draws an element and what is in it. */
    void draw(Element element, SvgScene outer) throws InputFault {
        count(outer);
        document.read(element);
        SvgStyle style = outer.style().with(document.cascade().declared(element));
        if (!SvgConditions.hold(element) || !(measuring ? style.isBoxed() : style.isDisplayed())) {
            return;
        }
        SvgScene scene = outer.inside(style);
        SvgScene placed = SvgPlacing.placed(scene, box -> SvgBounds.of(element, box, file, document));
        if (placed.toPage().getDeterminant() == 0) {
            return;
        }
        if (measuring) {
            drawContent(element, placed);
        } else {
            effects.apply(element, placed, shown -> drawContent(element, shown));
        }
    }

    private void count(SvgScene outer) throws InputFault {
        if (++drawn > MOST_ELEMENTS || outer.depth() > DEEPEST) {
            throw new InputFault(file, TOO_DEEP, "export it with its symbols resolved, or fewer objects at a time");
        }
        marked += inMarkers > 0 ? 1 : 0;
        if (marked > SvgExpansion.MOST_ELEMENTS) {
            throw new TooIntricateException(
                    "draws more than " + SvgExpansion.MOST_ELEMENTS + " elements by markers on its lines");
        }
    }

    /** Draws what an element shows, in the scene that its own style and transform make. */
    void drawContent(Element element, SvgScene scene) throws InputFault {
        switch (element.getLocalName()) {
            case "g", "a" -> drawChildren(element, scene.named(name(element)));
            case "svg" -> drawViewport(element, element, scene.named(name(element)));
            case "use" -> within(element, () -> drawUsed(element, scene));
            case "switch" -> within(element, () -> drawChosen(element, scene.named(name(element))));
            case "text", "image", "foreignObject" -> {
                if (scene.style().isVisible() || measuring) {
                    canvas.mark(element, scene);
                }
            }
            default -> drawShape(element, scene);
        }
    }

    private void drawChosen(Element alternatives, SvgScene scene) throws InputFault {
        Optional<Element> chosen = SvgConditions.chosen(alternatives);
        if (chosen.isPresent()) {
            draw(chosen.get(), scene);
        }
    }

    private void drawShape(Element element, SvgScene scene) throws InputFault {
        Optional<VectorPath<PagePoint>> outline = SvgShapes.outline(element, scene);
        if (outline.isEmpty() || !(scene.style().isVisible() || measuring)) {
            return;
        }
        if (measuring || !SvgMarkers.are(element, scene.style())) {
            canvas.shape(outline.get(), scene);
        } else {
            drawMarked(element, outline.get(), scene);
        }
    }

    private void drawMarked(Element element, VectorPath<PagePoint> outline, SvgScene scene) throws InputFault {
        SvgPaintOrder order = scene.style().paintOrder();
        switch (order.marks()) {
            case 0 -> {
                markers.draw(element, scene);
                canvas.shape(outline, scene);
            }
            case 1 -> {
                canvas.shape(outline, scene.styled(scene.style().without(order.strokeFirst() ? "fill" : "stroke")));
                markers.draw(element, scene);
                canvas.shape(outline, scene.styled(scene.style().without(order.strokeFirst() ? "stroke" : "fill")));
                if (order.strokeFirst()) {
                    // the area covers the inner half of its own outline, which is taken in its full width
                    canvas.told(LeftOut.Kind.EFFECT);
                }
            }
            default -> {
                canvas.shape(outline, scene);
                markers.draw(element, scene);
            }
        }
    }

    /** Draws what is in a marker, in a scene that is placed already. */
    void drawMarker(Element marker, SvgScene scene) throws InputFault {
        inMarkers++;
        effects.apply(marker, scene, shown -> drawChildren(marker, shown));
        inMarkers--;
    }

    /** Draws all that is in an element. */
    void drawChildren(Element element, SvgScene scene) throws InputFault {
        within(element, () -> {
            for (Element child = SvgDocument.nextElement(element.getFirstChild());
                    child != null;
                    child = SvgDocument.nextElement(child.getNextSibling())) {
                draw(child, scene);
            }
        });
    }

    private void within(Element element, Drawing content) throws InputFault {
        boolean entered = open.add(element);
        content.draw();
        if (entered) {
            open.remove(element);
        }
    }

    private void drawUsed(Element use, SvgScene scene) throws InputFault {
        Optional<Element> target = document.referredTo(use);
        if (target.isEmpty()) {
            if (SvgReference.leadsOutside(document.reference(use))) {
                canvas.told(LeftOut.Kind.OUTSIDE);
            }
            return;
        }
        if (open.contains(target.get())) {
            // a circular reference is invalid, and such a use is not rendered (SVG 2, 5.6)
            document.usedWithinItself(target.get());
            return;
        }
        SvgScene moved = scene.inside(scene.style().inContextOf(scene.style()))
                .moved(AffineTransform.getTranslateInstance(
                        SvgShapes.across(use, "x", scene), SvgShapes.down(use, "y", scene)));
        Element used = target.get();
        boolean symbol = used.getLocalName().equals("symbol");
        if (!symbol && !used.getLocalName().equals("svg")) {
            draw(used, moved);
            return;
        }
        document.read(used);
        SvgStyle style = moved.style().with(document.cascade().declared(used));
        if (SvgConditions.hold(used) && (symbol || measuring || style.isDisplayed())) {
            SvgScene inner = moved.inside(style);
            SvgScene placed = SvgPlacing.placed(inner, box -> SvgBounds.of(used, box, file, document));
            if (measuring) {
                drawViewport(used, use, placed);
            } else {
                effects.apply(used, placed, shown -> drawViewport(used, use, shown));
            }
        }
    }

    /** Draws what is in an inner svg or a symbol, whose size another element may state (SVG 2, 5.6 and 8.2). */
    private void drawViewport(Element element, Element sized, SvgScene outer) throws InputFault {
        double width = size("width", element, sized, outer, outer.width());
        double height = size("height", element, sized, outer, outer.height());
        if (width <= 0 || height <= 0) {
            return;
        }
        SvgScene scene = outer.moved(AffineTransform.getTranslateInstance(
                SvgShapes.across(element, "x", outer), SvgShapes.down(element, "y", outer)));
        boolean clips = !measuring && scene.style().clipsOverflow();
        Clip<PagePoint> clip = clips ? SvgClips.within(scene, width, height) : scene.clip();
        Optional<SvgViewBox> box = SvgViewBox.parse(element.getAttribute("viewBox"));
        SvgScene inner = box.map(b -> scene.moved(b.into(width, height, element.getAttribute("preserveAspectRatio")))
                        .sized(b.width(), b.height()))
                .orElseGet(() -> scene.sized(width, height));
        drawChildren(element, inner.clipped(clip));
    }

    private static double size(String attribute, Element element, Element sized, SvgScene scene, double whole) {
        Element stating = sized.hasAttribute(attribute) ? sized : element;
        return SvgShapes.stated(stating, attribute, scene, whole).orElse(whole);
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
