package org.adumbrate.proof;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a page hears by itself. A second is meant where somebody else writes; the limit here only tells a hang. */
class ProofEventsTest {
    @TempDir
    private Path folder;

    private Path file;
    private OpenProof proof;

    @BeforeEach
    void open() throws IOException {
        file = SmallSheet.in(folder);
        proof = OpenProof.of(file).listen();
    }

    @AfterEach
    void close() {
        proof.close();
    }

    @Test
    void aPageFirstHearsWhatHoldsAndThenEachChange() throws IOException, InterruptedException {
        assertThat(proof.await("state", state -> true).get("version").asLong()).isEqualTo(1);
        JsonNode scene = proof.await("scene", told -> told.get("version").asLong() == 1);
        assertThat(scene.get("sheet").get("widthMm").asDouble()).isEqualTo(100);
        assertThat(scene.get("things").findValuesAsText("key"))
                .contains("figures[0]", "regions.bed", "passes.shadow", "camera.principal-point");
        assertThat(proof.await("findings", told -> true).get("troubles")).isEmpty();
        proof.set("figures[0].foot", "[20, 44]");
        JsonNode state = proof.await("state", told -> told.get("version").asLong() == 2);
        assertThat(state.get("by").asText()).isEqualTo("page");
        JsonNode moved = proof.await("scene", told -> told.get("version").asLong() == 2);
        for (JsonNode thing : moved.get("things")) {
            if (thing.get("key").asText().equals("figures[0]")) {
                assertThat(thing.get("foot").get(0).asDouble()).isEqualTo(20);
                assertThat(thing.get("box").get(0).asDouble()).isBetween(10.0, 20.0);
            }
        }
        proof.await("findings", told -> told.get("version").asLong() == 2);
    }

    @Test
    void whatOthersWriteIsHeard() throws IOException, InterruptedException {
        proof.await("findings", told -> true);
        Files.writeString(file, SmallSheet.TEXT.replace("opacity: 60", "opacity: 33"));
        JsonNode state = proof.await("state", told -> told.get("version").asLong() == 2);
        assertThat(state.get("by").asText()).isEqualTo("other");
        assertThat(state.get("text").asText()).contains("opacity: 33");
        SmallSheet.shadow(folder.resolve("shadow.png"), 60);
        JsonNode exported = proof.await("state", told -> told.get("version").asLong() == 3);
        assertThat(exported.get("by").asText()).isEqualTo("other");
        assertThat(proof.edit(2, "passes.shadow.opacity", "34", false).get("ok").asBoolean())
                .as("an export that changed makes no edit of the text stale")
                .isTrue();
    }

    @Test
    void aSheetFileThatIsGoneIsTold() throws IOException, InterruptedException {
        proof.await("findings", told -> true);
        Files.delete(file);
        JsonNode state = proof.await("state", told -> !told.get("trouble").isEmpty());
        assertThat(state.get("trouble").get(0).asText()).contains("no such file");
        assertThat(state.get("text").asText()).isEqualTo(SmallSheet.TEXT);
        assertThat(proof.set("passes.shadow.opacity", "70").get("ok").asBoolean())
                .isFalse();
        assertThat(file).doesNotExist();
        Files.writeString(file, SmallSheet.TEXT);
        proof.await("state", told -> told.get("trouble").isEmpty());
    }

    @Test
    void aSheetThatCannotBeShownTellsItsTroubles() throws IOException, InterruptedException {
        proof.await("findings", told -> true);
        Files.writeString(folder.resolve("lines.svg"), "no drawing");
        JsonNode findings =
                proof.await("findings", told -> !told.get("troubles").isEmpty());
        assertThat(findings.get("troubles").get(0).get("text").asText()).contains("lines.svg");
        assertThat(proof.get("/scene").get("troubles")).isNotEmpty();
    }

    @Test
    void aDeliveryRunsAndLeavesLinks() throws IOException, InterruptedException {
        assertThat(proof.post("/deliver", "{\"only\": [\"preview\", \"report\"]}")
                        .get("ok")
                        .asBoolean())
                .isTrue();
        JsonNode done = proof.await("delivery", told -> told.has("done"));
        assertThat(done.get("done").findValuesAsText("kind")).containsExactly("preview", "report");
        assertThat(folder.resolve("out/preview.png")).isRegularFile();
        assertThat(proof.fetch("/out/preview").body()).isEqualTo(Files.readAllBytes(folder.resolve("out/preview.png")));
        assertThat(proof.get("/state").get("outputs").findValuesAsText("href")).contains("/out/preview");
    }

    @Test
    void aDeliveryThatCannotBeDoneIsTold() throws IOException, InterruptedException {
        proof.post("/deliver", "{\"only\": [\"flat\"]}");
        assertThat(proof.await("delivery", told -> told.has("failed"))
                        .get("failed")
                        .asText())
                .contains("flat");
    }

    @Test
    void aDeliveryStops() throws IOException, InterruptedException {
        proof.await("findings", told -> true);
        proof.set("resolution", "2400");
        assertThat(proof.post("/deliver", "{}").get("ok").asBoolean()).isTrue();
        assertThat(proof.post("/deliver", "{}").get("ok").asBoolean())
                .as("one at a time")
                .isFalse();
        proof.await("delivery", told -> told.path("stage").asText().equals("underlay"));
        proof.post("/deliver/stop", "{}");
        proof.await("delivery", told -> told.has("stopped"));
        assertThat(folder.resolve("out/underlay.png")).doesNotExist();
    }

    @Test
    void theEndIsHeard() throws InterruptedException {
        proof.await("state", told -> true);
        proof.server().close();
        proof.await("ended", told -> true);
    }
}
