package org.adumbrate.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads JSON (RFC 8259) strictly: one value and nothing after it, no key twice, no comments. Jackson's streaming parser does the
 * reading because it is kept up by many hands, stands on nothing else and has bounds of its own for depth, names and numbers; the
 * YAML library, which is here already, would take more than JSON.
 */
public final class JsonReader {
    private static final int DEEPEST = 16;
    private static final int LONGEST_NAME = 200;
    private static final int LONGEST_NUMBER = 60;

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST)
                    .maxNameLength(LONGEST_NAME)
                    .maxNumberLength(LONGEST_NUMBER)
                    .build())
            .build();

    private JsonReader() {}

    /**
     * Reads an object.
     *
     * @param bytes UTF-8
     * @throws JsonFault if they are anything else
     */
    public static JsonObject object(byte[] bytes) throws JsonFault {
        try (JsonParser parser = FACTORY.createParser(bytes)) {
            parser.nextToken();
            Object value = value(parser);
            if (parser.nextToken() != null) {
                throw new JsonFault("expected the end of the JSON text after its first value");
            }
            return JsonObject.of(value, "the whole");
        } catch (JsonFault fault) {
            throw fault;
        } catch (IOException e) {
            throw new JsonFault("no JSON: " + e.getMessage().lines().findFirst().orElse("nothing"));
        }
    }

    private static Object value(JsonParser parser) throws IOException {
        JsonToken token = parser.currentToken();
        if (token == null) {
            throw new JsonFault("expected a JSON object, and found nothing");
        }
        return switch (token) {
            case START_OBJECT -> members(parser);
            case START_ARRAY -> items(parser);
            case VALUE_STRING -> parser.getText();
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getDoubleValue();
            case VALUE_TRUE -> true;
            case VALUE_FALSE -> false;
            case VALUE_NULL -> null;
            default -> throw new JsonFault("expected a JSON value");
        };
    }

    private static Map<String, Object> members(JsonParser parser) throws IOException {
        Map<String, Object> members = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            parser.nextToken();
            members.put(name, value(parser));
        }
        return members;
    }

    private static List<Object> items(JsonParser parser) throws IOException {
        List<Object> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value(parser));
        }
        return items;
    }
}
