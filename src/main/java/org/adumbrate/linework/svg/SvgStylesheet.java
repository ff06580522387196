package org.adumbrate.linework.svg;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.StringTokenizer;
import org.adumbrate.linework.clip.TooIntricateException;
import org.w3c.dom.Element;

/**
 * The style of elements by presentation attributes, style sheets and style attributes, each weighing more than the one
 * before (CSS 2.1, 6.4). At-rules are passed over, and with them anything that would have to be fetched.
 */
final class SvgStylesheet {
    private static final String IMPORTANT = "!important";

    /** Drawing programs write a class for every pen; a few hundred are many. */
    private static final int MOST_RULES = 20_000;

    /** Rules looked at, for all elements. */
    private static final int MOST_LOOKS = 10_000_000;

    private record Rule(SvgSelector selector, int place, Map<String, String> declarations) {}

    /** Lighter rules before heavier ones, and of the same weight the first before the last. */
    private static final Comparator<Rule> LIGHTEST_FIRST =
            Comparator.comparingInt((Rule rule) -> rule.selector.specificity()).thenComparingInt(Rule::place);

    private final Map<String, List<Rule>> rules = new HashMap<>();
    private int count;
    private long looks;

    /** @param text all style sheets of the document, one after the other */
    SvgStylesheet(String text) {
        String css = withoutComments(text);
        int at = 0;
        for (int open = css.indexOf('{'); open >= 0; open = css.indexOf('{', at)) {
            String head = css.substring(at, open).strip();
            int statement = head.startsWith("@") ? head.lastIndexOf(';') : -1;
            String selectors =
                    statement < 0 ? head : head.substring(statement + 1).strip();
            int end = endOfBlock(css, open);
            if (!selectors.startsWith("@")) {
                addRules(selectors, declarations(css.substring(open + 1, end)));
            }
            at = Math.min(css.length(), end + 1);
        }
    }

    /** What is declared for an element; the names of properties in lower case, their values as written. */
    Map<String, String> declared(Element element) {
        Map<String, String> declared = new HashMap<>();
        for (String property : SvgStyle.PROPERTIES) {
            String value = element.getAttribute(property);
            if (!value.isEmpty()) {
                declared.put(property, value);
            }
        }
        List<Map<String, String>> matching = new ArrayList<>();
        candidates(element).stream()
                .filter(rule -> rule.selector.matches(element))
                .sorted(LIGHTEST_FIRST)
                .forEach(rule -> matching.add(rule.declarations));
        String style = element.getAttribute("style");
        if (!style.isEmpty()) {
            matching.add(declarations(style));
        }
        matching.forEach(declarations -> put(declarations, /* important= */ false, declared));
        matching.forEach(declarations -> put(declarations, /* important= */ true, declared));
        return declared;
    }

    /** The rules whose selector asks first for something that the element has. */
    private List<Rule> candidates(Element element) {
        if (rules.isEmpty()) {
            return List.of();
        }
        List<Rule> candidates = new ArrayList<>();
        looks++;
        addCandidates("*", candidates);
        addCandidates(element.getLocalName(), candidates);
        addCandidates("#" + element.getAttribute("id"), candidates);
        StringTokenizer classes = new StringTokenizer(element.getAttribute("class"));
        while (classes.hasMoreTokens()) {
            addCandidates("." + classes.nextToken(), candidates);
        }
        return candidates;
    }

    private void addCandidates(String key, List<Rule> candidates) {
        List<Rule> found = rules.getOrDefault(key, List.of());
        looks += found.size();
        if (looks > MOST_LOOKS) {
            throw new TooIntricateException("has style rules that take more than " + MOST_LOOKS + " steps to apply");
        }
        candidates.addAll(found);
    }

    private static void put(Map<String, String> declarations, boolean important, Map<String, String> declared) {
        declarations.forEach((property, value) -> {
            if (value.endsWith(IMPORTANT) == important) {
                declared.put(property, value.replace(IMPORTANT, "").strip());
            }
        });
    }

    private void addRules(String selectors, Map<String, String> declarations) {
        for (String selector : selectors.split(",", -1)) {
            SvgSelector.parse(selector)
                    .ifPresent(parsed -> rules.computeIfAbsent(parsed.key(), key -> new ArrayList<>())
                            .add(new Rule(parsed, count++, declarations)));
            if (count > MOST_RULES) {
                throw new TooIntricateException("has more than " + MOST_RULES + " style rules");
            }
        }
    }

    private static String withoutComments(String text) {
        StringBuilder css = new StringBuilder(text.length());
        int at = 0;
        for (int open = text.indexOf("/*"); open >= 0; open = text.indexOf("/*", at)) {
            css.append(text, at, open).append(' ');
            int end = text.indexOf("*/", open + 2);
            at = end < 0 ? text.length() : end + 2;
        }
        return css.append(text, at, text.length())
                .toString()
                .replace("<!--", " ")
                .replace("-->", " ");
    }

    private static Map<String, String> declarations(String block) {
        Map<String, String> declarations = new HashMap<>();
        for (String declaration : block.split(";", -1)) {
            int colon = declaration.indexOf(':');
            String property =
                    declaration.substring(0, Math.max(0, colon)).strip().toLowerCase(Locale.ROOT);
            if (SvgStyle.PROPERTIES.contains(property)) {
                declarations.put(
                        property, markedPlainly(declaration.substring(colon + 1).strip()));
            }
        }
        return declarations;
    }

    /** A value whose mark of importance, if it has one, is written in one way. */
    private static String markedPlainly(String value) {
        int mark = value.lastIndexOf('!');
        boolean important = mark >= 0 && value.substring(mark + 1).strip().equalsIgnoreCase("important");
        return important ? value.substring(0, mark).strip() + IMPORTANT : value;
    }

    /** The place of the brace that closes a block, or the end of the text. */
    private static int endOfBlock(String css, int open) {
        int depth = 0;
        for (int k = open; k < css.length(); k++) {
            depth += css.charAt(k) == '{' ? 1 : css.charAt(k) == '}' ? -1 : 0;
            if (depth == 0) {
                return k;
            }
        }
        return css.length();
    }
}
