package org.adumbrate.proof.http;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.json.JsonFault;

/**
 * What stands in an address after the question mark.
 *
 * @param words by name
 */
public record Query(Map<String, String> words) {
    static Query of(String raw) {
        Map<String, String> words = new LinkedHashMap<>();
        for (String pair : raw == null ? new String[0] : raw.split("&")) {
            String[] parts = pair.split("=", 2);
            words.put(decoded(parts[0]), parts.length == 2 ? decoded(parts[1]) : "");
        }
        return new Query(words);
    }

    private static String decoded(String raw) {
        try {
            return URLDecoder.decode(raw, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException broken) {
            return raw;
        }
    }

    /** A text, if it is there. */
    public Optional<String> text(String name) {
        return Optional.ofNullable(words.get(name));
    }

    /** A text that must be there. */
    public String needed(String name) throws JsonFault {
        return text(name).orElseThrow(() -> new JsonFault(name + ": is missing"));
    }

    /** A number that must be there. */
    public double number(String name) throws JsonFault {
        return numbers(name, 1)[0];
    }

    /**
     * Numbers between commas that must be there.
     *
     * @param count how many
     */
    public double[] numbers(String name, int count) throws JsonFault {
        List<String> parts = List.of(needed(name).split(",", -1));
        double[] numbers = new double[count];
        try {
            for (int k = 0; k < count; k++) {
                numbers[k] = Double.parseDouble(parts.get(k));
                if (parts.size() != count || !Double.isFinite(numbers[k])) {
                    throw new NumberFormatException();
                }
            }
            return numbers;
        } catch (NumberFormatException | IndexOutOfBoundsException e) {
            throw new JsonFault(
                    name + ": expected " + count + (count == 1 ? " number" : " numbers with commas between"));
        }
    }
}
