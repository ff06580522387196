package org.adumbrate.linework.svg.css;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiPredicate;
import org.adumbrate.linework.clip.TooIntricateException;
import org.htmlunit.cssparser.dom.CSSStyleDeclarationImpl;
import org.htmlunit.cssparser.dom.CSSStyleSheetImpl;
import org.htmlunit.cssparser.dom.Property;
import org.htmlunit.cssparser.parser.CSSErrorHandler;
import org.htmlunit.cssparser.parser.CSSOMParser;
import org.htmlunit.cssparser.parser.CSSParseException;
import org.htmlunit.cssparser.parser.InputSource;
import org.htmlunit.cssparser.parser.javacc.CSS3Parser;
import org.htmlunit.cssparser.parser.media.MediaQueryList;

/** Asks the library, within bounds: it goes into brackets by calling itself. */
final class CssReader {
    private static final int DEEPEST = 100;

    /** Of a selector, or of anything else between brackets; no program writes longer ones. */
    private static final int LONGEST_WORDS = 20_000;

    private final BiPredicate<String, String> sound;
    private final CSSOMParser parser = new CSSOMParser(new CSS3Parser());
    private int rulesPassedOver;

    /** @param sound whether a property of that name can be set to that value; one that cannot is not set at all */
    CssReader(BiPredicate<String, String> sound) {
        this.sound = sound;
        parser.setErrorHandler(new Counter());
    }

    /** How many rules could not be read. */
    int rulesPassedOver() {
        return rulesPassedOver;
    }

    /** Empty, and counted as a rule that could not be read, if it has brackets too deep within each other for the library. */
    Optional<CSSStyleSheetImpl> sheet(String text) {
        if (!isShallow(text)) {
            rulesPassedOver++;
            return Optional.empty();
        }
        try {
            return Optional.of(parser.parseStyleSheet(new InputSource(new StringReader(text)), null));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    MediaQueryList media(String text) {
        require(isShallow(text));
        try {
            return parser.parseMedia(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The declarations of an attribute (CSS Style Attributes, 3). */
    List<CssDeclaration> declarations(String text) {
        require(isShallow(text));
        try {
            return declarations(parser.parseStyleDeclaration(text));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    List<CssDeclaration> declarations(CSSStyleDeclarationImpl block) {
        List<CssDeclaration> declarations = new ArrayList<>();
        for (Property property : block.getProperties()) {
            String written = property.getName();
            String name = written.startsWith("--") ? written : written.toLowerCase(Locale.ROOT);
            String value =
                    property.getValue() == null ? "" : property.getValue().getCssText();
            for (String longhand : CssShorthands.longhands(name)) {
                if (sound.test(longhand, value)) {
                    declarations.add(new CssDeclaration(longhand, value, property.isImportant()));
                }
            }
        }
        return List.copyOf(declarations);
    }

    private static void require(boolean shallow) {
        if (!shallow) {
            throw new TooIntricateException("has a style with brackets within each other deeper than " + DEEPEST
                    + ", or with a value of more than " + LONGEST_WORDS + " characters");
        }
    }

    private static boolean isShallow(String text) {
        int depth = 0;
        int words = 0;
        for (int k = 0; k < text.length(); k++) {
            char c = text.charAt(k);
            depth += c == '(' || c == '[' || c == '{' ? 1 : c == ')' || c == ']' || c == '}' ? -1 : 0;
            depth = Math.max(0, depth);
            words = c == '{' || c == '}' || c == ';' || c == ',' ? 0 : words + (c > ' ' ? 1 : 0);
            if (depth > DEEPEST || words > LONGEST_WORDS) {
                return false;
            }
        }
        return true;
    }

    /** Counts rules that are passed over, and says nothing of declarations, as CSS wants it (CSS Syntax 3, 9). */
    private final class Counter implements CSSErrorHandler {
        @Override
        public void warning(CSSParseException passedOver) {
            rulesPassedOver++;
        }

        @Override
        public void error(CSSParseException error) {
            // a warning follows where a whole rule is lost
        }

        @Override
        public void fatalError(CSSParseException error) {
            rulesPassedOver++;
        }
    }
}
