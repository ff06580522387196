package org.adumbrate.linework.sort;

import static org.assertj.core.api.Assertions.assertThat;

import org.adumbrate.geometry.Srgb;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColorRenderingTest {
    @ParameterizedTest
    @CsvSource({
        // 0.3 r + 0.59 g + 0.11 b = 75.1; by BT.709 80.8; of light 85.5
        "#0060a8, #4b4b4b, GREY",
        "#0060a8, #515151, GREY",
        "#0060a8, #555555, GREY",
        // black taken off the inks, 1 - 0.659: red (0 + 0.341) 0.659, green (0.376 + 0.341) 0.659, blue 0.659
        "#0060a8, #3979a8, CMYK",
        // black added again: red 0, green 0.571 - 0.341, blue 1 - 0.341
        "#0060a8, #003ba8, CMYK",
        "#000000, #080a0a, CMYK",
    })
    void whatBecomesOfAColour(String stated, String found, ColorRendering rendering) {
        assertThat(ColorRendering.of(color(stated), color(found))).contains(rendering);
    }

    @ParameterizedTest
    @CsvSource({
        "#0060a8, #0060a8",
        "#0060a8, #0062a6",
        "#0060a8, #666666",
        "#0060a8, #a86000",
        "#202020, #000000",
        "#404048, #333333",
    })
    void theSameAndOthersAreNone(String stated, String found) {
        assertThat(ColorRendering.of(color(stated), color(found))).isEmpty();
    }

    private static Srgb color(String text) {
        return Srgb.parse(text).orElseThrow();
    }
}
