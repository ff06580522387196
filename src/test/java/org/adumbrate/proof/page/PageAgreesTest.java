package org.adumbrate.proof.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Base64;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.PixelBox;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.open.OpenSheet;
import org.adumbrate.prepare.picture.SheetPicture;
import org.adumbrate.raster.encode.Levels;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.openqa.selenium.Keys;

/** What the page shows after many edits is what a fresh program shows; undoing them gives the first text. {@code -DpageEdits=100} makes as many. */
@Timeout(1800)
class PageAgreesTest extends ProofPageTest {
    private static final int EDITS = Integer.getInteger("pageEdits", 8);

    private final Random random = new Random(5);

    @Test
    void afterManyEditsThePictureIsThatOfAFreshProgram() throws Exception {
        String first = page.text();
        assertPictureIsTrue();
        int made = 0;
        for (int tries = 0; made < EDITS && tries < 6 * EDITS; tries++) {
            made += step() ? 1 : 0;
            if (tries == EDITS / 2) {
                page.run("document.querySelector('#pane').focus()");
                page.press("+", "+", Keys.ARROW_LEFT);
                assertPictureIsTrue();
            }
        }
        assertThat(made).isEqualTo(EDITS);
        assertPictureIsTrue();
        assertThat(comments(page.text())).isEqualTo(comments(first));
        for (int k = 0; k < 2 * EDITS && !page.text().equals(first); k++) {
            String before = page.text();
            page.run("document.querySelector('#pane').focus()");
            page.press(Keys.CONTROL, "z");
            page.await(() -> changed(before));
        }
        assertThat(page.text()).isEqualTo(first);
        assertPictureIsTrue();
    }

    /** One value stepped by a key; false where it was at its limit. */
    private boolean step() throws IOException {
        List<?> keys = (List<?>)
                page.run(
                        "return [...document.querySelectorAll('#text [data-key][role=spinbutton]')].map((one) => one.dataset.key)");
        List<String> wanted = keys.stream()
                .map(Object::toString)
                .filter(key -> !key.matches("size.*|resolution.*|deliver.*"))
                .toList();
        String before = page.text();
        String key = wanted.get(random.nextInt(wanted.size()));
        page.focus(key);
        page.press(random.nextBoolean() ? Keys.ARROW_UP : Keys.ARROW_DOWN);
        long end = System.nanoTime() + 2_000_000_000L;
        while (!changed(before) && System.nanoTime() < end) {
            page.frame();
        }
        return changed(before);
    }

    private boolean changed(String before) {
        try {
            return !page.text().equals(before);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static List<String> comments(String text) {
        return text.lines()
                .flatMap(line -> line.contains("   #") || line.startsWith("#")
                        ? Stream.of(line.substring(line.indexOf("# ")))
                        : Stream.empty())
                .toList();
    }

    /** Compares the canvas with the samples that a program makes which never saw the sheet before. */
    private void assertPictureIsTrue() throws IOException, Refusal {
        String version = String.valueOf(
                page.run("return fetch('/state').then((one) => one.json()).then((one) => String(one.version))"));
        page.await(
                () -> version.equals(String.valueOf(page.run("return document.documentElement.dataset.version")))
                        && page.is(
                                "document.getElementById('picture').dataset.exact === 'true' && document.getElementById('coarse').hidden"));
        settle();
        int[] whole = numbers("whole");
        int[] window = numbers("window");
        byte[] shown = Base64.getDecoder().decode(String.valueOf(page.run("""
                const shown = document.getElementById("picture");
                const copy = new OffscreenCanvas(shown.width, shown.height).getContext("2d");
                copy.drawImage(shown, 0, 0);
                const { data } = copy.getImageData(0, 0, shown.width, shown.height);
                let text = "";
                for (let k = 0; k < data.length; k += 4) text += String.fromCharCode(data[k], data[k + 1], data[k + 2]);
                return btoa(text);
                """)));
        Canvas canvas = new Canvas(
                sheetSize(),
                new PixelSize(whole[0], whole[1]),
                new PixelBox(window[0], window[1], window[2], window[3]));
        Levels fresh = fresh(canvas);
        byte[] expected = fresh.samples();
        int channels = fresh.channels();
        assertThat(shown).hasSize(3 * window[2] * window[3]);
        int most = 0;
        for (int k = 0; k < shown.length; k++) {
            int wanted = expected[channels == 3 ? k : k / 3] & 0xff;
            most = Math.max(most, Math.abs(wanted - (shown[k] & 0xff)));
        }
        assertThat(most).as("levels of 255").isLessThanOrEqualTo(1);
    }

    /** Waits until nothing newer was painted for a while. */
    private void settle() {
        page.run("window.paints = performance.now()");
        page.driver().executeAsyncScript("const done = arguments[0]; setTimeout(done, 400)");
        page.await(() -> page.is("document.getElementById('picture').dataset.exact === 'true'"));
    }

    private int[] numbers(String name) {
        String text = String.valueOf(page.run("return document.getElementById('picture').dataset[arguments[0]]", name));
        return Stream.of(text.split(",")).mapToInt(Integer::parseInt).toArray();
    }

    private SheetSize sheetSize() throws IOException, Refusal {
        try (Memory memory = Memory.inMemory()) {
            return OpenSheet.of(page.file(), memory)
                    .edition(page.text())
                    .prepared()
                    .size();
        }
    }

    private Levels fresh(Canvas canvas) throws IOException, Refusal {
        try (Memory memory = Memory.inMemory()) {
            return OpenSheet.of(page.file(), memory)
                    .edition(page.text())
                    .make((sheet, run) -> SheetPicture.of(sheet, canvas, run).levels(run));
        }
    }
}
