package org.adumbrate.proof;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.open.HeadStart;
import org.adumbrate.report.SheetReport;

/** A server on a sheet, and a page's part of the talk with it. */
final class OpenProof implements AutoCloseable {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final HttpClient client = HttpClient.newHttpClient();
    private final BlockingQueue<Heard> heard = new LinkedBlockingQueue<>();
    private final ProofServer server;
    private final String base;
    private final String cookie;

    /** An event. */
    record Heard(String name, JsonNode data) {}

    private OpenProof(ProofServer server) throws IOException {
        this.server = server;
        this.base = server.address().replaceFirst("/\\?.*", "");
        this.cookie = send(HttpRequest.newBuilder(URI.create(server.address())).build())
                .headers()
                .firstValue("Set-Cookie")
                .orElseThrow()
                .replaceFirst(";.*", "");
    }

    static OpenProof of(Path file) throws IOException {
        return new OpenProof(ProofServer.begin(HeadStart.of(file, Memory.inMemory()), 0, SheetReport::new, List.of()));
    }

    String base() {
        return base;
    }

    String cookie() {
        return cookie;
    }

    ProofServer server() {
        return server;
    }

    HttpResponse<byte[]> fetch(String path) throws IOException {
        return send(HttpRequest.newBuilder(URI.create(base + path))
                .header("Cookie", cookie)
                .build());
    }

    JsonNode get(String path) throws IOException {
        return JSON.readTree(fetch(path).body());
    }

    JsonNode post(String path, String body) throws IOException {
        return JSON.readTree(send(HttpRequest.newBuilder(URI.create(base + path))
                        .header("Cookie", cookie)
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString(body))
                        .build())
                .body());
    }

    long version() throws IOException {
        return get("/state").get("version").asLong();
    }

    /** Sets a value in the newest state. */
    JsonNode set(String key, String value) throws IOException {
        return edit(version(), key, value, false);
    }

    JsonNode edit(long version, String key, String value, boolean isTry) throws IOException {
        return post(
                "/edit",
                "{\"version\": %d, \"edits\": [{\"do\": \"set\", \"key\": \"%s\", \"value\": \"%s\"}], \"try\": %s}"
                        .formatted(version, key, value, isTry));
    }

    /** A wish that says nothing but the version. */
    JsonNode step(String path) throws IOException {
        return post(path, "{\"version\": %d}".formatted(version()));
    }

    private HttpResponse<byte[]> send(HttpRequest request) throws IOException {
        try {
            return client.send(request, HttpResponse.BodyHandlers.ofByteArray());
        } catch (InterruptedException e) {
            throw new IOException(e);
        }
    }

    /** Begins to listen as a page does. */
    OpenProof listen() {
        HttpRequest request = HttpRequest.newBuilder(URI.create(base + "/events"))
                .header("Cookie", cookie)
                .build();
        try {
            hear(client.send(request, HttpResponse.BodyHandlers.ofInputStream()).body());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
        return this;
    }

    private void hear(InputStream stream) {
        Thread thread = new Thread(() -> {
            try (BufferedReader lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
                String name = "";
                for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                    if (line.startsWith("event: ")) {
                        name = line.substring(7);
                    } else if (line.startsWith("data: ")) {
                        heard.add(new Heard(name, JSON.readTree(line.substring(6))));
                    }
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        thread.setDaemon(true);
        thread.start();
    }

    /** The next event of a name that is as wanted; what comes before is passed over. */
    JsonNode await(String name, Predicate<JsonNode> wanted) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(30);
        while (System.nanoTime() < end) {
            Heard next = heard.poll(1, TimeUnit.SECONDS);
            if (next != null && next.name().equals(name) && wanted.test(next.data())) {
                return next.data();
            }
        }
        throw new AssertionError("no such event: " + name);
    }

    @Override
    public void close() {
        server.close();
    }
}
