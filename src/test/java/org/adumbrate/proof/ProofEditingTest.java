package org.adumbrate.proof;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.adumbrate.json.Json;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProofEditingTest {
    @TempDir
    private Path folder;

    private Path file;
    private OpenProof proof;

    @BeforeEach
    void open() throws IOException {
        file = SmallSheet.in(folder);
        proof = OpenProof.of(file);
    }

    @AfterEach
    void close() {
        proof.close();
    }

    private String text() throws IOException {
        return Files.readString(file);
    }

    private static JsonNode value(JsonNode state, String key) {
        for (JsonNode value : state.get("values")) {
            if (value.get("key").asText().equals(key)) {
                return value;
            }
        }
        throw new AssertionError("no value " + key);
    }

    @Test
    void aStateTellsEachValueWhereItStands() throws IOException {
        JsonNode state = proof.get("/state");
        String text = state.get("text").asText();
        assertThat(text).isEqualTo(SmallSheet.TEXT);
        assertThat(state.get("name").asText()).isEqualTo("shed");
        assertThat(state.get("complaints")).isEmpty();
        assertThat(state.get("undo").isNull()).isTrue();
        assertThat(state.get("decided")).isEmpty();
        JsonNode opacity = value(state, "passes.shadow.opacity");
        assertThat(text.substring(opacity.get("from").asInt(), opacity.get("to").asInt()))
                .isEqualTo("60");
        assertThat(opacity.get("type").asText()).isEqualTo("number");
        assertThat(opacity.get("units").get(0).asText()).isEqualTo("%");
        assertThat(opacity.get("min").asDouble()).isZero();
        assertThat(opacity.get("max").asDouble()).isEqualTo(100);
        assertThat(opacity.get("step").asDouble()).isEqualTo(1);
        JsonNode width = value(state, "pens.walls.width");
        assertThat(width.get("written").asBoolean()).isTrue();
        JsonNode unwritten = value(state, "entourage.opacity");
        assertThat(unwritten.get("written").asBoolean()).isFalse();
        assertThat(unwritten.has("from")).isFalse();
        assertThat(unwritten.get("value").asText()).isEqualTo("100");
        assertThat(state.get("outputs").get(0).get("kind").asText()).isEqualTo("underlay");
        assertThat(state.get("outputs").get(0).get("href").isNull()).isTrue();
    }

    @Test
    void anEditWritesItsSpansAndNothingElse() throws IOException {
        JsonNode answer = proof.set("passes.shadow.opacity", "72.5");
        assertThat(answer.get("ok").asBoolean()).isTrue();
        assertThat(text()).isEqualTo(SmallSheet.TEXT.replace("opacity: 60", "opacity: 72.5"));
        JsonNode span = answer.get("spans").get(0);
        int at = SmallSheet.TEXT.indexOf("60, frame");
        assertThat(span.get("oldFrom").asInt()).isEqualTo(at);
        assertThat(span.get("oldTo").asInt()).isEqualTo(at + 2);
        assertThat(span.get("newTo").asInt()).isEqualTo(at + 4);
        assertThat(answer.get("changes").get(0).get("key").asText()).isEqualTo("passes.shadow.opacity");
        assertThat(answer.get("changes").get(0).get("before").asText()).isEqualTo("60");
        assertThat(answer.get("version").asLong()).isEqualTo(2);
        assertThat(proof.get("/state").get("undo").asText()).isEqualTo("passes.shadow.opacity");
    }

    @Test
    void everyKindOfEditReadsWellAndUndoingAllGivesTheFirstBytes() throws IOException {
        List<String> edits = List.of(
                "{\"do\": \"set\", \"key\": \"figures[0].foot\", \"value\": \"[62, 46.5]\"}",
                "{\"do\": \"set\", \"key\": \"entourage.opacity\", \"value\": \"80\"}",
                "{\"do\": \"add\", \"key\": \"figures\", \"value\": \"{ outline: seated, foot: [40, 44], floor: yard }\"}",
                "{\"do\": \"add\", \"key\": \"pens\", \"value\": \"{ eaves: { color: '#c86400' } }\"}",
                "{\"do\": \"move\", \"key\": \"figures[1]\", \"index\": 0}",
                "{\"do\": \"rename\", \"key\": \"floors.yard\", \"name\": \"court\"}",
                "{\"do\": \"remove\", \"key\": \"pens.walls.width\"}");
        for (String edit : edits) {
            JsonNode answer =
                    proof.post("/edit", "{\"version\": %d, \"edits\": [%s]}".formatted(proof.version(), edit));
            assertThat(answer.get("ok").asBoolean()).as(edit + answer).isTrue();
            JsonNode state = proof.get("/state");
            assertThat(state.get("complaints")).as(edit).isEmpty();
            assertThat(state.get("text").asText())
                    .isEqualTo(text())
                    .isEqualTo(answer.get("text").asText());
        }
        String last = text();
        List<String> typed = new ArrayList<>(List.of(last.replace("# A shed", "# The shed, drawn 𝄞 again")));
        typed.add(typed.get(0).replace("60, frame", "61, frame"));
        for (String next : typed) {
            JsonNode answer = type(next);
            assertThat(answer.get("ok").asBoolean()).as(answer.toString()).isTrue();
            assertThat(text()).isEqualTo(next);
        }
        for (int k = edits.size() + typed.size(); k > 0; k--) {
            assertThat(proof.step("/undo").get("ok").asBoolean()).isTrue();
        }
        assertThat(text()).isEqualTo(SmallSheet.TEXT);
        assertThat(proof.step("/undo").get("ok").asBoolean())
                .as("nothing is left")
                .isFalse();
        for (int k = edits.size() + typed.size(); k > 0; k--) {
            assertThat(proof.step("/redo").get("ok").asBoolean()).isTrue();
        }
        assertThat(text()).isEqualTo(typed.get(1));
    }

    private JsonNode type(String next) throws IOException {
        return proof.post("/text", Json.text(Json.object("version", proof.version(), "text", next)));
    }

    @Test
    void undoGoesOnInAnotherProgram() throws IOException {
        proof.set("passes.shadow.opacity", "70");
        proof.close();
        proof = OpenProof.of(file);
        assertThat(proof.get("/state").get("undo").asText()).isEqualTo("passes.shadow.opacity");
        proof.step("/undo");
        assertThat(text()).isEqualTo(SmallSheet.TEXT);
    }

    @Test
    void whatIsTypedAndDoesNotReadIsNotWritten() throws IOException {
        JsonNode unknown = type(SmallSheet.TEXT.replace("opacity: 60", "opacty: 60"));
        assertThat(unknown.get("ok").asBoolean()).isFalse();
        assertThat(unknown.get("reasons").get(0).get("text").asText()).contains("opacty");
        JsonNode noYaml = type(SmallSheet.TEXT + "}");
        assertThat(noYaml.get("ok").asBoolean()).isFalse();
        assertThat(text()).isEqualTo(SmallSheet.TEXT);
        assertThat(proof.version()).isEqualTo(1);
    }

    @Test
    void whatIsTypedKeepsMarkAndLineEndsOfTheFile() throws IOException {
        String windows = "\uFEFF" + SmallSheet.TEXT.replace("\n", "\r\n");
        Files.writeString(file, windows);
        String shown = shownAfterLook(windows);
        assertThat(shown).isEqualTo(SmallSheet.TEXT);
        JsonNode answer = type(shown.replace("opacity: 60", "opacity: 65").replace("# A shed", "# A\n# shed"));
        assertThat(answer.get("ok").asBoolean()).as(answer.toString()).isTrue();
        assertThat(text())
                .isEqualTo(windows.replace("opacity: 60", "opacity: 65").replace("# A shed", "# A\r\n# shed"));
        JsonNode opacity = value(proof.get("/state"), "passes.shadow.opacity");
        assertThat(answer.get("text")
                        .asText()
                        .substring(
                                opacity.get("from").asInt(), opacity.get("to").asInt()))
                .isEqualTo("65");
    }

    /** An edit that is stale makes the server look at the file. */
    private String shownAfterLook(String written) throws IOException {
        assertThat(text()).isEqualTo(written);
        proof.edit(1, "passes.shadow.opacity", "70", false);
        return proof.get("/state").get("text").asText();
    }

    @Test
    void aTryWritesNothing() throws IOException {
        for (String value : List.of("61", "62", "63")) {
            JsonNode answer = proof.edit(1, "passes.shadow.opacity", value, true);
            assertThat(answer.get("ok").asBoolean()).isTrue();
            assertThat(answer.get("version").asLong()).isEqualTo(1);
            assertThat(answer.get("text").asText()).contains("opacity: " + value);
        }
        assertThat(text()).isEqualTo(SmallSheet.TEXT);
        assertThat(proof.get("/state").get("text").asText()).isEqualTo(SmallSheet.TEXT);
        assertThat(proof.get("/state").get("undo").isNull()).isTrue();
        assertThat(proof.post("/edit", "{\"version\": 1, \"edits\": [], \"try\": true}")
                        .get("ok")
                        .asBoolean())
                .isTrue();
        JsonNode refused = proof.edit(1, "passes.shadow.opacity", "0.5", true);
        assertThat(refused.get("ok").asBoolean()).isFalse();
        assertThat(refused.get("reasons").get(0).get("text").asText()).isNotEmpty();
    }

    @Test
    void aStaleEditIsNotForced() throws IOException {
        String others = SmallSheet.TEXT.replace("# A shed", "# Their shed");
        Files.writeString(file, others);
        JsonNode stale = proof.edit(1, "passes.shadow.opacity", "70", false);
        assertThat(stale.get("ok").asBoolean()).isFalse();
        assertThat(stale.get("stale").asBoolean()).isTrue();
        assertThat(stale.get("version").asLong()).isEqualTo(2);
        assertThat(text()).isEqualTo(others);
        assertThat(proof.edit(2, "passes.shadow.opacity", "70", false).get("ok").asBoolean())
                .isTrue();
        assertThat(text()).isEqualTo(others.replace("opacity: 60", "opacity: 70"));
        assertThat(proof.edit(2, "passes.shadow.opacity", "71", false)
                        .get("stale")
                        .asBoolean())
                .as("the page's own edit makes it stale, too")
                .isTrue();
        assertThat(proof.edit(99, "passes.shadow.opacity", "71", false)
                        .get("stale")
                        .asBoolean())
                .isTrue();
    }

    @Test
    void namesWithMarkupAreData() throws IOException {
        String name = "<img src=x onerror=alert(1)>&\u2028.svg";
        Files.writeString(
                folder.resolve(name), "<svg xmlns='http://www.w3.org/2000/svg'><path d='M-10-90H10V0H-10Z'/></svg>");
        JsonNode answer = proof.set("figures[0].outline", name.replace("\u2028", "\\u2028"));
        assertThat(answer.get("ok").asBoolean()).as(answer.toString()).isTrue();
        assertThat(proof.get("/scene").get("things").findValuesAsText("label")).contains(name);
        assertThat(new String(proof.fetch("/").body(), StandardCharsets.UTF_8)).doesNotContain("alert(1)");
        String state = new String(proof.fetch("/state").body(), StandardCharsets.UTF_8);
        assertThat(state).contains("onerror").doesNotContain("\u2028");
        assertThat(proof.fetch("/state").headers().firstValue("Content-Type")).hasValue("application/json");
    }

    @Test
    void aSheetFileThatDoesNotReadIsOpenAllTheSame() throws IOException {
        String broken = SmallSheet.TEXT.replace("opacity: 60", "opacty: 60");
        Files.writeString(file, broken);
        proof.close();
        proof = OpenProof.of(file);
        JsonNode state = proof.get("/state");
        JsonNode complaint = state.get("complaints").get(0);
        assertThat(complaint.get("text").asText()).contains("opacty");
        assertThat(complaint.get("from").asInt()).isEqualTo(broken.indexOf("opacty"));
        assertThat(type(SmallSheet.TEXT).get("ok").asBoolean()).isTrue();
        assertThat(proof.get("/state").get("complaints")).isEmpty();
        Files.writeString(file, "{");
        proof.edit(1, "lines", "x", false);
        assertThat(proof.get("/state").get("complaints")).isNotEmpty();
        assertThat(proof.get("/state").get("values")).isEmpty();
        assertThat(type(SmallSheet.TEXT).get("ok").asBoolean()).isTrue();
        assertThat(text()).isEqualTo(SmallSheet.TEXT);
    }
}
