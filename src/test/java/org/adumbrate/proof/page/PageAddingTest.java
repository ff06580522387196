package org.adumbrate.proof.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

class PageAddingTest extends ProofPageTest {
    @Test
    void aPersonIsChosenAsDrawnAndPutDownWhereOnePoints() throws IOException {
        offer("another person");
        page.await(() -> page.has("#lists [role=option] svg.outline path"));
        page.press("s", Keys.ENTER);
        page.await(() -> page.has("#overlay .ghost path"));
        page.click(100, 70);
        page.await(() -> page.line("foot: [100").startsWith("- { outline: s"), () -> page.said());
        page.await(() -> page.has("#text .chosen") || page.focused().startsWith("figures[2]"));
        page.press(Keys.CONTROL, "z");
        page.await(() -> page.line("foot: [100").isEmpty());
        assertThat(page.text()).isEqualTo(PageSheet.TEXT);
    }

    @Test
    void aPersonIsAddedByKeysAlone() {
        WebElement word = found("another person");
        page.run("arguments[0].focus()", word);
        page.press(Keys.ENTER);
        page.await(() -> page.has("#lists [role=option]"));
        page.press(Keys.ENTER);
        page.await(() -> page.has("#overlay .ghost path"));
        page.press(Keys.ARROW_RIGHT, Keys.ARROW_DOWN, Keys.ENTER);
        page.await(() -> page.has("#text [data-key='figures[2].foot[0]']"));
    }

    @Test
    void escapeLeavesWhatWasToBeAdded() throws IOException {
        offer("another person");
        page.await(() -> page.has("#lists [role=option]"));
        page.press(Keys.ENTER);
        page.await(() -> page.has("#overlay .ghost path"));
        page.press(Keys.ESCAPE);
        page.await(() -> !page.has("#overlay .ghost path"));
        page.click(100, 70);
        assertThat(page.text()).isEqualTo(PageSheet.TEXT);
    }

    @Test
    void whatTheProgramAnswersAfterEscapeBringsNothingBack() throws InterruptedException {
        page.run("const fetched = window.fetch; window.fetch = async (path, how) => {"
                + " const answer = await fetched(path, how);"
                + " if (/^.(floors|snap)/.test(path)) await new Promise((late) => setTimeout(late, 300));"
                + " return answer; }; window.undelayed = fetched");
        try {
            offer("another person");
            page.await(() -> page.has("#lists [role=option]"));
            page.press(Keys.ENTER);
            page.await(() -> page.has("#overlay .ghost path"));
            page.press(Keys.ESCAPE);
            Thread.sleep(700);
            assertThat(page.has("#overlay .ghost path")).isFalse();
            assertThat(page.find("#hint").getText()).isEmpty();
            offer("another region");
            page.moveTo(62, 30).perform();
            page.press(Keys.ESCAPE);
            Thread.sleep(700);
            assertThat(page.has("#overlay .ghost path")).isFalse();
            assertThat(page.find("#hint").getText()).isEmpty();
        } finally {
            page.run("window.fetch = window.undelayed");
        }
    }

    @Test
    void aRegionIsDrawnCornerByCorner() {
        offer("another region");
        page.click(62, 30);
        page.click(72, 30);
        page.click(72, 38);
        page.press(Keys.ENTER);
        page.awaitLine("region:", "[[62, 30], [72, 30], [72, 38]]");
    }

    /** The lines are a box from 10, 20 to 110, 60 and its diagonal. */
    @Test
    void aFaceIsChosenByPointingIntoIt() {
        offer("another region by its faces");
        page.moveTo(90, 30).perform();
        page.await(() -> page.has("#overlay .ghost path.face"));
        page.click(90, 30);
        page.await(() -> page.find("#hint").getText().contains("1 face, 2000 mm2"), () -> page.find("#hint")
                .getText());
        page.press(Keys.ENTER);
        page.awaitLine("region:", "faces: [[");
        assertThat(page.line("region:"))
                .containsPattern("faces: \\[\\[(89|90)[.0-9]*, (29|30)[.0-9]*]], area: 2000 mm2");
        page.await(() -> page.has("#overlay [data-key='regions.region']"));
        // its outline is that of the face, not that of the points
        page.await(
                () -> page.is("document.querySelector(\"#overlay [data-key='regions.region']\").getBBox().width > 95"));
    }

    @Test
    void facesAreTakenAndLeftByKeysAlone() {
        offer("another region by its faces");
        page.await(() -> page.has("#overlay .ghost path.face"));
        // from the middle of the sheet, off the diagonal
        page.press(Keys.ARROW_UP, Keys.ARROW_UP, Keys.ARROW_UP, " ");
        page.await(() -> page.find("#hint").getText().contains("1 face"));
        page.press(
                Keys.ARROW_DOWN,
                Keys.ARROW_DOWN,
                Keys.ARROW_DOWN,
                Keys.ARROW_DOWN,
                Keys.ARROW_DOWN,
                Keys.ARROW_DOWN,
                " ");
        page.await(() -> page.find("#hint").getText().contains("2 faces"));
        page.press(" ");
        page.await(() -> page.find("#hint").getText().contains("1 face,"));
        page.press(Keys.BACK_SPACE);
        page.await(() -> !page.find("#hint").getText().contains("1 face"));
        page.press(Keys.ENTER);
        page.await(() -> page.find("#hint").getText().contains("no face is taken yet"));
        page.press(Keys.ESCAPE);
        page.await(() -> !page.has("#overlay .ghost path"));
        assertThat(page.line("region:")).isEmpty();
    }

    @Test
    void aVeilIsLaidOverFaces() {
        choose("a veil", "faces pointed at");
        page.await(() -> page.has("#overlay .ghost path"));
        page.click(90, 30);
        page.click(30, 50);
        page.await(() -> page.find("#hint").getText().contains("2 faces"));
        page.press(Keys.ENTER);
        page.awaitLine("veil:", "area: 4000 mm2, fill: white, opacity: 40");
        page.await(() -> page.focused().equals("veils.veil.opacity"));
    }

    @Test
    void whatHidesAPersonIsChosenAsFaces() {
        page.click(80, 62);
        page.await(() -> page.has("#text [data-item='figures[0]'][aria-pressed=true]"));
        offer("behind");
        page.await(() -> page.has("#lists [role=option][aria-label='faces pointed at']"));
        page.find("#lists [role=option][aria-label='faces pointed at']").click();
        page.await(() -> page.has("#overlay .ghost path"));
        page.click(90, 30);
        page.await(() -> page.find("#hint").getText().contains("1 face"));
        page.press(Keys.ENTER);
        page.awaitLine("foot: [80, 68]", "behind: [before]");
        page.awaitLine("before:", "area: 2000 mm2");
    }

    @Test
    void plantsGrowInFaces() {
        offer("planting");
        page.await(() -> page.has("#lists [role=option]"));
        page.press(Keys.ENTER);
        page.await(() -> page.has("#lists [role=option][aria-label='faces pointed at']"));
        page.find("#lists [role=option][aria-label='faces pointed at']").click();
        page.await(() -> page.has("#overlay .ghost path"));
        page.click(30, 50);
        page.await(() -> page.find("#hint").getText().contains("1 face"));
        page.press(Keys.ENTER);
        page.awaitLine("bed-2:", "area: 2000 mm2");
        page.await(() -> page.has("#text [data-key='planting.bed.region']"));
    }

    @Test
    void plantsGrowInARegionThatIsThere() {
        offer("planting");
        page.await(() -> page.has("#lists [role=option]"));
        page.press(Keys.ENTER);
        page.await(() -> page.has("#lists [role=option][aria-label='bed']"));
        page.find("#lists [role=option][aria-label='bed']").click();
        page.await(() -> page.has("#text [data-key='planting.bed.region']"));
    }

    @Test
    void aColourWithoutAPenIsOfferedOne() {
        offer("a pen for #c86400, 1 line without one");
        page.awaitLine("#c86400", "width: 0.18 mm");
        page.await(() -> page.focused().equals("pens.pen-c86400.width"));
        page.await(() -> !page.find("#text").getText().contains("a pen for #c86400"));
    }

    @Test
    void theSunIsAddedByAShadowOnTheDrawing() throws IOException {
        page.restore(PageSheet.TEXT.replaceAll("(?m)^sun:.*\\n", ""));
        offer("the sun");
        page.await(() -> page.has("#lists [role=option][aria-label='by a shadow on the drawing']"));
        page.find("#lists [role=option][aria-label='by a shadow on the drawing']")
                .click();
        page.await(() -> page.find("#hint").getText().contains("foot"));
        page.click(80, 70);
        page.await(() -> page.find("#hint").getText().contains("head"));
        page.click(80, 44);
        page.await(() -> page.find("#hint").getText().contains("shadow of the head"));
        page.click(70, 66);
        page.await(() -> page.focused().startsWith("sun.sample"), () -> page.focused() + " of " + read());
        assertThat(page.text()).containsPattern("(?s)foot: \\[(79|80).*head: \\[(79|80).*tip: \\[(69|70)");
        page.await(() -> page.has("#overlay [data-key^='sun']"));
    }

    @Test
    void theSunIsAddedByItsAngles() throws IOException {
        page.restore(PageSheet.TEXT.replaceAll("(?m)^sun:.*\\n", ""));
        offer("the sun");
        page.await(() -> page.has("#lists [role=option]"));
        page.press(Keys.ENTER);
        page.awaitLine("sun:", "azimuth: 180");
        page.await(() -> page.focused().equals("sun.azimuth"));
    }

    @Test
    void whatIsAddedIsSelectedAndStandsOnTheFloorOfThoseBesideIt() throws IOException {
        page.restore(PageSheet.TEXT.replace("[40, 64], floor: yard", "[40, 64], floor: step"));
        page.click(80, 62);
        page.await(() -> page.has("#text [data-item='figures[0]'][aria-pressed=true]"));
        offer("another person");
        page.await(() -> page.has("#lists [role=option]"));
        page.press(Keys.ENTER);
        page.await(() -> page.has("#overlay .ghost path"));
        page.click(46, 66);
        page.await(() -> page.has("#text [data-item='figures[2]'][aria-pressed=true]"));
        assertThat(page.text()).containsPattern("foot: \\[4[56][^]]*], floor: step");
    }

    @Test
    void theCutIsChosenByItsLines() {
        choose("a cut", "#0a64c8");
        page.await(() -> page.focused().equals("cut.outline"));
        assertThat(read()).containsPattern("(?s)cut:\\s.*#0a64c8");
    }

    @Test
    void aVeilIsChosenByItsLines() {
        choose("a veil", "#00a03c");
        page.await(() -> page.focused().startsWith("veils.veil"));
        page.awaitLine("veil:", "opacity: 40");
    }

    @Test
    void birdsFlyInARegionThatIsThere() {
        offer("birds");
        page.await(() -> page.has("#lists [role=option]"));
        page.press(Keys.ENTER);
        page.await(() -> page.has("#lists [role=option][aria-label='bed']"));
        page.find("#lists [role=option][aria-label='bed']").click();
        page.await(() -> page.has("#text [data-item^='birds.']"));
    }

    @Test
    void heightLinesAreChosenByTheirColour() {
        choose("height lines", "#00a03c");
        page.awaitLine("heights:", "height: 1.65 m");
    }

    @Test
    void theCameraIsAskedForWhatOnlyThePersonKnows() throws IOException {
        page.restore(PageSheet.TEXT.replaceAll("(?m)^camera:.*\\n", ""));
        offer("the camera");
        page.await(() -> page.has("#lists .entry input, input.entry, .entry"));
        page.press("85 mm", Keys.ENTER);
        page.awaitLine("camera:", "focal: 85 mm");
    }

    private void choose(String word, String color) {
        offer(word);
        page.await(() -> page.has("#lists [role=option][aria-label='" + color + "']"));
        page.find("#lists [role=option][aria-label='" + color + "']").click();
    }

    @Test
    void plantsGrowOnTheFloorOfThoseBesideThem() throws IOException {
        page.restore(PageSheet.TEXT.replace("[40, 64], floor: yard", "[40, 64], floor: step"));
        offer("planting");
        page.await(() -> page.has("#lists [role=option]"));
        page.press(Keys.ENTER);
        page.await(() -> page.has("#lists [role=option][aria-label='bed']"));
        page.find("#lists [role=option][aria-label='bed']").click();
        page.awaitLine("region: bed", "floor: step");
        page.await(() -> page.has("#text [data-item='planting.bed'][aria-pressed=true]"));
    }

    @Test
    void anOutputIsAdded() {
        offer("an svg");
        page.awaitLine("svg:", "out/svg.svg");
    }

    @Test
    void whatAPersonMayHaveIsOfferedWhereItIsSelected() {
        page.run("document.querySelector(\"[data-item='figures[0]']\").focus()");
        page.press(Keys.ENTER);
        page.await(() -> page.has("#text .rest.shown .offers"));
        offer("stature");
        page.awaitLine("standing", "stature: ");
        page.await(() -> page.focused().equals("figures[0].stature"));
    }

    private String read() {
        try {
            return page.text();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private void offer(String text) {
        page.await(() -> page.driver().findElements(By.cssSelector("#text .word")).stream()
                .anyMatch(word -> word.getText().equals(text)));
        WebElement word = found(text);
        page.run("arguments[0].scrollIntoView({ block: 'center' })", word);
        word.click();
    }

    private WebElement found(String text) {
        return page.driver().findElements(By.cssSelector("#text .word")).stream()
                .filter(word -> word.getText().equals(text))
                .findFirst()
                .orElseThrow();
    }
}
