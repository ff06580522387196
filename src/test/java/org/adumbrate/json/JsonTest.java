package org.adumbrate.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JsonTest {
    private static JsonObject read(String text) throws JsonFault {
        return JsonReader.object(text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void whatIsWrittenIsReadBack() throws JsonFault {
        String words = "a \"b\" \\ \n\t\u0000 \u202E ü 𝄞 </script>";
        String text = Json.text(Json.object(
                "words", words,
                "number", 0.1,
                "whole", 7L,
                "none", Optional.empty(),
                "some", Optional.of("x"),
                "infinite", Double.POSITIVE_INFINITY,
                "list", Arrays.asList(1, null, true),
                "empty", List.of(),
                "object", Json.object()));
        JsonObject back = read(text);
        assertThat(back.text("words")).isEqualTo(words);
        assertThat(back.members().get("number")).isEqualTo(0.1);
        assertThat(back.whole("whole")).isEqualTo(7);
        assertThat(back.has("none")).isFalse();
        assertThat(back.text("some")).isEqualTo("x");
        assertThat(back.has("infinite")).isFalse();
        assertThat(back.members().get("list")).isEqualTo(Arrays.asList(1.0, null, true));
        assertThat(back.members().get("empty")).isEqualTo(List.of());
        assertThat(back.object("object")).isPresent();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "null",
                "[1]",
                "{\"a\": 1,}",
                "{'a': 1}",
                "{\"a\": 1} {}",
                "{\"a\": 01}",
                "{\"a\": NaN}",
                "{\"a\": 1 // x\n}",
                "{\"a\": 1, \"a\": 2}",
                "{\"a\": \"\n\"}",
                "{\"a\"",
                "{\"a\": [[[[[[[[[[[[[[[[[[[[1]]]]]]]]]]]]]]]]]]]]}"
            })
    void whatIsNoJsonIsRefusedInOneLine(String text) {
        assertThatThrownBy(() -> read(text)).isInstanceOf(JsonFault.class).hasMessageMatching("[^\n]+");
    }

    @Test
    void whatIsOfAnotherKindIsTold() throws JsonFault {
        JsonObject object = read("{\"text\": 1, \"whole\": 1.5, \"list\": [1, \"a\"], \"flag\": \"true\"}");
        assertThatThrownBy(() -> object.text("text")).hasMessage("text: expected a text");
        assertThatThrownBy(() -> object.text("missing")).hasMessage("missing: expected a text");
        assertThatThrownBy(() -> object.whole("whole")).hasMessage("whole: expected a whole number");
        assertThatThrownBy(() -> object.numbers("list", 2)).hasMessage("list: expected a list of numbers");
        assertThatThrownBy(() -> object.flag("flag")).hasMessage("flag: expected true or false");
        assertThatThrownBy(() -> object.object("list")).hasMessage("list: expected an object");
        assertThat(object.flag("missing")).isFalse();
        assertThat(object.texts("missing")).isEmpty();
    }
}
