package org.adumbrate.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CanvasTest {
    /** 17 x 11 in at 1600 px: 1035.29 rows are rounded to 1035, so that the two scales differ. */
    private static final Canvas WHOLE = Canvas.whole(new SheetSize(431.8, 279.4), new PixelSize(1600, 1035));

    @Test
    void acrossAndDownHaveScalesOfTheirOwn() {
        assertThat(WHOLE.pxPerMmAcross()).isCloseTo(1600 / 431.8, within(1e-12));
        assertThat(WHOLE.pxPerMmDown()).isCloseTo(1035 / 279.4, within(1e-12));
        RasterPoint corner = WHOLE.toPixels().at(431.8, 279.4);
        assertThat(corner.x()).isCloseTo(1600, within(1e-9));
        assertThat(corner.y()).isCloseTo(1035, within(1e-9));
        assertThat(WHOLE.toSheet().mapY(0, 1035)).isCloseTo(279.4, within(1e-9));
    }

    @Test
    void aWindowHoldsAllOfAFrameAndNoPixelMore() {
        Canvas whole = Canvas.whole(new SheetSize(100, 60), new PixelSize(1000, 600));
        assertThat(whole.window(new Frame(10, 20, 5, 4)).orElseThrow().window())
                .isEqualTo(new PixelBox(100, 200, 50, 40));
        assertThat(whole.window(new Frame(10.01, 20.09, 5, 4)).orElseThrow().window())
                .isEqualTo(new PixelBox(100, 200, 51, 41));
    }

    @Test
    void whatLiesOffTheSheetIsCutAway() {
        Canvas whole = Canvas.whole(new SheetSize(100, 60), new PixelSize(1000, 600));
        assertThat(whole.window(new Frame(-5, 50, 10, 100)).orElseThrow().window())
                .isEqualTo(new PixelBox(0, 500, 50, 100));
        assertThat(whole.window(new Frame(100, 0, 10, 10))).isEmpty();
        assertThat(whole.window(new Frame(0, -10, 10, 10))).isEmpty();
        assertThat(whole.window(new Frame(99.9999999999, 0, 10, 1e-12))
                        .orElseThrow()
                        .window())
                .isEqualTo(new PixelBox(999, 0, 1, 1));
    }

    @Test
    void aWindowLiesOnItsGrid() {
        assertThatThrownBy(() -> WHOLE.window(new PixelBox(1500, 0, 101, 1)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(WHOLE.window(new PixelBox(1500, 0, 100, 1)).size()).isEqualTo(new PixelSize(100, 1));
    }
}
