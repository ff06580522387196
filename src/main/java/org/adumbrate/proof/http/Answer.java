package org.adumbrate.proof.http;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.adumbrate.json.Json;

/**
 * An answer.
 *
 * @param status by RFC 9110, section 15
 * @param type of the content
 * @param headers beside those that every answer has, and in their place
 * @param length of the content in bytes
 * @param content opens it
 */
public record Answer(int status, String type, Map<String, String> headers, long length, Source content) {
    /** Opens a content. */
    public interface Source {
        /** Opens it; whoever asks closes it. */
        InputStream open() throws IOException;
    }

    /** A value as JSON. */
    public static Answer json(Object value) {
        return bytes("application/json", Json.text(value).getBytes(StandardCharsets.UTF_8));
    }

    /** Some bytes. */
    public static Answer bytes(String type, byte[] bytes) {
        return new Answer(200, type, Map.of(), bytes.length, () -> new ByteArrayInputStream(bytes));
    }

    /** A file as it is now. */
    public static Answer file(String type, Path file) throws IOException {
        return new Answer(200, type, Map.of(), Files.size(file), () -> Files.newInputStream(file));
    }

    /** A refusal, with a line that says why. */
    public static Answer refused(int status, String why) {
        byte[] line = (why + "\n").getBytes(StandardCharsets.UTF_8);
        return new Answer(
                status, "text/plain; charset=utf-8", Map.of(), line.length, () -> new ByteArrayInputStream(line));
    }

    /** With a header more, or another one in the place of one that every answer has. */
    public Answer with(String name, String value) {
        Map<String, String> more = new LinkedHashMap<>(headers);
        more.put(name, value);
        return new Answer(status, type, more, length, content);
    }
}
