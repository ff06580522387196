package org.adumbrate.proof.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** What the hand does that is neither a click nor a stepped value. */
class PageGesturesTest extends ProofPageTest {
    @BeforeEach
    void wholeSheet() {
        page.run("document.getElementById('pane').focus()");
        page.press("0");
    }

    @Test
    void twoFingersZoomAboutTheirMiddle() {
        int[] middle = page.at(60, 40);
        double width = width();
        fingers("touchStart", middle, 40);
        for (int apart = 50; apart <= 100; apart += 10) {
            fingers("touchMove", middle, apart);
        }
        fingers("touchEnd", middle, 0);
        page.await(() -> width() > 2 * width);
        assertThat(page.at(60, 40)[0]).isCloseTo(middle[0], within(6));
        assertThat(page.at(60, 40)[1]).isCloseTo(middle[1], within(6));
    }

    @Test
    void spaceTakesHoldOfThePaperWhateverLiesThere() throws IOException {
        page.press("+", "+", "+");
        int[] before = page.at(80, 66);
        new Actions(page.driver()).keyDown(" ").perform();
        page.drag(80, 66, 86, 68).release().perform();
        new Actions(page.driver()).keyUp(" ").perform();
        page.await(() -> page.at(80, 66)[0] > before[0] + 20);
        assertThat(page.text()).isEqualTo(PageSheet.TEXT);
    }

    @Test
    void aPassIsMovedByACornerOfItsFrame() throws IOException {
        page.restore(PageSheet.TEXT.replace("frame: sheet", "frame: [0, 0, 120, 80]"));
        select("passes.shadow");
        page.drag(120, 80, 114, 76).release().perform();
        page.await(() -> !page.line("frame:").contains("[0, 0, 120, 80]"));
        assertThat(sides("frame: \\[([^]]*)]")).satisfies(sides -> {
            assertThat(sides.get(2)).isCloseTo(114, within(1.0));
            assertThat(sides.get(3)).isCloseTo(76, within(1.0));
        });
    }

    @Test
    void aSunSampleIsMovedByItsTip() throws IOException {
        page.restore(PageSheet.TEXT.replaceAll(
                "(?m)^sun:.*$", "sun: { sample: { foot: [80, 70], head: [80, 44], tip: [70, 66] } }"));
        select("sun");
        page.drag(70, 66, 66, 64).release().perform();
        page.await(() -> !page.line("sun:").contains("tip: [70, 66]"));
        assertThat(sides("tip: \\[([^]]*)]").get(0)).isCloseTo(66, within(1.0));
    }

    @Test
    void anItemIsTakenToAnotherPlaceInTheOrder() throws IOException {
        takeTo("pens.eaves", "pens.walls", -4).release().perform();
        page.await(() -> page.sheetOrder("eaves:", "walls:"));
        page.press(Keys.CONTROL, "z");
        page.await(() -> page.sheetOrder("walls:", "eaves:"));
        assertThat(page.text()).isEqualTo(PageSheet.TEXT);
    }

    @Test
    void escapeLeavesTheOrderAsItWas() throws IOException {
        takeTo("figures[0]", "figures[1]", 30).perform();
        page.await(() -> page.has("#text .handle.after"));
        page.press(Keys.ESCAPE);
        new Actions(page.driver()).release().perform();
        page.await(() -> !page.has("#text .handle.after, #text .handle.before"));
        assertThat(page.text()).isEqualTo(PageSheet.TEXT);
    }

    private Actions takeTo(String item, String other, int below) {
        WebElement from = page.find("#text [data-item='" + item + "']");
        WebElement to = page.find("#text [data-item='" + other + "']");
        page.run("arguments[0].scrollIntoView({ block: 'center' })", from);
        int height = to.getLocation().y - from.getLocation().y + below;
        return new Actions(page.driver())
                .moveToElement(from)
                .clickAndHold()
                .moveByOffset(0, height / 2)
                .moveByOffset(0, height - height / 2);
    }

    private void select(String item) {
        page.await(() -> {
            WebElement handle = page.find("#text [data-item='" + item + "']");
            page.run("arguments[0].scrollIntoView({ block: 'center' })", handle);
            handle.click();
            return true;
        });
        page.await(() -> page.has("#overlay .chosen .handle"));
    }

    private List<Double> sides(String pattern) throws IOException {
        return Stream.of(page.text().replaceAll("(?s).*" + pattern + ".*", "$1").split(", ", -1))
                .map(Double::valueOf)
                .toList();
    }

    private double width() {
        return ((Number) page.run("return document.getElementById('paper').getBoundingClientRect().width"))
                .doubleValue();
    }

    private void fingers(String kind, int[] middle, int apart) {
        List<Map<String, Object>> points = apart == 0
                ? List.of()
                : List.of(
                        Map.of("x", middle[0] - apart, "y", middle[1], "id", 0),
                        Map.of("x", middle[0] + apart, "y", middle[1], "id", 1));
        page.driver().executeCdpCommand("Input.dispatchTouchEvent", Map.of("type", kind, "touchPoints", points));
    }
}
