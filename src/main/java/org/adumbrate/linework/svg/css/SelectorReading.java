package org.adumbrate.linework.svg.css;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.htmlunit.cssparser.parser.condition.AttributeCondition;
import org.htmlunit.cssparser.parser.condition.Condition;
import org.htmlunit.cssparser.parser.condition.IsPseudoClassCondition;
import org.htmlunit.cssparser.parser.condition.NotPseudoClassCondition;
import org.htmlunit.cssparser.parser.condition.WherePseudoClassCondition;
import org.htmlunit.cssparser.parser.selector.ChildSelector;
import org.htmlunit.cssparser.parser.selector.DescendantSelector;
import org.htmlunit.cssparser.parser.selector.DirectAdjacentSelector;
import org.htmlunit.cssparser.parser.selector.ElementSelector;
import org.htmlunit.cssparser.parser.selector.GeneralAdjacentSelector;
import org.htmlunit.cssparser.parser.selector.Selector;
import org.htmlunit.cssparser.parser.selector.SelectorList;

/** Turns selectors as the library parses them into such as can be asked of elements. */
final class SelectorReading {
    private static final Pattern PLACE = Pattern.compile(
            "nth-(last-)?(child|of-type)\\(\\s*(?:(odd|even)|(?:([+-]?\\d*)n\\s*)?(?:([+-]?)\\s*(\\d+))?)\\s*\\)");
    private static final Set<String> NEVER = Set.of(
            "active",
            "any-link",
            "checked",
            "disabled",
            "enabled",
            "focus",
            "focus-visible",
            "focus-within",
            "hover",
            "link",
            "target",
            "visited");

    private SelectorReading() {}

    /** Reads a selector; empty if it asks for something that is not known here. */
    static Optional<CssSelector> of(Selector selector) {
        List<CssSelector.Part> parts = new ArrayList<>();
        Selector rest = selector;
        while (rest != null) {
            CssSelector.Joint joint = CssSelector.Joint.NONE;
            Selector outer = null;
            if (rest instanceof ChildSelector child) {
                joint = CssSelector.Joint.CHILD;
                outer = child.getAncestorSelector();
            } else if (rest instanceof DescendantSelector descendant) {
                joint = CssSelector.Joint.DESCENDANT;
                outer = descendant.getAncestorSelector();
            } else if (rest instanceof DirectAdjacentSelector next) {
                joint = CssSelector.Joint.NEXT;
                outer = next.getSelector();
            } else if (rest instanceof GeneralAdjacentSelector later) {
                joint = CssSelector.Joint.LATER;
                outer = later.getSelector();
            }
            if (!(rest.getSimpleSelector() instanceof ElementSelector compound)) {
                return Optional.empty();
            }
            Optional<CssSelector.Part> part = part(compound, joint);
            if (part.isEmpty()) {
                return Optional.empty();
            }
            parts.add(part.get());
            rest = outer;
        }
        return Optional.of(new CssSelector(List.copyOf(parts)));
    }

    private static Optional<CssSelector.Part> part(ElementSelector compound, CssSelector.Joint joint) {
        List<CssTest> tests = new ArrayList<>();
        if (compound.getConditions() != null) {
            for (Condition condition : compound.getConditions()) {
                Optional<CssTest> test = test(condition);
                if (test.isEmpty()) {
                    return Optional.empty();
                }
                tests.add(test.get());
            }
        }
        String name = compound.getLocalName() == null ? "" : compound.getLocalName();
        return Optional.of(new CssSelector.Part(name.equals("*") ? "" : name, List.copyOf(tests), joint));
    }

    private static Optional<CssTest> test(Condition condition) {
        String value = condition.getValue();
        return switch (condition.getConditionType()) {
            case ID_CONDITION -> Optional.of(new CssTest.Id(value));
            case CLASS_CONDITION -> Optional.of(new CssTest.Word(value));
            case LANG_CONDITION -> Optional.of(new CssTest.Language(value));
            case ATTRIBUTE_CONDITION,
                    ONE_OF_ATTRIBUTE_CONDITION,
                    BEGIN_HYPHEN_ATTRIBUTE_CONDITION,
                    PREFIX_ATTRIBUTE_CONDITION,
                    SUFFIX_ATTRIBUTE_CONDITION,
                    SUBSTRING_ATTRIBUTE_CONDITION -> attribute((AttributeCondition) condition);
            case PSEUDO_CLASS_CONDITION -> pseudoClass(value.toLowerCase(Locale.ROOT));
            case IS_PSEUDO_CLASS_CONDITION -> any(((IsPseudoClassCondition) condition).getSelectors());
            case WHERE_PSEUDO_CLASS_CONDITION -> any(((WherePseudoClassCondition) condition).getSelectors());
            case NOT_PSEUDO_CLASS_CONDITION -> {
                Optional<List<CssSelector>> selectors = all(((NotPseudoClassCondition) condition).getSelectors());
                yield selectors.map(list -> new CssTest.Any(list, /* wanted= */ false));
            }
            default -> Optional.empty();
        };
    }

    private static Optional<CssTest> attribute(AttributeCondition attribute) {
        boolean present = attribute.getValue() == null;
        return Optional.of(new CssTest.Attribute(
                attribute.getLocalName(),
                present ? "" : attribute.getOperator().substring(0, 1),
                present ? "" : attribute.getValue(),
                attribute.isCaseInSensitive()));
    }

    /** A list that forgives: what is not known in it matches nothing (Selectors 4, 5.2). */
    private static Optional<CssTest> any(SelectorList list) {
        List<CssSelector> known = new ArrayList<>();
        for (Selector selector : list) {
            of(selector).ifPresent(known::add);
        }
        return Optional.of(new CssTest.Any(List.copyOf(known), /* wanted= */ true));
    }

    private static Optional<List<CssSelector>> all(SelectorList list) {
        List<CssSelector> known = new ArrayList<>();
        for (Selector selector : list) {
            of(selector).ifPresent(known::add);
        }
        return known.size() == list.size() ? Optional.of(List.copyOf(known)) : Optional.empty();
    }

    private static Optional<CssTest> pseudoClass(String name) {
        if (NEVER.contains(name)) {
            return Optional.of(new CssTest.Never());
        }
        return switch (name) {
            case "root" -> Optional.of(new CssTest.Root());
            case "empty" -> Optional.of(new CssTest.Empty());
            case "first-child" -> Optional.of(new CssTest.Nth(0, 1, false, false));
            case "last-child" -> Optional.of(new CssTest.Nth(0, 1, false, true));
            case "first-of-type" -> Optional.of(new CssTest.Nth(0, 1, true, false));
            case "last-of-type" -> Optional.of(new CssTest.Nth(0, 1, true, true));
            case "only-child" -> only(false);
            case "only-of-type" -> only(true);
            default -> nth(name);
        };
    }

    private static Optional<CssTest> only(boolean ofType) {
        CssTest first = new CssTest.Nth(0, 1, ofType, false);
        CssTest last = new CssTest.Nth(0, 1, ofType, true);
        CssSelector.Part both = new CssSelector.Part("", List.of(first, last), CssSelector.Joint.NONE);
        return Optional.of(new CssTest.Any(List.of(new CssSelector(List.of(both))), /* wanted= */ true));
    }

    /** The notation a n + b (CSS Syntax 3, 6). */
    private static Optional<CssTest> nth(String name) {
        Matcher place = PLACE.matcher(name);
        if (!place.matches()) {
            return Optional.empty();
        }
        boolean fromEnd = place.group(1) != null;
        boolean ofType = place.group(2).equals("of-type");
        if (place.group(3) != null) {
            return Optional.of(new CssTest.Nth(2, place.group(3).equals("odd") ? 1 : 0, ofType, fromEnd));
        }
        boolean steps = place.group(4) != null;
        if (!steps && place.group(6) == null) {
            return Optional.empty();
        }
        try {
            int a = steps ? step(place.group(4)) : 0;
            int b = place.group(6) == null ? 0 : Integer.parseInt(place.group(5) + place.group(6));
            return Optional.of(new CssTest.Nth(a, b, ofType, fromEnd));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    private static int step(String written) {
        return switch (written) {
            case "", "+" -> 1;
            case "-" -> -1;
            default -> Integer.parseInt(written);
        };
    }
}
