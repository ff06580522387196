package org.adumbrate.linework.svg;

import java.util.Set;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Finds lengths in units that a sheet by itself does not settle: those of a window or a container (CSS Values and Units Level 4, 6.1.2;
 * CSS Containment Level 3, 7) and those of a font's own measures (Level 4, 6.1.1). They are taken as not stated.
 */
final class SvgUnits {
    private static final Pattern UNSETTLED =
            Pattern.compile("(?i)(?<![\\w.#-])[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:e[-+]?\\d+)?"
                    + "(?:[sld]?v(?:w|h|i|b|min|max)|cq(?:w|h|i|b|min|max)|r?lh|r?cap|ric|rex|rch)(?![\\w-])");

    /** Attributes that hold lengths, or declarations that may. */
    private static final Set<String> ATTRIBUTES = Set.of(
            "x",
            "y",
            "x1",
            "y1",
            "x2",
            "y2",
            "cx",
            "cy",
            "r",
            "rx",
            "ry",
            "width",
            "height",
            "points",
            "transform",
            "style",
            "stroke-width",
            "stroke-dasharray",
            "stroke-dashoffset",
            "font-size",
            "refX",
            "refY",
            "markerWidth",
            "markerHeight");

    private SvgUnits() {}

    /** How many such lengths an element and what it holds state, style sheets included. */
    static int unsettled(Element element) {
        int count = element.getLocalName() != null && element.getLocalName().equals("style")
                ? count(element.getTextContent())
                : 0;
        for (int k = 0; k < element.getAttributes().getLength(); k++) {
            Node attribute = element.getAttributes().item(k);
            count += ATTRIBUTES.contains(attribute.getNodeName()) ? count(attribute.getNodeValue()) : 0;
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            count += child instanceof Element inner ? unsettled(inner) : 0;
        }
        return count;
    }

    private static int count(String text) {
        return (int) UNSETTLED.matcher(text).results().count();
    }
}
