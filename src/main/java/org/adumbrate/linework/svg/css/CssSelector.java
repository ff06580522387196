package org.adumbrate.linework.svg.css;

import java.util.List;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * A selector of a style sheet (Selectors 4, 3): compound selectors, the last for the element itself.
 *
 * @param parts from the one for the element itself to the outermost
 */
record CssSelector(List<Part> parts) {
    /** How a part is joined to the one before it in the text (Selectors 4, 16). */
    enum Joint {
        /** There is none before it. */
        NONE,
        /** Anywhere within it. */
        DESCENDANT,
        /** A child of it. */
        CHILD,
        /** The next after it. */
        NEXT,
        /** Anywhere after it. */
        LATER
    }

    /** One compound selector. */
    record Part(String name, List<CssTest> tests, Joint joint) {
        boolean matches(Element element, MatchEffort effort) {
            effort.spend();
            if (!name.isEmpty() && !name.equals(element.getLocalName())) {
                return false;
            }
            for (CssTest test : tests) {
                if (!test.holds(element, effort)) {
                    return false;
                }
            }
            return true;
        }
    }

    /** How far a failure reaches: nothing that has failed for good is tried again further out. */
    private enum Outcome {
        MATCHES,
        FAILS_HERE,
        FAILS_FOR_SIBLINGS,
        FAILS
    }

    /** What the last part asks for first: a class, an id or a name, or {@code *} if any element will do. */
    String key() {
        Part last = parts.get(0);
        for (CssTest test : last.tests) {
            if (test instanceof CssTest.Id id) {
                return "#" + id.id();
            }
            if (test instanceof CssTest.Word word) {
                return "." + word.word();
            }
        }
        return last.name.isEmpty() ? "*" : last.name;
    }

    boolean matches(Element element, MatchEffort effort) {
        return match(element, 0, effort) == Outcome.MATCHES;
    }

    private Outcome match(Element element, int part, MatchEffort effort) {
        Part compound = parts.get(part);
        if (!compound.matches(element, effort)) {
            return Outcome.FAILS_HERE;
        }
        return switch (compound.joint) {
            case NONE -> Outcome.MATCHES;
            case DESCENDANT -> within(element, part + 1, effort);
            case CHILD -> {
                Element parent = parent(element);
                Outcome outcome = parent == null ? Outcome.FAILS : match(parent, part + 1, effort);
                yield isFinal(outcome) ? outcome : Outcome.FAILS_FOR_SIBLINGS;
            }
            case NEXT -> {
                Element before = before(element);
                yield before == null ? Outcome.FAILS_FOR_SIBLINGS : match(before, part + 1, effort);
            }
            case LATER -> after(element, part + 1, effort);
        };
    }

    private Outcome within(Element element, int part, MatchEffort effort) {
        for (Element e = parent(element); e != null; e = parent(e)) {
            Outcome outcome = match(e, part, effort);
            if (isFinal(outcome)) {
                return outcome;
            }
        }
        return Outcome.FAILS;
    }

    private Outcome after(Element element, int part, MatchEffort effort) {
        for (Element e = before(element); e != null; e = before(e)) {
            Outcome outcome = match(e, part, effort);
            if (isFinal(outcome) || outcome == Outcome.FAILS_FOR_SIBLINGS) {
                return outcome;
            }
        }
        return Outcome.FAILS_FOR_SIBLINGS;
    }

    private static boolean isFinal(Outcome outcome) {
        return outcome == Outcome.MATCHES || outcome == Outcome.FAILS;
    }

    static Element parent(Element element) {
        return element.getParentNode() instanceof Element parent ? parent : null;
    }

    private static Element before(Element element) {
        for (Node node = element.getPreviousSibling(); node != null; node = node.getPreviousSibling()) {
            if (node instanceof Element before) {
                return before;
            }
        }
        return null;
    }
}
