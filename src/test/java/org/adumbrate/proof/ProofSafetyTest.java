package org.adumbrate.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.open.HeadStart;
import org.adumbrate.report.SheetReport;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whoever is not the person at this desk gets nothing, and changes nothing. */
class ProofSafetyTest {
    private static final String EDIT =
            "{\"version\": 1, \"edits\": [{\"do\": \"set\", \"key\": \"passes.shadow.opacity\", \"value\": \"70\"}]}";

    @TempDir
    private static Path folder;

    private static OpenProof proof;
    private static int port;

    /** One server for all: nothing that is tried here changes anything. */
    @BeforeAll
    static void open() throws IOException {
        proof = OpenProof.of(SmallSheet.in(folder));
        port = URI.create(proof.base()).getPort();
    }

    @AfterAll
    static void close() {
        proof.close();
    }

    /** Sends bytes as they are, and returns all that comes back. */
    private String raw(String request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(20_000);
            OutputStream out = socket.getOutputStream();
            out.write(request.getBytes(StandardCharsets.UTF_8));
            out.flush();
            socket.shutdownOutput();
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private String get(String path, String... headers) throws IOException {
        return raw("GET " + path + " HTTP/1.1\r\n" + lines(headers) + "Connection: close\r\n\r\n");
    }

    private String post(String path, String body, String... headers) throws IOException {
        return raw("POST " + path + " HTTP/1.1\r\n" + lines(headers) + "Content-Length: "
                + body.getBytes(StandardCharsets.UTF_8).length + "\r\nConnection: close\r\n\r\n" + body);
    }

    private static String lines(String... headers) {
        return Stream.of(headers).map(header -> header + "\r\n").reduce("", String::concat);
    }

    private String host() {
        return "Host: 127.0.0.1:" + port;
    }

    private String own() {
        return "Cookie: " + proof.cookie();
    }

    private void assertNothingWritten() throws IOException {
        assertThat(Files.readString(folder.resolve("shed.sheet.yaml"))).isEqualTo(SmallSheet.TEXT);
        assertThat(proof.version()).isEqualTo(1);
    }

    private static void assertForbidden(String answer) {
        assertThat(answer).startsWith("HTTP/1.1 403").doesNotContain("Set-Cookie");
        assertThat(answer.substring(answer.indexOf("\r\n\r\n") + 4)).isEmpty();
    }

    @Test
    void theTokenLetsInAndIsTakenOutOfTheAddress() throws IOException {
        String token = proof.server().address().replaceFirst(".*token=", "");
        assertThat(token.length()).as("128 bits or more").isGreaterThanOrEqualTo(22);
        String arrived = get("/?token=" + token, host());
        assertThat(arrived).startsWith("HTTP/1.1 303").containsPattern("(?i)location: /\r\n");
        assertThat(arrived)
                .containsPattern("(?i)set-cookie: adumbrate-" + port + "=[^;]{40,}; HttpOnly; SameSite=Strict; Path=/");
        assertThat(arrived).doesNotContain(token);
        assertThat(get("/state", host(), own())).startsWith("HTTP/1.1 200");
        assertThat(get("/state", "Host: localhost:" + port, own())).startsWith("HTTP/1.1 200");
    }

    @Test
    void withoutCookieOrTokenThereIsNothing() throws IOException {
        for (String path :
                List.of("/", "/state", "/events", "/page/index.html", "/lib/crelt.js", "/out/preview", "/nothing")) {
            assertForbidden(get(path, host()));
        }
        assertForbidden(post("/edit", EDIT, host(), "Content-Type: application/json"));
        assertNothingWritten();
    }

    @Test
    void guessesAreRefused() throws IOException {
        String token = proof.server().address().replaceFirst(".*token=", "");
        String name = proof.cookie().replaceFirst("=.*", "");
        for (String guess : List.of("", "x", token.substring(1), token + "x", token.toLowerCase(Locale.ROOT) + "0")) {
            assertForbidden(get("/?token=" + guess, host()));
            assertForbidden(get("/state", host(), "Cookie: " + name + "=" + guess));
        }
        assertForbidden(get("/state", host(), "Cookie: " + name + "=" + token));
        assertForbidden(get("/state", host(), "Cookie: other=1; " + name));
        assertForbidden(get("/state?token=" + token, host()));
        assertForbidden(get("/?token=wrong", host(), own()));
    }

    @Test
    void anAddressForTheBrowserLetsInOnce() throws IOException {
        String once = proof.server().addressOnce().replaceFirst(".*token=", "");
        assertThat(get("/?token=" + once, host())).startsWith("HTTP/1.1 303");
        assertForbidden(get("/?token=" + once, host()));
    }

    @Test
    void aForeignHostIsRefused() throws IOException {
        for (String foreign : List.of(
                "evil.example",
                "evil.example:" + port,
                "127.0.0.1",
                "127.0.0.1:1",
                "127.0.0.1:" + port + ".evil.example")) {
            assertForbidden(get("/state", "Host: " + foreign, own()));
            assertForbidden(
                    get("/?token=" + proof.server().address().replaceFirst(".*token=", ""), "Host: " + foreign));
        }
        assertThat(get("/state", host(), "Host: evil.example", own())).doesNotContain("\"version\"");
        assertThat(get("http://evil.example/state", host(), own())).doesNotContain("\"version\"");
        assertThat(get("/state", own())).as("no host at all").doesNotContain("\"version\"");
    }

    @Test
    void aForeignOriginIsRefused() throws IOException {
        for (String foreign :
                List.of("https://evil.example", "null", "http://127.0.0.1:1", "https://127.0.0.1:" + port)) {
            assertForbidden(get("/state", host(), own(), "Origin: " + foreign));
            assertForbidden(post("/edit", EDIT, host(), own(), "Content-Type: application/json", "Origin: " + foreign));
        }
        assertForbidden(get("/state", host(), own(), "Sec-Fetch-Site: cross-site"));
        assertForbidden(get("/state", host(), own(), "Sec-Fetch-Site: same-site"));
        assertThat(get("/state", host(), own(), "Origin: http://127.0.0.1:" + port, "Sec-Fetch-Site: same-origin"))
                .startsWith("HTTP/1.1 200");
        assertNothingWritten();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "text/plain",
                "application/x-www-form-urlencoded",
                "multipart/form-data; boundary=x",
                "text/plain; charset=application/json",
                "application/json; charset=utf-16",
                "application/jsonx"
            })
    void aFormOfAnotherSiteIsRefused(String type) throws IOException {
        assertThat(post("/edit", EDIT, host(), own(), "Content-Type: " + type)).startsWith("HTTP/1.1 415");
        assertThat(post("/edit", EDIT, host(), own())).startsWith("HTTP/1.1 415");
        assertNothingWritten();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/../shed.sheet.yaml",
                "/page/../../cli/help/pens.txt",
                "/page/%2e%2e/index.html",
                "/page/%2e%2e%2findex.html",
                "/page/%252e%252e%252findex.html",
                "/page/..%5c..%5cindex.html",
                "/page/..\\index.html",
                "/page//etc/passwd",
                "//etc/passwd",
                "/page/index.html%00.js",
                "/page/INDEX.html",
                "/page/package-info.class",
                "/lib/../../../META-INF/MANIFEST.MF",
                "/lib/@codemirror/../crelt.js",
                "/lib/@codemirror/view/package.json",
                "/lib/package.json",
                "/out/../shed.sheet.yaml",
                "/out/..%2fshed.sheet.yaml",
                "/out/preview/",
                "/out/shed.sheet.yaml",
                "/out/lines",
                "/shadow.png",
                "/STATE"
            })
    void whatIsNotListedIsNotThere(String path) throws IOException {
        String answer = get(path, host(), own());
        assertThat(answer).matches(Pattern.compile("HTTP/1.1 40[034].*", Pattern.DOTALL));
        assertThat(answer).doesNotContain("# A shed").doesNotContain("root:");
    }

    @Test
    void anOutputIsReadOnlyWhereTheSheetFileNamesIt() throws IOException {
        Files.createDirectories(folder.resolve("out"));
        Files.writeString(folder.resolve("out/report.html"), "<script>alert(1)</script>");
        String report = get("/out/report", host(), own());
        assertThat(report).startsWith("HTTP/1.1 200").contains("alert(1)");
        assertThat(report)
                .as("shut in")
                .containsPattern("(?i)content-security-policy: sandbox allow-scripts allow-popups;");
        assertThat(get("/out/preview", host(), own())).startsWith("HTTP/1.1 404");
    }

    @Test
    void aBodyThatIsTooLargeIsNotTaken() throws IOException {
        String padding = "x".repeat(2_100_000);
        assertThat(post(
                        "/text",
                        "{\"version\": 1, \"text\": \"" + padding + "\"}",
                        host(),
                        own(),
                        "Content-Type: application/json"))
                .startsWith("HTTP/1.1 413");
        assertThat(
                        raw(
                                "POST /text HTTP/1.1\r\n" + host() + "\r\n" + own()
                                        + "\r\nContent-Type: application/json\r\nContent-Length: 99999999999\r\nConnection: close\r\n\r\n{}"))
                .startsWith("HTTP/1.1 413");
        assertNothingWritten();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "[]",
                "7",
                "{",
                "{\"version\": 1} x",
                "{\"version\": \"1\", \"edits\": []}",
                "{\"version\": 1.5, \"edits\": []}",
                "{\"version\": 1, \"version\": 2, \"edits\": []}",
                "{\"version\": 1, \"edits\": [7]}",
                "{\"version\": 1, \"edits\": [{\"do\": \"burn\", \"key\": \"lines\"}]}",
                "{\"version\": 1, \"edits\": [{\"do\": \"set\", \"key\": \"lines\"}]}",
                "{\"version\": 1, \"edits\": [{\"do\": \"move\", \"key\": \"lines\", \"index\": -1}]}",
                "{\"version\": NaN, \"edits\": []}",
                "/* */ {\"version\": 1, \"edits\": []}"
            })
    void whatIsNotUnderstoodIsAnsweredWithALine(String body) throws IOException {
        String answer = post("/edit", body, host(), own(), "Content-Type: application/json");
        assertThat(answer)
                .startsWith("HTTP/1.1 400")
                .doesNotContain("Exception")
                .doesNotContain("\tat ");
        assertNothingWritten();
    }

    @Test
    void deepNestingIsRefused() throws IOException {
        String deep = "{\"version\": " + "[".repeat(50_000) + "}";
        assertThat(post("/edit", deep, host(), own(), "Content-Type: application/json"))
                .startsWith("HTTP/1.1 400");
    }

    @Test
    void otherMethodsAreRefused() throws IOException {
        for (String method : List.of("PUT", "DELETE", "OPTIONS", "HEAD", "TRACE", "PATCH")) {
            assertThat(raw(method + " /state HTTP/1.1\r\n" + host() + "\r\n" + own() + "\r\nConnection: close\r\n\r\n"))
                    .startsWith("HTTP/1.1 405");
        }
        assertThat(get("/edit", host(), own())).startsWith("HTTP/1.1 404");
    }

    @Test
    void everyAnswerSaysWhatThePageMayDo() throws IOException {
        for (String path : List.of("/state", "/nothing", "/", "/lib/crelt.js")) {
            assertThat(get(path, host(), own()).toLowerCase(Locale.ROOT))
                    .contains(
                            "cache-control: no-store",
                            "x-content-type-options: nosniff",
                            "referrer-policy: no-referrer")
                    .contains("content-security-policy: default-src 'none'; script-src 'self'")
                    .contains("base-uri 'none'; form-action 'none'; frame-ancestors 'none'")
                    .doesNotContain("unsafe-inline")
                    .doesNotContain("access-control-allow");
        }
        assertThat(get("/state", host()).toLowerCase(Locale.ROOT)).contains("default-src 'none'");
    }

    @Test
    void itListensOnTheLoopbackInterfaceAlone() throws IOException {
        List<InetAddress> others = NetworkInterface.networkInterfaces()
                .flatMap(NetworkInterface::inetAddresses)
                .filter(address -> !address.isLoopbackAddress() && !address.isLinkLocalAddress())
                .toList();
        assumeFalse(others.isEmpty());
        for (InetAddress other : others) {
            assertThatThrownBy(() -> new Socket(other, port).close()).isInstanceOf(IOException.class);
        }
    }

    @Test
    void twoServersKeepTheirPagesApart() throws IOException {
        Path other = Files.createDirectory(folder.resolve("other"));
        try (OpenProof second = OpenProof.of(SmallSheet.in(other))) {
            assertThat(second.cookie()).isNotEqualTo(proof.cookie());
            second.set("passes.shadow.opacity", "71");
            assertThat(proof.get("/state").get("version").asLong()).isEqualTo(1);
            assertThat(get("/state", host(), "Cookie: " + second.cookie())).startsWith("HTTP/1.1 403");
            assertThat(get("/state", host(), "Cookie: " + second.cookie() + "; " + proof.cookie()))
                    .startsWith("HTTP/1.1 200");
        }
    }

    @Test
    void aPortThatIsTakenIsTold() {
        assertThatThrownBy(() -> ProofServer.begin(
                        HeadStart.of(folder.resolve("shed.sheet.yaml"), Memory.inMemory()),
                        port,
                        SheetReport::new,
                        List.of()))
                .hasMessage("port " + port + ": is taken by another program; give another with --port, or none at all");
    }
}
