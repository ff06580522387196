package org.adumbrate.linework.svg.css;

import java.util.List;
import org.htmlunit.cssparser.parser.selector.SelectorSpecificity;

/**
 * A rule with one selector.
 *
 * @param specificity how much it weighs against others (Selectors 4, 17)
 * @param place its number among all rules
 * @param media where it holds
 */
record CssRule(
        CssSelector selector,
        SelectorSpecificity specificity,
        int place,
        List<CssDeclaration> declarations,
        CssMedia media) {}
