package org.adumbrate.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.perspective.SunDirection;
import org.adumbrate.perspective.View;
import org.junit.jupiter.api.Test;

class ShadowPlateTest {
    private static final View VIEW = new View(250, new SheetPoint(190, 110), 1.6, 0);

    private static String plate(SunDirection sun) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Sunlight light = Reports.sun(VIEW, sun);
        new ShadowPlate(Reports.SHEET, light, light.upright().orElseThrow()).write(new Html(out));
        return out.toString(StandardCharsets.UTF_8);
    }

    private static double number(String text, String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        assertThat(matcher.find()).as(pattern).isTrue();
        return Double.parseDouble(matcher.group(1));
    }

    /**
     * Behind the viewer to the left at 45 degrees: shadows run to the right and away, toward principal.x + f; on the sheet's
     * own scale the ray point lies f / cos 45 / tan 45 = 1.4142 f tan(altitude) below the horizon.
     */
    @Test
    void theSunBehindHasARayPointBelowTheHorizon() throws IOException {
        String html = plate(SunDirection.of(225, 20, 0));
        assertThat(html).contains(">shadow point<").contains("The sun stands behind the viewer");
        assertThat(number(html, "class=\"ring\" cx=\"(440\\.00)\" cy=\"110.00\""))
                .isEqualTo(440);
        double below = 250 * Math.sqrt(2) * Math.tan(Math.toRadians(20));
        assertThat(number(html, "class=\"ring\" cx=\"440.00\" cy=\"((?!110)[0-9.]+)\""))
                .isEqualTo(110 + below, offset(0.01));
    }

    @Test
    void theSunBeforeStandsAboveTheHorizon() throws IOException {
        String html = plate(SunDirection.of(45, 15, 0));
        assertThat(html).contains(">sun<").contains("The sun stands before the viewer");
        double above = 250 * Math.sqrt(2) * Math.tan(Math.toRadians(15));
        assertThat(number(html, "class=\"ring\" cx=\"440.00\" cy=\"((?!110)[0-9.]+)\""))
                .isEqualTo(110 - above, offset(0.01));
    }

    @Test
    void aSunBesideCastsShadowsParallelToThePicture() throws IOException {
        String html = plate(SunDirection.of(90, 40, 0));
        assertThat(html).contains(">parallel<").doesNotContain("NaN", "Infinity");
    }

    @Test
    void aPointFarOffIsAnArrowWithItsDistance() throws IOException {
        String html = plate(SunDirection.of(260, 50, 0));
        assertThat(html)
                .contains(">to the shadow point<")
                .containsPattern("The shadow point lies off this picture, [0-9]+ mm from the foot")
                .doesNotContain("NaN", "Infinity");
    }
}
