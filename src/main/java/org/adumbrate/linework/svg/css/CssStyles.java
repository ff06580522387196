package org.adumbrate.linework.svg.css;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.StringTokenizer;
import java.util.function.BiPredicate;
import org.adumbrate.linework.clip.TooIntricateException;
import org.htmlunit.cssparser.dom.AbstractCSSRuleImpl;
import org.htmlunit.cssparser.dom.CSSImportRuleImpl;
import org.htmlunit.cssparser.dom.CSSMediaRuleImpl;
import org.htmlunit.cssparser.dom.CSSStyleRuleImpl;
import org.htmlunit.cssparser.dom.CSSStyleSheetImpl;
import org.htmlunit.cssparser.dom.CSSUnknownRuleImpl;
import org.htmlunit.cssparser.dom.MediaListImpl;
import org.htmlunit.cssparser.parser.selector.Selector;
import org.w3c.dom.Element;

/**
 * All style sheets of a document, as they hold on a screen: so browsers show a file, and so whoever exported it has seen it. Nothing
 * that they import is fetched.
 */
public final class CssStyles {
    /** Drawing programs write a class for every pen; a few hundred are many. */
    private static final int MOST_RULES = 20_000;

    /** Style attributes that are remembered, as most are written again and again. */
    private static final int MOST_KEPT = 10_000;

    /** Lighter rules before heavier ones, and of the same weight the first before the last. */
    private static final Comparator<CssRule> LIGHTEST_FIRST =
            Comparator.comparing(CssRule::specificity).thenComparingInt(CssRule::place);

    private final CssPage page;
    private final BiPredicate<String, String> sound;
    private final Map<String, List<CssRule>> rules = new HashMap<>();
    private final MatchEffort effort = new MatchEffort();
    private final Map<String, List<CssDeclaration>> attributes = new HashMap<>();
    private final Set<CssRule> ofOneMedium = new HashSet<>();
    private final Set<String> imports = new LinkedHashSet<>();
    private Optional<CssReader> reader = Optional.empty();
    private int count;
    private int unknown;

    /**
     * Styles of a document that has none yet.
     *
     * @param sound whether a property of that name can be set to that value; others are passed over
     */
    public CssStyles(CssPage page, BiPredicate<String, String> sound) {
        this.page = page;
        this.sound = sound;
    }

    /**
     * Adds a style sheet.
     *
     * @param media where it holds, as it is written; blank for everywhere
     */
    public void add(String text, String media) {
        CssMedia where = CssMedia.ALL;
        if (!media.isBlank()) {
            where = where(new MediaListImpl(reader().media(media)));
        }
        if (!where.isNowhere() && !text.isBlank()) {
            Optional<CSSStyleSheetImpl> sheet = reader().sheet(text);
            if (sheet.isPresent()) {
                addAll(sheet.get().getCssRules().getRules(), where);
            }
        }
    }

    private CssReader reader() {
        if (reader.isEmpty()) {
            reader = Optional.of(new CssReader(sound));
        }
        return reader.get();
    }

    private void addAll(List<AbstractCSSRuleImpl> parsed, CssMedia media) {
        for (AbstractCSSRuleImpl rule : parsed) {
            if (rule instanceof CSSStyleRuleImpl style) {
                add(style, media);
            } else if (rule instanceof CSSMediaRuleImpl block) {
                CssMedia inner = media.and(where(block.getMediaList()));
                if (!inner.isNowhere()) {
                    addAll(block.getCssRules().getRules(), inner);
                }
            } else if (rule instanceof CSSImportRuleImpl outside) {
                imports.add(outside.getHref());
            } else if (rule instanceof CSSUnknownRuleImpl) {
                unknown += CssAtRules.styles(rule.getCssText()) ? 1 : 0;
            }
        }
    }

    private void add(CSSStyleRuleImpl style, CssMedia media) {
        List<CssDeclaration> declarations = reader().declarations(style.getStyle());
        List<CssRule> read = new ArrayList<>();
        for (Selector selector : style.getSelectors()) {
            Optional<CssSelector> known = SelectorReading.of(selector);
            if (known.isEmpty()) {
                // one selector that is not known spoils the list (Selectors 4, 4.1)
                unknown++;
                return;
            }
            read.add(new CssRule(known.get(), selector.getSelectorSpecificity(), count++, declarations, media));
            if (count > MOST_RULES) {
                throw new TooIntricateException("has more than " + MOST_RULES + " style rules");
            }
        }
        for (CssRule rule : declarations.isEmpty() ? List.<CssRule>of() : read) {
            rules.computeIfAbsent(rule.selector().key(), key -> new ArrayList<>())
                    .add(rule);
        }
    }

    private CssMedia where(MediaListImpl list) {
        if (list.getLength() == 0) {
            return CssMedia.ALL;
        }
        CssMedia where = new CssMedia(/* screen= */ false, /* print= */ false);
        for (int k = 0; k < list.getLength(); k++) {
            CssMedia one = page.media(list.mediaQuery(k));
            where = new CssMedia(where.screen() || one.screen(), where.print() || one.print());
        }
        return where;
    }

    /** What rules declare for an element, the lightest first. */
    public List<List<CssDeclaration>> declared(Element element) {
        if (rules.isEmpty()) {
            return List.of();
        }
        List<CssRule> matching = new ArrayList<>();
        for (CssRule rule : candidates(element)) {
            if (rule.selector().matches(element, effort)) {
                if (rule.media().tellsApart()) {
                    ofOneMedium.add(rule);
                }
                if (rule.media().screen()) {
                    matching.add(rule);
                }
            }
        }
        matching.sort(LIGHTEST_FIRST);
        return matching.stream().map(CssRule::declarations).toList();
    }

    /** The rules whose selector asks first for something that the element has. */
    private List<CssRule> candidates(Element element) {
        List<CssRule> candidates = new ArrayList<>(rules.getOrDefault("*", List.of()));
        candidates.addAll(rules.getOrDefault(element.getLocalName(), List.of()));
        candidates.addAll(rules.getOrDefault("#" + element.getAttribute("id"), List.of()));
        StringTokenizer classes = new StringTokenizer(element.getAttribute("class"));
        while (classes.hasMoreTokens()) {
            candidates.addAll(rules.getOrDefault("." + classes.nextToken(), List.of()));
            effort.spend();
        }
        return candidates;
    }

    /** What a style attribute declares. */
    public List<CssDeclaration> attribute(String text) {
        List<CssDeclaration> known = attributes.get(text);
        if (known == null) {
            known = reader().declarations(text);
            if (attributes.size() < MOST_KEPT) {
                attributes.put(text, known);
            }
        }
        return known;
    }

    /** How many rules were met that are not understood. */
    public int rulesNotUnderstood() {
        return unknown + reader.map(CssReader::rulesPassedOver).orElse(0);
    }

    /** How many rules that speak of elements asked for so far hold only on a screen or only on paper. */
    public int rulesOfOneMedium() {
        return ofOneMedium.size();
    }

    /** How many other style sheets were to be imported. */
    public int imports() {
        return imports.size();
    }
}
