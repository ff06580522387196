package org.adumbrate.sheetfile.yaml;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.adumbrate.sheetfile.complaint.Place;
import org.adumbrate.sheetfile.complaint.Wording;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/** What the YAML library finds wrong with a text, in the words of the drawing desk. */
final class PlainWords {
    /** The problem of a text that goes deeper than a sheet file can. */
    static final String TOO_DEEP = "too deep";

    /** The problem of an alias that stands within what it stands for. */
    static final String SELF = "self";

    /** The problem of a text that says what type a value has. */
    static final String TAG = "tagged";

    /** The problem of a text that says more than a sheet file can. */
    static final String TOO_MANY = "too many";

    /** @param plain what to say; {@code $1} is what the problem names, {@code %s} where the thing at fault began */
    private record Phrase(Pattern problem, String plain) {
        Phrase(String problem, String plain) {
            this(Pattern.compile(problem, Pattern.DOTALL), plain);
        }
    }

    private static final List<Phrase> PHRASES = List.of(
            new Phrase("found character '\\\\t\\(TAB\\)'.*", "a tab where only spaces may stand; indent with spaces"),
            new Phrase("found character '(.*?)' that cannot start.*", "a value cannot begin with $1; put it in quotes"),
            new Phrase(
                    "mapping values are not allowed here",
                    "a colon where none can stand; check the indentation, the space after each colon above, and the quotes"
                            + " of texts that hold ': '"),
            new Phrase(
                    "could not find expected ':'",
                    "the key in line %s has no colon; write a colon and a space after each key"),
            new Phrase(
                    "sequence entries are not allowed here", "a list item where none can stand; check the indentation"),
            new Phrase("mapping keys are not allowed here", "a key where none can stand; check the indentation"),
            new Phrase("found unexpected end of stream", "these quotes are never closed"),
            new Phrase(
                    "expected ',' or '([}\\]])', but got.*",
                    "the bracket that opens in line %s is not closed; expected , or $1 (a # outside quotes hides the rest of"
                            + " its line)"),
            new Phrase(
                    "expected <block end>.*",
                    "this line does not stand below the one it belongs to; check the indentation"),
            new Phrase("found undefined alias (.*)", "the alias *$1 has no anchor &$1 before it"),
            new Phrase(
                    "found unknown escape character.*",
                    "a backslash in double quotes that escapes nothing; use single quotes, or / in a path"),
            new Phrase(
                    "(expected escape sequence|For input string).*",
                    "a backslash in double quotes that names no character; use single quotes"),
            new Phrase("but found another document", "a second document begins; a sheet file is one document"),
            new Phrase("expected the node content, but found.*", "a value is missing"),
            new Phrase(
                    "expected '<document start>'.*",
                    "this does not belong to what stands above; check the indentation"),
            new Phrase("Expected mapping node.*", "'<<' takes an alias of a mapping"),
            new Phrase("Version.*", "another YAML than 1.2 is asked for; leave the line with %YAML out"),
            new Phrase(TOO_DEEP, "brackets or indentation go deeper than any sheet file does"),
            new Phrase(TOO_MANY, ValueCount.TOLD),
            new Phrase(SELF, "an alias within the very thing that it stands for; write that out"),
            new Phrase(TAG, "a tag such as !this has no meaning in a sheet file; leave it out"),
            new Phrase("Number of aliases.*", "more than 50 aliases of lists and mappings; write them out"));

    private PlainWords() {}

    static String of(MarkedYamlEngineException fault) {
        int begun = fault.getContextMark().map(mark -> Place.of(mark).line()).orElse(1);
        return of(fault.getProblem(), begun);
    }

    /** Where to look: for quotes that are never closed, where they open. */
    static Place place(MarkedYamlEngineException fault) {
        Optional<Mark> mark = fault.getProblem().equals("found unexpected end of stream")
                ? fault.getContextMark()
                : fault.getProblemMark();
        return mark.map(Place::of).orElse(Place.START);
    }

    static String of(RuntimeException fault) {
        return of(String.valueOf(fault.getMessage()), 1);
    }

    private static String of(String problem, int begun) {
        for (Phrase phrase : PHRASES) {
            Matcher matcher = phrase.problem().matcher(problem);
            if (matcher.matches()) {
                return matcher.replaceFirst(phrase.plain()).replace("%s", String.valueOf(begun));
            }
        }
        return "this is no YAML: " + Wording.shortened(problem);
    }
}
