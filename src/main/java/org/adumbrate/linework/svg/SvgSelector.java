package org.adumbrate.linework.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;

/**
 * A selector of a style sheet: element names, classes and ids, nested or not. That is what drawing programs write;
 * anything else in a selector makes it match nothing.
 *
 * @param parts the compound selectors from the outermost to the one for the element itself
 */
record SvgSelector(List<Part> parts) {
    /** No program writes longer ones. */
    private static final int LONGEST = 1000;

    private static final String NAME = "[-_\\w\\u0080-\\uffff]+";
    private static final Pattern PART = Pattern.compile("(\\*|" + NAME + ")?((?:[.#]" + NAME + ")*)");
    private static final Pattern MARK = Pattern.compile("[.#]" + NAME);

    /** One compound selector; {@code child} if it must be a child of what the part before it matches. */
    private record Part(String name, List<String> marks, boolean child) {
        boolean matches(Element element) {
            if (!name.isEmpty() && !name.equals("*") && !name.equals(element.getLocalName())) {
                return false;
            }
            for (String mark : marks) {
                String word = mark.substring(1);
                boolean marked = mark.startsWith("#")
                        ? word.equals(element.getAttribute("id"))
                        : hasWord(element.getAttribute("class"), word);
                if (!marked) {
                    return false;
                }
            }
            return true;
        }

        private static boolean hasWord(String words, String word) {
            for (int at = words.indexOf(word); at >= 0; at = words.indexOf(word, at + 1)) {
                int end = at + word.length();
                boolean begins = at == 0 || words.charAt(at - 1) <= ' ';
                if (begins && (end == words.length() || words.charAt(end) <= ' ')) {
                    return true;
                }
            }
            return false;
        }
    }

    /** Reads one selector, without commas; empty if it is of a kind that is not known. */
    static Optional<SvgSelector> parse(String text) {
        List<Part> parts = new ArrayList<>();
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        boolean child = false;
        for (String word : text.replace(">", " > ").strip().split("\\s+", -1)) {
            if (word.equals(">")) {
                child = true;
                continue;
            }
            Matcher matcher = PART.matcher(word);
            if (word.isEmpty() || !matcher.matches()) {
                return Optional.empty();
            }
            String name = matcher.group(1) == null ? "" : matcher.group(1);
            List<String> marks =
                    MARK.matcher(matcher.group(2)).results().map(r -> r.group()).toList();
            parts.add(new Part(name, marks, child));
            child = false;
        }
        return parts.isEmpty() || child ? Optional.empty() : Optional.of(new SvgSelector(List.copyOf(parts)));
    }

    /** What the last part asks for first: a class, an id or a name, or {@code *} if any element will do. */
    String key() {
        Part last = parts.get(parts.size() - 1);
        return !last.marks.isEmpty() ? last.marks.get(0) : last.name.isEmpty() ? "*" : last.name;
    }

    /** How much it weighs against others (CSS 2.1, 6.4.3): ids before classes before names. */
    int specificity() {
        int weight = 0;
        for (Part part : parts) {
            weight += part.name.isEmpty() || part.name.equals("*") ? 0 : 1;
            for (String mark : part.marks) {
                weight += mark.startsWith("#") ? 10_000 : 100;
            }
        }
        return weight;
    }

    boolean matches(Element element) {
        Element matched = chainEnd(element, parts.size() - 1);
        int part = chainStart(parts.size() - 1);
        while (matched != null && part > 0) {
            matched = nearestAbove(matched, part - 1);
            part = chainStart(part - 1);
        }
        return matched != null;
    }

    /**
     * Where, from the ancestors of an element, the nearest lies at which a part and the parts that it must be a child of
     * match; null if there is none. The nearest will do: what stands further out in the selector may lie anywhere above.
     */
    private Element nearestAbove(Element element, int part) {
        for (Element e = parent(element); e != null; e = parent(e)) {
            Element end = chainEnd(e, part);
            if (end != null) {
                return end;
            }
        }
        return null;
    }

    /** Goes up from an element by parts that are children of each other; where that ends, or null if they do not match. */
    private Element chainEnd(Element element, int part) {
        Element e = element;
        int k = part;
        while (e != null && parts.get(k).matches(e)) {
            if (k == 0 || !parts.get(k).child) {
                return e;
            }
            e = parent(e);
            k--;
        }
        return null;
    }

    /** The outermost part of those that are children of each other, from a part on. */
    private int chainStart(int part) {
        int k = part;
        while (k > 0 && parts.get(k).child) {
            k--;
        }
        return k;
    }

    private static Element parent(Element element) {
        return element.getParentNode() instanceof Element parent ? parent : null;
    }
}
