package org.adumbrate.linework.svg;

import java.util.Optional;
import org.w3c.dom.Element;

/** Gradients (SVG 1.1, 13.2): whether anything is seen through them. */
final class SvgGradients {
    /** Gradients that take their stops from each other, at most so many. */
    private static final int DEEPEST = 20;

    private SvgGradients() {}

    /** Whether an element is a gradient whose stops are all solid; patterns have gaps, and are not. */
    static boolean isSolid(Element element, SvgDocument document) {
        Optional<Element> server = Optional.of(element);
        for (int depth = 0; depth < DEEPEST && server.isPresent(); depth++) {
            Element gradient = server.get();
            boolean known = gradient.getLocalName().equals("linearGradient")
                    || gradient.getLocalName().equals("radialGradient");
            if (!known) {
                return false;
            }
            Element stop = firstStop(gradient);
            if (stop != null) {
                return areSolid(stop, document);
            }
            server = document.referredTo(gradient);
        }
        return false;
    }

    private static Element firstStop(Element gradient) {
        Element child = SvgDocument.nextElement(gradient.getFirstChild());
        while (child != null && !child.getLocalName().equals("stop")) {
            child = SvgDocument.nextElement(child.getNextSibling());
        }
        return child;
    }

    private static boolean areSolid(Element first, SvgDocument document) {
        for (Element stop = first; stop != null; stop = SvgDocument.nextElement(stop.getNextSibling())) {
            document.read(stop);
            SvgStyle style = SvgStyle.INITIAL.with(document.stylesheet().declared(stop));
            if (stop.getLocalName().equals("stop") && !style.isStopSolid()) {
                return false;
            }
        }
        return true;
    }
}
