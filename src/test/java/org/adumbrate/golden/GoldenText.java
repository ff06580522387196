package org.adumbrate.golden;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Compares text, such as an SVG, with the expected one in {@code golden-images/}: the same words in the same order, and
 * numbers that differ by no more than a limit, as the last digit may be rounded otherwise on another machine. Renewed as the
 * images are.
 */
final class GoldenText {
    /** A number, or a stretch of anything else. */
    private static final Pattern TOKEN = Pattern.compile("-?\\d*\\.?\\d+|(?:(?!-?\\d*\\.?\\d).)+", Pattern.DOTALL);

    private static final int SHOWN = 60;

    private GoldenText() {}

    /** Fails unless the text is the expected one within the limit; with {@code -Drenew=true} makes it the expected one. */
    static void check(String name, String text, double limit) throws IOException {
        Path expected = GoldenImage.EXPECTED.resolve(name);
        if (Boolean.getBoolean("renew")) {
            Files.createDirectories(GoldenImage.EXPECTED);
            Files.writeString(expected, text);
            return;
        }
        Optional<String> complaint = difference(Files.readString(expected), text, limit);
        if (complaint.isPresent()) {
            Files.createDirectories(GoldenImage.GOT);
            Files.writeString(GoldenImage.GOT.resolve(name), text);
            throw new AssertionError(expected + ": " + complaint.get() + GoldenImage.WHAT_NEXT);
        }
    }

    /** What is wrong with a text, if anything is. */
    static Optional<String> difference(String expected, String got, double limit) {
        List<String> a = tokens(expected);
        List<String> b = tokens(got);
        for (int k = 0; k < Math.min(a.size(), b.size()); k++) {
            if (!a.get(k).equals(b.get(k)) && !isNear(a.get(k), b.get(k), limit)) {
                return Optional.of("expected '%s', got '%s' (limit %s)".formatted(from(a, k), from(b, k), limit));
            }
        }
        return a.size() == b.size()
                ? Optional.empty()
                : Optional.of("expected %d words and numbers, got %d".formatted(a.size(), b.size()));
    }

    private static boolean isNear(String a, String b, double limit) {
        return isNumber(a) && isNumber(b) && Math.abs(Double.parseDouble(a) - Double.parseDouble(b)) <= limit;
    }

    private static boolean isNumber(String token) {
        return token.matches("-?\\d*\\.?\\d+");
    }

    private static String from(List<String> tokens, int at) {
        String rest = String.join("", tokens.subList(at, Math.min(tokens.size(), at + SHOWN)));
        return rest.substring(0, Math.min(rest.length(), SHOWN));
    }

    private static List<String> tokens(String text) {
        return TOKEN.matcher(text).results().map(MatchResult::group).toList();
    }
}
