package org.adumbrate.registration;

import static org.assertj.core.api.Assertions.assertThat;

import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RatioCheckTest {
    private static final SheetSize TABLOID = new SheetSize(431.8, 279.4);

    @ParameterizedTest
    @CsvSource({
        "3400, 2200, SAME",
        "2543, 1645, SAME",
        "2566, 1661, ROUNDED",
        "2566, 1659, ROUNDED",
        "1634, 1013, WIDER",
        "1372, 1221, TALLER"
    })
    void theRatioIsComparedToTheNearestPixel(int width, int height, RatioCheck.Comparison fit) {
        RatioCheck check = RatioCheck.of(new PixelSize(width, height), TABLOID);
        assertThat(check.fit()).as(check.message()).isEqualTo(fit);
        assertThat(check.fills()).isEqualTo(fit == RatioCheck.Comparison.SAME || fit == RatioCheck.Comparison.ROUNDED);
    }

    @Test
    void theMessageNamesTheNumbersAndTheCauses() {
        String message = RatioCheck.of(new PixelSize(1634, 1013), TABLOID).message();
        assertThat(message)
                .contains("1634 x 1013 px", "1.6130", "431.8 x 279.4 mm", "1.5455", "44.3 rows", "4.4 %")
                .contains("cropped", "bars", "stretched");
    }
}
