package org.adumbrate.linework.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.adumbrate.linework.svg.css.CssColor;
import org.w3c.dom.Element;

/** Gradients and patterns (SVG 2, 14): the colours in them, and whether anything is seen through them. */
final class SvgGradients {
    /** Gradients that take what they do not state from each other, at most so many. */
    private static final int DEEPEST = 20;

    private SvgGradients() {}

    /** Whether its coordinates are shares of the box of whatever it paints, as they are if it does not state it. */
    static boolean isByBox(Element server, SvgDocument document) {
        String attribute = server.getLocalName().equals("pattern") ? "patternUnits" : "gradientUnits";
        return stating(server, document, element -> element.hasAttribute(attribute))
                .map(element -> !element.getAttribute(attribute).equals("userSpaceOnUse"))
                .orElse(true);
    }

    /** The colours of a gradient: none without stops, one if all stops have the same or there is only one. */
    static SvgPaint gradient(Element gradient, SvgDocument document) {
        Optional<Element> stated = stating(gradient, document, element -> firstStop(element) != null);
        if (stated.isEmpty()) {
            return SvgPaint.NONE;
        }
        List<CssColor> colors = colors(firstStop(stated.get()), document);
        List<CssColor> seen = colors.stream().filter(color -> !color.isUnseen()).toList();
        if (seen.isEmpty()) {
            return SvgPaint.NONE;
        }
        CssColor first = seen.get(0);
        boolean one = seen.stream().allMatch(color -> color.srgb().equals(first.srgb()));
        boolean solid = colors.stream().allMatch(CssColor::isSolid);
        return new SvgPaint(one ? SvgPaint.Kind.COLOR : SvgPaint.Kind.GRADIENT, first, solid);
    }

    /** A pattern: it has gaps, and is not solid; nothing if there is nothing in it. */
    static SvgPaint pattern(Element pattern, SvgDocument document) {
        boolean empty = stating(pattern, document, element -> SvgDocument.nextElement(element.getFirstChild()) != null)
                .isEmpty();
        return empty ? SvgPaint.NONE : new SvgPaint(SvgPaint.Kind.PATTERN, CssColor.BLACK, /* solid= */ false);
    }

    /** The first of the servers that refer to each other that states something. */
    private static Optional<Element> stating(Element server, SvgDocument document, Predicate<Element> states) {
        Optional<Element> next = Optional.of(server);
        for (int depth = 0; depth < DEEPEST && next.isPresent(); depth++) {
            if (states.test(next.get())) {
                return next;
            }
            next = document.referredTo(next.get());
        }
        return Optional.empty();
    }

    private static Element firstStop(Element gradient) {
        Element child = SvgDocument.nextElement(gradient.getFirstChild());
        while (child != null && !child.getLocalName().equals("stop")) {
            child = SvgDocument.nextElement(child.getNextSibling());
        }
        return child;
    }

    private static List<CssColor> colors(Element first, SvgDocument document) {
        List<CssColor> colors = new ArrayList<>();
        for (Element stop = first; stop != null; stop = SvgDocument.nextElement(stop.getNextSibling())) {
            if (stop.getLocalName().equals("stop")) {
                document.read(stop);
                colors.add(document.cascade().of(stop).stopColor());
            }
        }
        return colors;
    }
}
