package org.adumbrate.linework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.junit.jupiter.api.Test;

class PageFitTest {
    private static final SheetSize A3 = new SheetSize(420, 297);

    @Test
    void theSameSizeStaysAsItIs() throws Refusal {
        assertThat(PageFit.SAME_RATIO.onto(A3, A3).at(12, 34)).isEqualTo(new SheetPoint(12, 34));
    }

    @Test
    void theSameRatioIsScaledSoThatFrameMeetsFrame() throws Refusal {
        // A4 as points round it, 842 x 595, onto A3
        SheetSize a4 = new SheetSize(842 * 25.4 / 72, 595 * 25.4 / 72);
        for (PageFit fit : PageFit.values()) {
            SheetPoint corner = fit.onto(a4, A3).at(a4.widthMm(), a4.heightMm());
            assertThat(corner.x()).isCloseTo(420, within(1e-9));
            assertThat(corner.y()).isCloseTo(297, within(1e-9));
        }
    }

    @Test
    void ratiosAreTheSameWithinTwoInAThousandOrHalfAMillimetre() throws Refusal {
        SheetSize large = new SheetSize(1000, 1000);
        assertThat(PageFit.SAME_RATIO.onto(new SheetSize(1000, 1001.9), large)).isNotNull();
        assertThatThrownBy(() -> PageFit.SAME_RATIO.onto(new SheetSize(1000, 1002.1), large))
                .isInstanceOf(Refusal.class);
        SheetSize small = new SheetSize(50, 50);
        assertThat(PageFit.SAME_RATIO.onto(new SheetSize(50, 50.49), small)).isNotNull();
        assertThatThrownBy(() -> PageFit.SAME_RATIO.onto(new SheetSize(50, 50.51), small))
                .isInstanceOf(Refusal.class);
    }

    @Test
    void anotherRatioIsRefusedWithItsNumbers() {
        assertThatThrownBy(() -> PageFit.SAME_RATIO.onto(new SheetSize(431.8, 279.4), A3))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("page is 431.8 x 279.4 mm (1.5455 : 1)")
                .hasMessageContaining("sheet is 420 x 297 mm (1.4141 : 1)")
                .hasMessageContaining("say fit")
                .hasMessageContaining("or crop");
    }

    @Test
    void aPageThatLiesAcrossIsToldApart() {
        assertThatThrownBy(() -> PageFit.SAME_RATIO.onto(new SheetSize(297, 420), A3))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("lies across");
    }

    @Test
    void fitShowsTheWholePageAndCropFillsTheSheetBothCentred() throws Refusal {
        SheetSize page = new SheetSize(100, 100);
        SheetSize sheet = new SheetSize(300, 200);
        Affine<PagePoint, SheetPoint> fit = PageFit.FIT.onto(page, sheet);
        assertThat(fit.at(0, 0)).isEqualTo(new SheetPoint(50, 0));
        assertThat(fit.at(100, 100)).isEqualTo(new SheetPoint(250, 200));
        Affine<PagePoint, SheetPoint> crop = PageFit.CROP.onto(page, sheet);
        assertThat(crop.at(0, 0)).isEqualTo(new SheetPoint(0, -50));
        assertThat(crop.at(100, 100)).isEqualTo(new SheetPoint(300, 250));
    }
}
