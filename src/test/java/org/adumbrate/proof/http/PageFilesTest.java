package org.adumbrate.proof.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.adumbrate.json.JsonObject;
import org.adumbrate.proof.ProofServer;
import org.junit.jupiter.api.Test;

class PageFilesTest {
    private static final Pattern IMPORTED = Pattern.compile("(?m)^(?:import|export) [^;]*?from ['\"]([^'\"]+)['\"]");

    private static Answer get(String path) throws IOException {
        Routes routes = new Routes();
        new PageFiles(PageFilesTest.class, Webjars.TEXT_PANE).at(routes);
        return routes.of("GET", path).orElseThrow().answer(new Ask(path, Query.of(null), new JsonObject(Map.of())));
    }

    private static String text(Answer answer) throws IOException {
        try (InputStream in = answer.content().open()) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void everyLibraryIsThereAndWhatItImportsIsToo() throws IOException {
        for (String name : Webjars.TEXT_PANE.modules().keySet()) {
            Answer answer = get("/lib/" + name + ".js");
            assertThat(answer.status()).as(name).isEqualTo(200);
            assertThat(answer.type()).startsWith("text/javascript");
            Matcher imports = IMPORTED.matcher(text(answer));
            while (imports.find()) {
                assertThat(Webjars.TEXT_PANE.modules()).as(name).containsKey(imports.group(1));
            }
        }
        assertThat(get("/lib/nothing.js").status()).isEqualTo(404);
    }

    @Test
    void theVersionsAreThoseOfTheBuild() throws IOException {
        String build = Files.readString(Path.of("pom.xml"));
        Webjars.TEXT_PANE.modules().values().forEach(place -> {
            String[] steps = place.split("/");
            assertThat(build)
                    .containsPattern("<artifactId>" + steps[0] + "</artifactId>\\s*<version>" + Pattern.quote(steps[1])
                            + "</version>");
        });
    }

    @Test
    void theImportMapIsTheOneScriptThatStandsInThePage() throws IOException, NoSuchAlgorithmException {
        Answer page = get("/");
        String html = text(page);
        Matcher map =
                Pattern.compile("<script type=\"importmap\">([^<]*)</script>").matcher(html);
        assertThat(map.find()).isTrue();
        assertThat(map.group(1)).contains("\"@codemirror/view\": \"/lib/@codemirror/view.js\"");
        String digest = Base64.getEncoder()
                .encodeToString(
                        MessageDigest.getInstance("SHA-256").digest(map.group(1).getBytes(StandardCharsets.UTF_8)));
        String policy = page.headers().get("Content-Security-Policy");
        assertThat(policy)
                .contains("script-src 'self' 'sha256-" + digest + "';")
                .doesNotContain("unsafe");
        Matcher nonce = Pattern.compile("style-src 'self' 'nonce-([^']+)'").matcher(policy);
        assertThat(nonce.find()).isTrue();
        assertThat(html).contains("content=\"" + nonce.group(1) + "\"").doesNotContain(PageFiles.NONCE);
        assertThat(text(get("/"))).as("a nonce for each load").doesNotContain(nonce.group(1));
    }

    @Test
    void thePageNamesEveryScriptThatItWillNeed() throws IOException {
        Matcher links = Pattern.compile("<link rel=\"modulepreload\" href=\"([^\"]+)\">")
                .matcher(text(proof("/")));
        Set<String> named = new TreeSet<>();
        while (links.find()) {
            named.add(links.group(1));
        }
        assertThat(named).contains("/page/main.js", "/page/drawing/pane.js", "/lib/@codemirror/view.js");
        for (String address : named) {
            Answer script = proof(address);
            assertThat(script.status()).as(address).isEqualTo(200);
            Matcher imports = IMPORTED.matcher(text(script));
            while (imports.find()) {
                String name = imports.group(1);
                assertThat(named)
                        .as(address)
                        .contains(
                                name.startsWith(".")
                                        ? URI.create(address).resolve(name).getPath()
                                        : "/lib/" + name + ".js");
            }
        }
    }

    /** A file of the page that is delivered. */
    private static Answer proof(String path) throws IOException {
        Routes routes = new Routes();
        new PageFiles(ProofServer.class, Webjars.TEXT_PANE).at(routes);
        return routes.of("GET", path).orElseThrow().answer(new Ask(path, Query.of(null), new JsonObject(Map.of())));
    }

    @Test
    void filesLieInTheFolderOfThePageAlone() throws IOException {
        assertThat(text(get("/page/parts/part.js"))).contains("export");
        for (String path : new String[] {
            "/page/../PageFilesTest.class", "/page/a/b/part.js", "/page/parts/part.ts", "/page/none.js"
        }) {
            assertThat(get(path).status()).as(path).isEqualTo(404);
        }
    }
}
