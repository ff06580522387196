package org.adumbrate.proof.http;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import java.io.IOException;
import java.io.InputStream;
import java.lang.System.Logger.Level;
import java.util.Map;
import java.util.regex.Pattern;
import org.adumbrate.json.JsonFault;
import org.adumbrate.json.JsonObject;
import org.adumbrate.json.JsonReader;

/** Receives everybody: at the door, then what they ask, then the answer. Nothing is read of who is not let in. */
final class Reception implements HttpHandler {
    private static final System.Logger LOG = System.getLogger(Reception.class.getName());

    /** A sheet file is smaller by far. */
    private static final int MOST_BYTES = 2_000_000;

    private static final int MOST_PASSED_OVER = 4 * MOST_BYTES;

    /** Every address that there is looks so; nothing is decoded, so nothing can be hidden by encoding. */
    private static final Pattern PATH = Pattern.compile("(?:/[A-Za-z0-9@_-][A-Za-z0-9@._-]*)*/?");

    private static final Pattern JSON = Pattern.compile("(?i)application/json(?:\\s*;\\s*charset=\"?utf-8\"?)?");

    private final Door door;
    private final Routes routes;
    private final Events events;

    Reception(Door door, Routes routes, Events events) {
        this.door = door;
        this.routes = routes;
        this.events = events;
    }

    @Override
    public void handle(HttpExchange exchange) throws IOException {
        try (exchange) {
            Policy.set(exchange.getResponseHeaders());
            Door.Admission admission = door.admit(exchange);
            if (admission == Door.Admission.REFUSED) {
                exchange.getResponseHeaders().set("Connection", "close");
                exchange.sendResponseHeaders(403, -1);
            } else if (admission == Door.Admission.ARRIVED) {
                exchange.getResponseHeaders().set("Set-Cookie", door.cookie());
                exchange.getResponseHeaders().set("Location", "/");
                exchange.sendResponseHeaders(303, -1);
            } else if (isListening(exchange)) {
                events.tell(exchange);
            } else {
                send(exchange, answered(exchange));
            }
        }
    }

    private boolean isListening(HttpExchange exchange) {
        return exchange.getRequestMethod().equals("GET")
                && "/events".equals(exchange.getRequestURI().getRawPath())
                && events.hasRoom();
    }

    private Answer answered(HttpExchange exchange) {
        String method = exchange.getRequestMethod();
        String path = exchange.getRequestURI().getRawPath();
        try {
            if (!method.equals("GET") && !method.equals("POST")) {
                return Answer.refused(405, "expected GET or POST");
            }
            Handler route =
                    PATH.matcher(path).matches() ? routes.of(method, path).orElse(null) : null;
            if (route == null) {
                return Answer.refused(404, "there is nothing here");
            }
            JsonObject body = new JsonObject(Map.of());
            if (method.equals("POST")) {
                String type = exchange.getRequestHeaders().getFirst("Content-Type");
                if (type == null || !JSON.matcher(type).matches()) {
                    return Answer.refused(415, "expected application/json");
                }
                byte[] bytes = body(exchange);
                if (bytes.length > MOST_BYTES) {
                    return Answer.refused(413, "expected at most 2 MB");
                }
                body = JsonReader.object(bytes);
            }
            Query query = Query.of(exchange.getRequestURI().getRawQuery());
            return route.answer(new Ask(path, query, body));
        } catch (JsonFault fault) {
            return Answer.refused(400, fault.getMessage());
        } catch (IOException fault) {
            return Answer.refused(500, String.valueOf(fault.getMessage()));
        } catch (RuntimeException defect) {
            LOG.log(Level.ERROR, "a defect in the program: " + method + " " + path, defect);
            return Answer.refused(500, "a defect in the program: " + defect);
        }
    }

    /** At most a byte more than is taken. */
    private static byte[] body(HttpExchange exchange) throws IOException {
        String length = exchange.getRequestHeaders().getFirst("Content-Length");
        if (length != null && length.length() > String.valueOf(MOST_BYTES).length()) {
            return new byte[MOST_BYTES + 1];
        }
        byte[] bytes = exchange.getRequestBody().readNBytes(MOST_BYTES + 1);
        if (bytes.length > MOST_BYTES) {
            // who is still sending when the connection closes never sees the answer
            passOver(exchange.getRequestBody());
        }
        return bytes;
    }

    private static void passOver(InputStream rest) throws IOException {
        for (long passed = 0, count; passed < MOST_PASSED_OVER; passed += count) {
            count = rest.skip(1 << 16);
            if (count <= 0) {
                return;
            }
        }
    }

    private static void send(HttpExchange exchange, Answer answer) throws IOException {
        exchange.getResponseHeaders().set("Content-Type", answer.type());
        answer.headers().forEach(exchange.getResponseHeaders()::set);
        if (answer.status() >= 400) {
            exchange.getResponseHeaders().set("Connection", "close");
        }
        try (InputStream content = answer.content().open()) {
            boolean hasContent =
                    answer.length() > 0 && !exchange.getRequestMethod().equals("HEAD");
            exchange.sendResponseHeaders(answer.status(), hasContent ? answer.length() : -1);
            if (hasContent) {
                content.transferTo(exchange.getResponseBody());
            }
        }
    }
}
