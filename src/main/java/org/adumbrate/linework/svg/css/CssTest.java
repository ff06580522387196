package org.adumbrate.linework.svg.css;

import java.util.List;
import java.util.Locale;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** One thing that a compound selector asks of an element, besides its name. */
sealed interface CssTest {
    boolean holds(Element element, MatchEffort effort);

    /** Its id (Selectors 4, 6.7). */
    record Id(String id) implements CssTest {
        @Override
        public boolean holds(Element element, MatchEffort effort) {
            return id.equals(element.getAttribute("id"));
        }
    }

    /** A class (6.6), one of the words of an attribute. */
    record Word(String word) implements CssTest {
        @Override
        public boolean holds(Element element, MatchEffort effort) {
            return Attribute.hasWord(element.getAttribute("class"), word);
        }
    }

    /**
     * An attribute (6.1 to 6.3).
     *
     * @param how empty if it need only be there; else the first character of the operator
     */
    record Attribute(String name, String how, String value, boolean anyCase) implements CssTest {
        @Override
        public boolean holds(Element element, MatchEffort effort) {
            if (!element.hasAttributeNS(null, name)) {
                return false;
            }
            String has = cased(element.getAttributeNS(null, name));
            String asked = cased(value);
            return switch (how) {
                case "" -> true;
                case "=" -> has.equals(asked);
                case "~" -> hasWord(has, asked);
                case "|" -> has.equals(asked) || has.startsWith(asked + "-");
                case "^" -> !asked.isEmpty() && has.startsWith(asked);
                case "$" -> !asked.isEmpty() && has.endsWith(asked);
                default -> !asked.isEmpty() && has.contains(asked);
            };
        }

        private String cased(String text) {
            return anyCase ? text.toLowerCase(Locale.ROOT) : text;
        }

        static boolean hasWord(String words, String word) {
            for (int at = words.indexOf(word); at >= 0 && !word.isEmpty(); at = words.indexOf(word, at + 1)) {
                int end = at + word.length();
                boolean begins = at == 0 || words.charAt(at - 1) <= ' ';
                if (begins && (end == words.length() || words.charAt(end) <= ' ')) {
                    return true;
                }
            }
            return false;
        }
    }

    /** Its place among its siblings (13.3, 13.4): one of the numbers a n + b. */
    record Nth(int a, int b, boolean ofType, boolean fromEnd) implements CssTest {
        @Override
        public boolean holds(Element element, MatchEffort effort) {
            SiblingPlaces.Place forth = effort.places().of(element);
            SiblingPlaces.Place place = fromEnd ? forth.fromEnd() : forth;
            int over = (ofType ? place.ofType() : place.place()) - b;
            return a == 0 ? over == 0 : over % a == 0 && over / a >= 0;
        }
    }

    /** That it is the outermost (13.1). */
    record Root() implements CssTest {
        @Override
        public boolean holds(Element element, MatchEffort effort) {
            return CssSelector.parent(element) == null;
        }
    }

    /** That it holds neither elements nor text (13.2). */
    record Empty() implements CssTest {
        @Override
        public boolean holds(Element element, MatchEffort effort) {
            for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
                boolean content = node instanceof Element || node instanceof org.w3c.dom.Text;
                if (content) {
                    return false;
                }
            }
            return true;
        }
    }

    /** The language of its text (9.2), or a longer form of it. */
    record Language(String language) implements CssTest {
        @Override
        public boolean holds(Element element, MatchEffort effort) {
            for (Element e = element; e != null; e = CssSelector.parent(e)) {
                String stated = e.hasAttribute("xml:lang") ? e.getAttribute("xml:lang") : e.getAttribute("lang");
                if (!stated.isEmpty()) {
                    String has = stated.toLowerCase(Locale.ROOT);
                    String asked = language.toLowerCase(Locale.ROOT);
                    return has.equals(asked) || has.startsWith(asked + "-");
                }
            }
            return false;
        }
    }

    /** What happens to a file only while somebody points at it (9.3, 10, 11). */
    record Never() implements CssTest {
        @Override
        public boolean holds(Element element, MatchEffort effort) {
            return false;
        }
    }

    /** That it matches any of several selectors (5.2), or none of them (5.1). */
    record Any(List<CssSelector> selectors, boolean wanted) implements CssTest {
        @Override
        public boolean holds(Element element, MatchEffort effort) {
            for (CssSelector selector : selectors) {
                if (selector.matches(element, effort)) {
                    return wanted;
                }
            }
            return !wanted;
        }
    }
}
