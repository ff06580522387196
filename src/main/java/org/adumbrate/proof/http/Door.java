package org.adumbrate.proof.http;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Who may come in. First the Host, so that no foreign name that leads here is served (DNS rebinding), and the Origin; then the
 * token in the address, once, or the cookie that it was changed for.
 */
final class Door {
    /** What asks is one of these, or does not tell: see Fetch Metadata Request Headers, W3C. */
    private static final List<String> SITES = List.of("same-origin", "none");

    private final Secret token;
    private final Secret session = Secret.random();
    private final AtomicReference<Secret> once = new AtomicReference<>();
    private final List<String> hosts;
    private final String cookie;

    /**
     * @param token lets in
     * @param port of the server: cookies are shared by all ports of a host, so it is part of the cookie's name
     */
    Door(Secret token, int port) {
        this.token = token;
        this.hosts = List.of("127.0.0.1:" + port, "localhost:" + port);
        this.cookie = "adumbrate-" + port;
    }

    /** What became of somebody who knocked. */
    enum Admission {
        REFUSED,
        /** Has the token: gets the cookie, and is sent on. */
        ARRIVED,
        ADMITTED
    }

    Admission admit(HttpExchange exchange) {
        URI asked = exchange.getRequestURI();
        if (asked.isAbsolute() || asked.getRawAuthority() != null || !comesFromHere(exchange.getRequestHeaders())) {
            return Admission.REFUSED;
        }
        Optional<String> word = Query.of(asked.getRawQuery()).text("token");
        if (word.isPresent()) {
            boolean arrives = exchange.getRequestMethod().equals("GET")
                    && "/".equals(asked.getRawPath())
                    && (token.is(word.get()) || usesUp(word.get()));
            return arrives ? Admission.ARRIVED : Admission.REFUSED;
        }
        return hasCookie(exchange.getRequestHeaders()) ? Admission.ADMITTED : Admission.REFUSED;
    }

    /**
     * A token that lets in a single time. It is for the command line that opens a browser, which everybody on the machine can read: it
     * is worth nothing by then.
     */
    Secret once() {
        Secret fresh = Secret.random();
        once.set(fresh);
        return fresh;
    }

    private boolean usesUp(String word) {
        Secret open = once.get();
        return open != null && open.is(word) && once.compareAndSet(open, null);
    }

    private boolean comesFromHere(Headers headers) {
        List<String> host = headers.getOrDefault("Host", List.of());
        if (host.size() != 1 || !hosts.contains(host.get(0))) {
            return false;
        }
        return headers.getOrDefault("Origin", List.of()).stream()
                        .allMatch(origin -> hosts.stream().anyMatch(own -> origin.equals("http://" + own)))
                && SITES.containsAll(headers.getOrDefault("Sec-Fetch-Site", List.of()));
    }

    private boolean hasCookie(Headers headers) {
        for (String line : headers.getOrDefault("Cookie", List.of())) {
            for (String pair : line.split(";")) {
                String[] parts = pair.strip().split("=", 2);
                if (parts.length == 2 && parts[0].equals(cookie) && session.is(parts[1])) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The cookie: not for scripts, not for other sites, gone with the browser. */
    String cookie() {
        return cookie + "=" + session.text() + "; HttpOnly; SameSite=Strict; Path=/";
    }
}
