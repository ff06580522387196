package org.adumbrate.proof.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;

class PageKeptTest extends ProofPageTest {
    @Test
    void aChangeFromOutsideIsTakenUpAndThePlaceIsKept() throws IOException {
        page.focus("sun.altitude");
        Files.writeString(page.file(), PageSheet.TEXT.replace("opacity: 60", "opacity: 35"));
        page.await(() -> page.valueText("passes.shadow.opacity").equals("35"));
        page.await(() -> page.said().contains("Changed elsewhere"));
        assertThat(page.focused()).isEqualTo("sun.altitude");
        page.press(Keys.ARROW_UP);
        page.awaitLine("sun:", "altitude: 48");
        assertThat(page.line("shadow.png")).contains("opacity: 35");
    }

    @Test
    void whatIsBeingTypedStaysWhenTheFileChangesElsewhere() throws IOException {
        page.caretInFirstRow();
        page.press(Keys.END, "q");
        page.await(() -> page.said().contains("does not read"));
        Files.writeString(page.file(), PageSheet.TEXT.replace("opacity: 60", "opacity: 35"));
        page.await(() -> page.find("#text .cm-content").getText().contains("35"));
        assertThat(page.find(".cm-line.raw").getText()).isEqualTo("size: 120 x 80 mmq");
        page.press(Keys.BACK_SPACE, Keys.BACK_SPACE, Keys.BACK_SPACE, "cm");
        page.awaitLine("size:", "120 x 80 cm");
        assertThat(page.line("shadow.png")).contains("opacity: 35");
    }

    @Test
    void findingsStandUnderTheirLines() {
        page.await(() -> page.has("#text .note.warning"));
        page.await(() -> page.find("#facts").getText().contains("to look at"));
    }

    @Test
    void eachEditLeavesAMeasure() {
        page.run("performance.clearMeasures('edit')");
        page.focus("passes.shadow.opacity");
        page.press(Keys.ARROW_DOWN);
        page.awaitLine("shadow.png", "opacity: 59");
        page.await(
                () -> page.is(
                        "performance.getEntriesByName('edit').some((each) => each.detail.key === 'passes.shadow.opacity' && each.detail.exact)"));
    }

    @Test
    void theSheetIsDeliveredFromThePage() {
        page.find("#deeds .deliver").click();
        page.await(() -> page.has("#results a"));
        assertThat(page.find("#results a").getText()).isEqualTo("preview");
        assertThat(page.file().resolveSibling("out/preview.png")).exists();
        assertThat(page.find("#results a").getDomAttribute("rel")).isEqualTo("noopener");
    }

    @Test
    void aDeliveryIsStopped() throws IOException {
        page.restore(PageSheet.TEXT
                .replace("resolution: 100", "resolution: 1200")
                .replace("preview: { file: out/preview.png, width: 200 px }", "flat: out/stopped.tif"));
        page.find("#deeds .deliver").click();
        page.await(() -> page.has("#results .progress"));
        page.find("#results .word").click();
        page.await(() -> page.find("#results").getText().contains("Stopped"));
        assertThat(page.file().resolveSibling("out/stopped.tif")).doesNotExist();
        assertThat(page.find("#deeds .deliver").getDomAttribute("aria-disabled"))
                .isNull();
    }

    @Test
    void aChangeMeantForAnotherTextIsToldAndNotForced() throws IOException {
        page.focus("passes.shadow.opacity");
        page.run(
                "window.fetch = ((fetch) => (path, how) => path === '/edit'"
                        + " ? fetch(path, { ...how, body: how.body.replace(/\"version\":\\d+/, '\"version\":1') }) : fetch(path, how))(window.fetch)");
        page.press(Keys.ARROW_UP);
        page.await(() -> page.said().contains("was changed elsewhere"));
        page.await(() -> page.valueText("passes.shadow.opacity").equals("60"));
        assertThat(page.text()).isEqualTo(PageSheet.TEXT);
        page.driver().navigate().refresh();
        page.awaitShown();
    }

    @ParameterizedTest
    @CsvSource({"1280, 800, 1", "2560, 1440, 1", "1280, 800, 2"})
    void itIsWithinReachOfAll(int width, int height, double density) throws IOException {
        page.size(width, height, density);
        try {
            page.await(() -> page.is("document.getElementById('pane').clientWidth > 100"));
            page.run("document.querySelector(\"[data-item='figures[0]']\").focus()");
            page.press(Keys.ENTER);
            page.await(() -> page.has("#text .rest.shown"));
            assertThat(violations()).isEmpty();
            page.focus("pens.walls.role");
            page.press(Keys.ENTER);
            page.await(() -> page.has("#lists .list"));
            assertThat(violations()).isEmpty();
            page.press(Keys.ESCAPE);
        } finally {
            page.size(1280, 800, 1);
        }
    }

    @Test
    void theCanvasHasThePixelsOfTheScreen() {
        page.size(1280, 800, 2);
        try {
            page.await(() -> page.is("document.getElementById('picture').style.width"
                    + " && Math.abs(document.getElementById('picture').getBoundingClientRect().left * 2 % 1) < 1e-6"));
        } finally {
            page.size(1280, 800, 1);
        }
    }

    private List<?> violations() throws IOException {
        try (InputStream script = PageKeptTest.class.getResourceAsStream("/axe.min.js")) {
            page.run(new String(script.readAllBytes(), StandardCharsets.UTF_8));
        }
        return (List<?>) page.driver().executeAsyncScript("""
                        const done = arguments[0];
                        axe.run(document, { resultTypes: ["violations"] }).then(({ violations }) => done(violations.flatMap((each) =>
                          each.nodes.slice(0, 3).map((node) => `${each.id}: ${node.html.slice(0, 160)} ${node.failureSummary ?? ""}`))));
                        """);
    }

    @Test
    void everyThingInTheDrawingHasItsKeyAndItsName() {
        assertThat(page.driver().findElements(By.cssSelector("#overlay [data-key]")))
                .isNotEmpty()
                .allSatisfy(
                        thing -> assertThat(thing.getDomAttribute("aria-label")).isNotBlank());
    }
}
