package org.adumbrate.proof.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.Actions;

class PageTextTest extends ProofPageTest {
    @Test
    void arrowsStepAValueAndNothingElseChanges() throws IOException {
        page.focus("passes.shadow.opacity");
        page.press(Keys.ARROW_UP, Keys.ARROW_UP);
        page.awaitLine("shadow.png", "opacity: 62");
        assertThat(page.valueText("passes.shadow.opacity")).isEqualTo("62");
        assertThat(page.value("passes.shadow.opacity").getDomAttribute("aria-valuenow"))
                .isEqualTo("62");
        assertThat(page.focused()).isEqualTo("passes.shadow.opacity");
        assertThat(page.text()).isEqualTo(PageSheet.TEXT.replace("opacity: 60", "opacity: 62"));
    }

    @Test
    void shiftStepsFinerAndHomeGoesToTheLeast() {
        page.focus("passes.shadow.opacity");
        page.press(Keys.SHIFT, Keys.ARROW_DOWN);
        page.awaitLine("shadow.png", "opacity: 59.9");
        page.press(Keys.HOME);
        page.awaitLine("shadow.png", "opacity: 0");
    }

    @Test
    void aWeightGoesThroughTheSeriesOfPens() {
        page.focus("pens.eaves.width");
        page.press(Keys.ARROW_UP);
        page.awaitLine("eaves", "width: 0.35 mm");
    }

    @Test
    void whatHoldsUnsaidStandsThereAndIsWrittenWhenAdjusted() {
        assertThat(page.value("pens.walls.width").isDisplayed()).isTrue();
        page.focus("pens.walls.width");
        page.press(Keys.ARROW_UP);
        page.awaitLine("walls:", "width: 0.35 mm");
        assertThat(page.focused()).isEqualTo("pens.walls.width");
    }

    @Test
    void aValueIsTypedOver() {
        page.focus("passes.shadow.opacity");
        page.press("7", "5", Keys.ENTER);
        page.awaitLine("shadow.png", "opacity: 75");
        page.focus("passes.shadow.opacity");
        page.press(Keys.ENTER, "12", Keys.ESCAPE);
        assertThat(page.line("shadow.png")).contains("opacity: 75");
        page.await(() -> page.focused().equals("passes.shadow.opacity"));
    }

    @Test
    void aValueThatIsRefusedGoesBackAndTheReasonIsSaid() {
        page.focus("passes.shadow.opacity");
        page.press("7", "7", "7", Keys.ENTER);
        page.await(() -> page.said().contains("Not changed"));
        page.await(() -> page.valueText("passes.shadow.opacity").equals("60"));
        assertThat(page.line("shadow.png")).contains("opacity: 60");
    }

    @Test
    void aNumberIsPulledAlongTheLineAndWrittenOnce() {
        new Actions(page.driver())
                .clickAndHold(page.value("sun.altitude"))
                .moveByOffset(30, 0)
                .moveByOffset(20, 0)
                .perform();
        page.await(() -> !page.valueText("sun.altitude").equals("47"));
        assertThat(page.line("sun:")).contains("altitude: 47");
        new Actions(page.driver()).release().perform();
        page.awaitLine("sun:", "altitude: 57");
        page.press(Keys.CONTROL, "z");
        page.awaitLine("sun:", "altitude: 47");
    }

    @Test
    void escapeLetsGoOfAPulledNumber() {
        new Actions(page.driver())
                .clickAndHold(page.value("sun.altitude"))
                .moveByOffset(40, 0)
                .perform();
        page.press(Keys.ESCAPE);
        new Actions(page.driver()).release().perform();
        page.await(() -> page.valueText("sun.altitude").equals("47"));
        assertThat(page.line("sun:")).contains("altitude: 47");
    }

    @Test
    void aWordIsChosenFromWhatIsAllowed() {
        page.focus("pens.walls.role");
        page.press(Keys.ENTER);
        page.await(() -> page.has("#lists [role=listbox]"));
        page.press("g", Keys.ENTER);
        page.await(() -> !page.has("#lists [role=listbox]"));
        page.awaitLine("walls:", "role: g");
    }

    @Test
    void aColourIsChosenFromTheSheetsOwn() {
        page.value("pens.walls.color").click();
        page.await(() -> page.has("#lists [role=listbox]"));
        List<String> offered = page.driver().findElements(By.cssSelector("#lists [role=option]")).stream()
                .map(option -> option.getDomAttribute("aria-label"))
                .toList();
        assertThat(offered).contains("#0a64c8", "#00a03c", "#c86400");
        page.find("#lists [role=option][aria-label='#c86400']").click();
        page.awaitLine("walls:", "#c86400");
    }

    @Test
    void typingIsWrittenAfterARest() {
        page.caretInFirstRow();
        page.press(Keys.END, Keys.BACK_SPACE, Keys.BACK_SPACE, "cm");
        page.awaitLine("size:", "120 x 80 cm");
        page.press(Keys.CONTROL, "z");
        page.awaitLine("size:", "120 x 80 mm");
    }

    @Test
    void whatDoesNotReadStaysInThePageWithTheReason() throws IOException {
        page.caretInFirstRow();
        page.press(Keys.END, "q");
        page.await(() -> page.said().contains("does not read"));
        page.await(() -> page.has("#text .note.complaint"));
        assertThat(page.text()).isEqualTo(PageSheet.TEXT);
        page.press(Keys.BACK_SPACE);
        page.await(() -> !page.has("#text .note.complaint"));
        assertThat(page.text()).isEqualTo(PageSheet.TEXT);
    }

    @Test
    void markupIsText() {
        assertThat(page.has("#bold")).isFalse();
        assertThat(page.find("#text .prose").getText()).contains("<b id=\"bold\">yard</b>");
        assertThat(page.find("[data-item='pens.eaves']").getText()).contains("eaves");
    }

    @Test
    void anItemIsRenamedMovedAndRemovedByKeys() {
        page.run("document.querySelector('[data-item=\"pens.walls\"]').focus()");
        page.press(Keys.F2, "outer", Keys.ENTER);
        page.awaitLine("#0a64c8", "outer:");
        page.await(() -> page.has("[data-item='pens.outer']"));
        page.run("document.querySelector('[data-item=\"pens.outer\"]').focus()");
        page.press(Keys.ALT, Keys.ARROW_DOWN);
        page.await(() -> page.sheetOrder("eaves", "outer"), () -> page.line("outer"));
        page.press(Keys.DELETE);
        page.await(() -> page.line("outer:").isEmpty());
    }

    @Test
    void everythingIsUndoneAndDoneAgain() throws IOException {
        page.focus("passes.shadow.opacity");
        page.press(Keys.ARROW_UP);
        page.awaitLine("shadow.png", "opacity: 61");
        page.focus("sun.altitude");
        page.press(Keys.ARROW_DOWN);
        page.awaitLine("sun:", "altitude: 46");
        String changed = page.text();
        page.press(Keys.CONTROL, "z");
        page.awaitLine("sun:", "altitude: 47");
        page.find("#deeds .word").click();
        page.awaitLine("shadow.png", "opacity: 60");
        assertThat(page.text()).isEqualTo(PageSheet.TEXT);
        page.press(Keys.CONTROL, Keys.SHIFT, "z");
        page.awaitLine("shadow.png", "opacity: 61");
        page.press(Keys.CONTROL, Keys.SHIFT, "z");
        page.awaitLine("sun:", "altitude: 46");
        assertThat(page.text()).isEqualTo(changed);
    }

    @Test
    void everyValueIsAnElementAlsoWhereItIsOutOfSight() throws IOException {
        StringBuilder many = new StringBuilder(PageSheet.TEXT);
        for (int k = 0; k < 120; k++) {
            many.append("# a line of prose\n");
        }
        many.append("profile: 0.5 mm\n");
        page.restore(many.toString());
        page.focus("profile.width");
        page.press(Keys.ARROW_UP);
        page.awaitLine("profile:", "0.7 mm");
    }

    @Test
    void keysLeadFromTheTextToItsValuesAndBack() {
        page.caretInFirstRow();
        page.press(Keys.TAB);
        page.await(() -> page.focused().equals("size"));
        page.press(Keys.TAB);
        page.await(() -> page.focused().equals("resolution"), () -> "the keyboard is at " + page.focused());
        page.press(Keys.ESCAPE);
        page.await(() -> page.is("document.activeElement.classList.contains('cm-content')"));
        assertThat(page.find(".cm-line.raw").getText()).isEqualTo("resolution: 100");
    }
}
