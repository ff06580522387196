package org.adumbrate.hostile;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Changes to words and numbers, in files whose every byte is taken as a character. */
enum TextMutation {
    NUMBER {
        @Override
        String apply(String text, Syntax syntax, Random random) {
            return replaced(text, NUMBER_TOKEN, random.nextInt(NUMBERS.size()), random);
        }
    },

    /** A word of the format, where it should not stand. */
    WORD {
        @Override
        String apply(String text, Syntax syntax, Random random) {
            String changed = text;
            for (int n = random.nextInt(3); n >= 0; n--) {
                String word = syntax.words().get(random.nextInt(syntax.words().size()));
                int at = random.nextInt(changed.length() + 1);
                changed = changed.substring(0, at) + word + changed.substring(at);
            }
            return changed;
        }
    },

    /** One word of the file in place of another. */
    EXCHANGE {
        @Override
        String apply(String text, Syntax syntax, Random random) {
            List<MatchResult> words = NAME_TOKEN.matcher(text).results().toList();
            if (words.isEmpty()) {
                return text;
            }
            MatchResult at = words.get(random.nextInt(words.size()));
            String other = words.get(random.nextInt(words.size())).group();
            return text.substring(0, at.start()) + other + text.substring(at.end());
        }
    },

    NEST {
        @Override
        String apply(String text, Syntax syntax, Random random) {
            if (syntax.openers().isEmpty()) {
                return text;
            }
            String opener = syntax.openers().get(random.nextInt(syntax.openers().size()));
            int times = 1 << random.nextInt(15);
            int at = random.nextInt(text.length() + 1);
            return text.substring(0, at) + opener.repeat(times) + text.substring(at);
        }
    },

    /** A bracket or a quote goes missing. */
    UNCLOSE {
        @Override
        String apply(String text, Syntax syntax, Random random) {
            List<MatchResult> marks = MARK.matcher(text).results().toList();
            if (marks.isEmpty()) {
                return text;
            }
            int at = marks.get(random.nextInt(marks.size())).start();
            return text.substring(0, at) + text.substring(at + 1);
        }
    };

    private static final Pattern NUMBER_TOKEN = Pattern.compile("[-+]?\\d+(\\.\\d+)?");
    private static final Pattern NAME_TOKEN = Pattern.compile("[A-Za-z][A-Za-z-]*");
    private static final Pattern MARK = Pattern.compile("[\\[\\](){}<>\"'/:;]");
    private static final List<String> NUMBERS = new ArrayList<>(List.of(
            "0",
            "-1",
            "1e308",
            "-1e308",
            "1e-308",
            "NaN",
            "Infinity",
            "2147483647",
            "2147483648",
            "-2147483648",
            "4294967296",
            "9223372036854775808",
            "0.0000001",
            "65535",
            "100000",
            "1000000000",
            "99999999999999999999999999"));

    static {
        NUMBERS.add("9".repeat(2000));
    }

    abstract String apply(String text, Syntax syntax, Random random);

    private static String replaced(String text, Pattern token, int with, Random random) {
        List<MatchResult> found = token.matcher(text).results().toList();
        if (found.isEmpty()) {
            return text;
        }
        MatchResult at = found.get(random.nextInt(found.size()));
        return text.substring(0, at.start()) + NUMBERS.get(with) + text.substring(at.end());
    }

    /** As {@link #apply(String, Syntax, Random)}, of bytes. */
    byte[] apply(byte[] file, Syntax syntax, Random random) {
        String text = new String(file, StandardCharsets.ISO_8859_1);
        return apply(text, syntax, random).getBytes(StandardCharsets.ISO_8859_1);
    }
}
