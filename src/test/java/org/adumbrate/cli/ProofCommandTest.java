package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProofCommandTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String SHEET = "lines: lines.svg\nsize: 100 x 60 mm\ndeliver: { preview: out/preview.png }\n";

    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void desk() throws IOException {
        Files.writeString(
                folder.resolve("lines.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='60mm' viewBox='0 0 100 60'>"
                        + "<path d='M10 20H90V50H10Z' fill='none' stroke='#0a64c8'/></svg>");
        file = folder.resolve("shed.sheet.yaml");
    }

    /** The state, asked for as a browser does that is given the address. */
    private static JsonNode state(String address) throws IOException, InterruptedException {
        HttpClient client =
                HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
        get(client, address);
        return JSON.readTree(
                get(client, address.replaceFirst("/\\?.*", "/state")).body());
    }

    private static HttpResponse<String> get(HttpClient client, String address)
            throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(URI.create(address)).build(), HttpResponse.BodyHandlers.ofString());
    }

    @Test
    void theAddressIsTheFirstLine() throws IOException, InterruptedException {
        Files.writeString(file, SHEET);
        try (ServingCli run = ServingCli.begin("proof", file.toString(), "--no-open")) {
            assertThat(run.firstLine()).matches("http://127\\.0\\.0\\.1:\\d+/\\?token=[\\w-]{22,}");
            assertThat(state(run.firstLine()).get("text").asText()).isEqualTo(SHEET);
            Cli ended = run.end();
            assertThat(ended.code()).isZero();
            assertThat(ended.out().lines()).hasSize(1);
        }
    }

    @Test
    void theAddressIsJsonWhereThatIsAskedFor() throws IOException, InterruptedException {
        Files.writeString(file, SHEET);
        try (ServingCli run = ServingCli.begin("proof", file.toString(), "--no-open", "--quiet", "--json", "-")) {
            String address = JSON.readTree(run.firstLine()).get("url").asText();
            assertThat(state(address).get("name").asText()).isEqualTo("shed");
            assertThat(run.end().out().lines()).hasSize(1);
        }
    }

    @Test
    void aFolderWithoutASheetFileGetsOneWithItsReasons() throws IOException, InterruptedException {
        try (ServingCli run = ServingCli.begin("proof", folder.toString(), "--no-open")) {
            JsonNode state = state(run.firstLine());
            Path written = folder.resolve(folder.getFileName() + ".sheet.yaml");
            assertThat(state.get("text").asText()).isEqualTo(Files.readString(written));
            assertThat(state.get("decided").findValuesAsText("key")).contains("lines");
            assertThat(state.get("complaints")).isEmpty();
            assertThat(run.end().err()).contains("there was no sheet file");
        }
        try (ServingCli again = ServingCli.begin("proof", folder.toString(), "--no-open")) {
            assertThat(state(again.firstLine()).get("decided")).isEmpty();
        }
    }

    @Test
    void aFolderWithSeveralSheetFilesIsRefused() throws IOException {
        Files.writeString(file, SHEET);
        Files.writeString(folder.resolve("other.sheet.yaml"), SHEET);
        Cli refused = Cli.run("proof", folder.toString(), "--no-open");
        assertThat(refused.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(refused.err()).contains("several sheet files (other.sheet.yaml, shed.sheet.yaml); name one of them");
    }

    @Test
    void aPortThatIsTakenIsToldInOneLine() throws IOException, InterruptedException {
        Files.writeString(file, SHEET);
        try (ServingCli first = ServingCli.begin("proof", file.toString(), "--no-open")) {
            String port = String.valueOf(URI.create(first.firstLine()).getPort());
            Cli second = Cli.run("proof", file.toString(), "--no-open", "--port", port);
            assertThat(second.code()).isEqualTo(ExitCode.INPUT_OUTPUT);
            assertThat(second.err().lines())
                    .containsExactly(
                            "port " + port + ": is taken by another program; give another with --port, or none at all");
        }
        assertThat(Cli.run("proof", file.toString(), "--port", "70000").code()).isEqualTo(ExitCode.USAGE);
        assertThat(Cli.run("proof", folder.resolve("none.sheet.yaml").toString())
                        .code())
                .isEqualTo(ExitCode.INPUT_OUTPUT);
    }

    @Test
    void theJsonIsNoFileOfTheSheet() throws IOException {
        Files.writeString(file, SHEET);
        Cli refused = Cli.run(
                "proof",
                file.toString(),
                "--no-open",
                "--json",
                folder.resolve("lines.svg").toString());
        assertThat(refused.code()).isEqualTo(ExitCode.REFUSED);
    }

    @Test
    void browsersAreOpenedAsEachSystemDoes() {
        assertThat(Browser.command("Mac OS X", "a", false)).hasValue(List.of("open", "a"));
        assertThat(Browser.command("Windows 11", "a", false))
                .hasValue(List.of("rundll32", "url.dll,FileProtocolHandler", "a"));
        assertThat(Browser.command("Linux", "a", true)).hasValue(List.of("xdg-open", "a"));
        assertThat(Browser.command("Linux", "a", false)).isEqualTo(Optional.empty());
    }

    @Test
    void ctrlCEndsItWithZeroAndPagesHear() throws IOException, InterruptedException {
        assumeTrue(Files.isExecutable(Path.of("/bin/kill")) || Files.isExecutable(Path.of("/usr/bin/kill")));
        Files.writeString(file, SHEET);
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-Djava.awt.headless=true",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "org.adumbrate.cli.Adumbrate",
                        "proof",
                        file.toString(),
                        "--no-open")
                .redirectError(folder.resolve("err").toFile())
                .start();
        try (BufferedReader out = process.inputReader()) {
            String address = out.readLine();
            HttpClient client =
                    HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
            get(client, address);
            HttpResponse<Stream<String>> events = client.send(
                    HttpRequest.newBuilder(URI.create(address.replaceFirst("/\\?.*", "/events")))
                            .build(),
                    HttpResponse.BodyHandlers.ofLines());
            new ProcessBuilder("kill", "-INT", String.valueOf(process.pid()))
                    .start()
                    .waitFor();
            assertThat(process.waitFor(20, TimeUnit.SECONDS)).isTrue();
            assertThat(process.exitValue()).isZero();
            assertThat(events.body().filter(line -> line.startsWith("event: "))).endsWith("event: ended");
        } finally {
            process.destroyForcibly();
        }
    }
}
