package org.adumbrate.linework.svg;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.adumbrate.linework.svg.css.CssDeclaration;
import org.adumbrate.linework.svg.css.CssStyles;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/**
 * The style of elements by presentation attributes, style sheets and style attributes, each weighing more than the one
 * before (CSS Cascade 4, 6; SVG 2, 6.6).
 */
final class SvgCascade {
    private final CssStyles styles;
    private final IdentityHashMap<Element, SvgStyle> byElement = new IdentityHashMap<>();

    SvgCascade(CssStyles styles) {
        this.styles = styles;
    }

    CssStyles styles() {
        return styles;
    }

    /** What is declared for an element; the names of properties in lower case, their values as written. */
    Map<String, String> declared(Element element) {
        Map<String, String> declared = new HashMap<>();
        NamedNodeMap attributes = element.getAttributes();
        for (int k = 0; k < attributes.getLength(); k++) {
            Node attribute = attributes.item(k);
            boolean presents =
                    attribute.getNamespaceURI() == null && SvgProperties.isAttribute(attribute.getLocalName());
            if (presents && SvgProperties.isSound(attribute.getLocalName(), attribute.getNodeValue())) {
                declared.put(attribute.getLocalName(), attribute.getNodeValue());
            }
        }
        List<List<CssDeclaration>> matching = styles.declared(element);
        String style = element.getAttribute("style");
        if (!style.isBlank()) {
            matching = new ArrayList<>(matching);
            matching.add(styles.attribute(style));
        }
        put(matching, /* important= */ false, declared);
        put(matching, /* important= */ true, declared);
        return declared;
    }

    private static void put(List<List<CssDeclaration>> matching, boolean important, Map<String, String> declared) {
        for (List<CssDeclaration> declarations : matching) {
            for (CssDeclaration declaration : declarations) {
                if (declaration.important() == important) {
                    declared.put(declaration.property(), declaration.value());
                }
            }
        }
    }

    /** The style of an element where it stands in the file, wherever it is used. */
    SvgStyle of(Element element) {
        SvgStyle known = byElement.get(element);
        if (known == null) {
            boolean inner = element.getParentNode() instanceof Element;
            SvgStyle outer = inner ? of((Element) element.getParentNode()) : SvgStyle.INITIAL;
            known = outer.with(declared(element));
            known = inner ? known : known.asRoot();
            byElement.put(element, known);
        }
        return known;
    }
}
