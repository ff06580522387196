package org.adumbrate.linework.svg;

import java.util.Locale;
import java.util.Optional;
import org.w3c.dom.Element;

/** Conditional processing (SVG 2, 5.8), for a reader of English on any machine, so that a file is read alike everywhere. */
final class SvgConditions {
    private static final String LANGUAGE = "en";

    private SvgConditions() {}

    /** Whether an element is drawn as far as its conditions tell; no extension is known. */
    static boolean hold(Element element) {
        return !element.hasAttribute("requiredExtensions")
                && (!element.hasAttribute("systemLanguage") || isRead(element.getAttribute("systemLanguage")));
    }

    /** The first child of a switch whose conditions hold. */
    static Optional<Element> chosen(Element alternatives) {
        Element child = SvgDocument.nextElement(alternatives.getFirstChild());
        while (child != null && !hold(child)) {
            child = SvgDocument.nextElement(child.getNextSibling());
        }
        return Optional.ofNullable(child);
    }

    private static boolean isRead(String languages) {
        for (String language : languages.toLowerCase(Locale.ROOT).split(",", -1)) {
            if (language.strip().equals(LANGUAGE) || language.strip().startsWith(LANGUAGE + "-")) {
                return true;
            }
        }
        return false;
    }
}
