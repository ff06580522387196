package org.adumbrate.proof.http;

import com.sun.net.httpserver.Headers;

/** The headers of every answer: nothing is kept, nothing is guessed, nothing comes from or goes to another site. */
final class Policy {
    /** What the page may do; see Content Security Policy Level 3, W3C. */
    private static final String PAGE =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:;"
                    + " connect-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    private Policy() {}

    static void set(Headers headers) {
        headers.set("Cache-Control", "no-store");
        headers.set("X-Content-Type-Options", "nosniff");
        headers.set("X-Frame-Options", "DENY");
        headers.set("Referrer-Policy", "no-referrer");
        headers.set("Cross-Origin-Opener-Policy", "same-origin");
        headers.set("Cross-Origin-Resource-Policy", "same-origin");
        headers.set("Content-Security-Policy", PAGE);
    }

    /**
     * That of the page itself.
     *
     * @param script the digest of its one script that stands in it
     * @param style what style sheets that scripts make must show
     */
    static String page(String script, Secret style) {
        return PAGE.replace("script-src 'self'", "script-src 'self' 'sha256-" + script + "'")
                .replace("style-src 'self'", "style-src 'self' 'nonce-" + style.text() + "'");
    }
}
