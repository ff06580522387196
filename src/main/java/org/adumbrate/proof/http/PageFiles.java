package org.adumbrate.proof.http;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The files of a page, out of the program itself: {@code /} and {@code /page/NAME}, and the libraries that it loads at
 * {@code /lib/NAME.js}. Names are plain words, so that no path leads elsewhere.
 */
public final class PageFiles {
    /** Where the page's first file is to hold the import map, and the nonce that style sheets made by scripts must show. */
    static final String MAP = "<!--import-map-->";

    static final String NONCE = "@style-nonce@";

    /** Where it is to name the scripts that it will come to need. */
    static final String MODULES = "<!--modules-->";

    private static final Pattern NAME =
            Pattern.compile("/page/((?:[a-z0-9][a-z0-9-]*/)?[a-z0-9][a-z0-9-]*\\.(html|css|js|svg|png|woff2))");

    private static final Map<String, String> TYPES = Map.of(
            "html", "text/html; charset=utf-8",
            "css", "text/css; charset=utf-8",
            "js", "text/javascript; charset=utf-8",
            "svg", "image/svg+xml",
            "png", "image/png",
            "woff2", "font/woff2");

    private final Class<?> beside;
    private final Webjars libraries;

    /**
     * @param beside the class in whose package the folder {@code page} lies
     * @param libraries those that the page may load
     */
    public PageFiles(Class<?> beside, Webjars libraries) {
        this.beside = beside;
        this.libraries = libraries;
    }

    /** Adds their addresses. */
    public void at(Routes routes) {
        routes.get("/", ask -> first()).get("/page/", ask -> file(ask.path())).get("/lib/", ask -> library(ask.path()));
    }

    /** The page, with the import map and a nonce of its own; nothing else in it that runs. */
    private Answer first() throws IOException {
        String map = libraries.importMap();
        Secret nonce = Secret.random();
        String html = text("page/index.html")
                .replace(MAP, "<script type=\"importmap\">" + map + "</script>")
                .replace(
                        MODULES,
                        ModuleGraph.of(beside, "main.js")
                                .links(libraries.modules().keySet()))
                .replace(NONCE, nonce.text());
        return Answer.bytes(TYPES.get("html"), html.getBytes(StandardCharsets.UTF_8))
                .with("Content-Security-Policy", Policy.page(digest(map), nonce));
    }

    private String text(String name) throws IOException {
        try (InputStream in = beside.getResourceAsStream(name)) {
            return in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private Answer file(String path) throws IOException {
        Matcher name = NAME.matcher(path);
        return name.matches()
                ? resource(beside.getResourceAsStream("page/" + name.group(1)), TYPES.get(name.group(2)))
                : Answer.refused(404, "there is nothing here");
    }

    private Answer library(String path) throws IOException {
        return resource(libraries.open(path.replaceFirst("^/lib/", "").replaceFirst("\\.js$", "")), TYPES.get("js"));
    }

    private static Answer resource(InputStream found, String type) throws IOException {
        if (found == null) {
            return Answer.refused(404, "there is nothing here");
        }
        try (found) {
            return Answer.bytes(type, found.readAllBytes());
        }
    }

    private static String digest(String script) {
        try {
            byte[] bytes = script.getBytes(StandardCharsets.UTF_8);
            return Base64.getEncoder()
                    .encodeToString(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java machine has SHA-256", e);
        }
    }
}
