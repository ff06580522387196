package org.adumbrate.proof.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.interactions.WheelInput;

class PageDrawingTest extends ProofPageTest {
    @BeforeEach
    void wholeSheet() {
        zoom("whole sheet");
    }

    @Test
    void wordsZoomToPrintSizeAndPixelsOfThePaper() {
        zoom("print size");
        assertThat(paperWidth()).isCloseTo(120 * 96 / 25.4, within(1.0));
        zoom("arm's length");
        assertThat(paperWidth()).isCloseTo(120 * 96 / 25.4 * 5 / 7, within(1.0));
        zoom("pixel of the paper");
        assertThat(paperWidth()).isCloseTo(120 * 100 / 25.4, within(1.0));
        page.await(() -> page.is("document.getElementById('picture').width > 0"));
    }

    @Test
    void theWheelZoomsAtThePointer() {
        int[] before = page.at(30, 20);
        double width = paperWidth();
        new Actions(page.driver())
                .scrollFromOrigin(WheelInput.ScrollOrigin.fromViewport(before[0], before[1]), 0, -200)
                .perform();
        page.await(() -> paperWidth() > width * 1.2);
        int[] after = page.at(30, 20);
        assertThat(after[0]).isCloseTo(before[0], within(2));
        assertThat(after[1]).isCloseTo(before[1], within(2));
    }

    @Test
    void keysZoomAndPan() {
        page.run("document.getElementById('pane').focus()");
        double width = paperWidth();
        page.press("+", "+");
        page.await(() -> paperWidth() > width * 1.5);
        int left = page.at(0, 0)[0];
        page.press(Keys.ARROW_RIGHT);
        page.await(() -> page.at(0, 0)[0] == left - 60);
        page.press("-", "-", "0");
        page.await(() -> Math.abs(paperWidth() - width) < 1);
    }

    @Test
    void thePaperIsDraggedAlong() {
        zoom("print size");
        page.press("+", "+", "+", "+");
        int[] before = page.at(20, 5);
        page.drag(20, 5, 30, 9).release().perform();
        page.await(() -> page.at(20, 5)[0] > before[0] + 10);
    }

    @Test
    void whatIsUnderThePointerIsMarkedInBothParts() {
        page.moveTo(100, 10).perform();
        page.await(() -> page.has("#text .cm-line.marked")
                && page.find("#text .cm-line.marked").getText().contains("eaves"));
        page.await(() -> page.has("#overlay .marked path"));
        WebElement item = page.find("#text [data-item='figures[1]']");
        page.run("arguments[0].scrollIntoView({ block: 'center' })", item);
        new Actions(page.driver()).moveToElement(item).perform();
        page.await(() -> page.has("#overlay .marked rect"));
    }

    @Test
    void aClickSelectsAndFoldsWhatDoesNotConcernIt() {
        double[] middle = middle("figures[0]");
        page.click(middle[0], middle[1]);
        page.await(() -> page.has("#text .chosen"));
        assertThat(page.find("#text .chosen").getText()).contains("standing");
        page.await(() -> page.has("#text .fold"));
        assertThat(page.has("#text [data-key='pens.eaves.width']")).isTrue();
        assertThat(page.find(".label").getText()).contains("standing", "yard", "m", "step");
        page.press(Keys.ESCAPE);
        page.await(() -> !page.has("#text .fold"));
    }

    @Test
    void aPersonIsDraggedSeenOnTheWayAndWrittenOnce() throws IOException {
        double[] from = middle("figures[0]");
        page.drag(from[0], from[1], from[0] + 10, from[1] + 2).perform();
        page.await(() -> !page.valueText("figures[0].foot[0]").equals("80"));
        assertThat(page.text()).isEqualTo(PageSheet.TEXT);
        new Actions(page.driver()).release().perform();
        page.await(() -> !page.line("standing").contains("[80, 68]"));
        List<Double> foot = foot("standing");
        assertThat(foot.get(0)).isCloseTo(90, within(0.6));
        assertThat(foot.get(1)).isCloseTo(70, within(0.6));
        page.press(Keys.CONTROL, "z");
        page.awaitLine("standing", "[80, 68]");
    }

    @Test
    void escapeCancelsADragAndNothingIsHalfDone() throws IOException {
        double[] from = middle("figures[0]");
        page.drag(from[0], from[1], from[0] + 10, from[1] + 2).perform();
        page.await(() -> !page.valueText("figures[0].foot[0]").equals("80"));
        page.press(Keys.ESCAPE);
        new Actions(page.driver()).release().perform();
        page.await(() -> page.valueText("figures[0].foot[0]").equals("80"));
        assertThat(page.text()).isEqualTo(PageSheet.TEXT);
        assertThat(page.find(".label").isDisplayed()).isTrue();
    }

    @Test
    void keysAloneSelectMoveAndChangeTheFloor() {
        page.run("document.getElementById('pane').focus()");
        while (!page.focused().equals("figures[0]")) {
            page.press(Keys.PAGE_DOWN);
        }
        page.press(Keys.ARROW_RIGHT);
        page.awaitLine("standing", "foot: [81, 68]");
        page.press(Keys.SHIFT, Keys.ARROW_UP);
        page.awaitLine("standing", "foot: [81, 67.9]");
        page.await(() -> page.find(".label").getText().contains("or on"));
        page.press(Keys.TAB);
        page.awaitLine("standing", "floor: step");
        page.press(Keys.ENTER);
        page.await(() -> page.focused().startsWith("figures[0]."));
        assertThat(page.focused()).isEqualTo("figures[0].outline");
    }

    @Test
    void theOtherFloorIsOfferedByName() {
        double[] middle = middle("figures[0]");
        page.click(middle[0], middle[1]);
        page.await(() -> page.find(".label").getText().contains("step"));
        page.find(".label").findElements(By.tagName("button")).stream()
                .filter(word -> word.getText().equals("step"))
                .findFirst()
                .orElseThrow()
                .click();
        page.awaitLine("standing", "floor: step");
    }

    @Test
    void deleteRemoves() {
        double[] middle = middle("figures[1]");
        page.click(middle[0], middle[1]);
        page.await(() -> page.has("#text .chosen"));
        page.press(Keys.DELETE);
        page.await(() -> page.line("walking").isEmpty());
        page.press(Keys.CONTROL, "z");
        page.awaitLine("walking", "[40, 64]");
    }

    @Test
    void aCornerSnapsToTheEndOfALine() {
        page.click(30, 75);
        page.await(() -> page.has("#overlay .chosen .handle[data-handle='0']"));
        page.drag(10, 60, 10.5, 20.6).perform();
        page.await(() -> page.find("#hint").getText().startsWith("on "));
        new Actions(page.driver()).release().perform();
        page.awaitLine("bed:", "[[10, 20], ");
    }

    @Test
    void cornersAreMovedByKeys() {
        page.click(30, 75);
        page.await(() -> page.has("#overlay .chosen .handle"));
        page.press(Keys.TAB, Keys.ARROW_RIGHT);
        page.awaitLine("bed:", "[10, 60], [51, 60]");
    }

    @Test
    void thePrincipalPointIsMoved() {
        page.run("document.getElementById('pane').focus()");
        while (!page.focused().startsWith("camera")) {
            page.press(Keys.PAGE_UP);
        }
        page.press(Keys.ARROW_LEFT);
        page.awaitLine("camera:", "[59, 40]");
    }

    private void zoom(String word) {
        page.driver().findElements(By.cssSelector("#zooms .word")).stream()
                .filter(each -> each.getText().equals(word))
                .findFirst()
                .orElseThrow()
                .click();
    }

    private double paperWidth() {
        return ((Number) page.run("return document.getElementById('paper').getBoundingClientRect().width"))
                .doubleValue();
    }

    /** The middle of a thing, in mm of the sheet. */
    private double[] middle(String key) {
        page.frame();
        WebElement thing = page.thing(key);
        List<?> place = (List<?>) page.run("""
                const box = arguments[0].getBoundingClientRect();
                const paper = document.getElementById("paper").getBoundingClientRect();
                return [((box.left + box.right) / 2 - paper.left) / paper.width * 120,
                  ((box.top + box.bottom) / 2 - paper.top) / paper.height * 80];
                """, thing);
        return place.stream().mapToDouble(side -> ((Number) side).doubleValue()).toArray();
    }

    private List<Double> foot(String words) {
        String[] sides =
                page.line(words).replaceAll(".*foot: \\[([^]]*)].*", "$1").split(", ", -1);
        return List.of(Double.valueOf(sides[0]), Double.valueOf(sides[1]));
    }
}
