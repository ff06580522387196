package org.adumbrate.proof.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.open.HeadStart;
import org.adumbrate.proof.ProofServer;
import org.adumbrate.report.SheetReport;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;

/** The proof page on a sheet, as a person has it before them. */
final class OpenPage implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(30);

    private final ChromeDriver driver;
    private final Path file;
    private final ProofServer server;

    private OpenPage(ChromeDriver driver, Path file, ProofServer server) {
        this.driver = driver;
        this.file = file;
        this.server = server;
    }

    /** Opens the page on a sheet file, and waits until the sheet is shown. */
    static OpenPage on(Path file) throws IOException {
        return on(file, List.of());
    }

    static OpenPage on(Path file, List<ProofServer.Decided> decided) throws IOException {
        ChromeDriver driver = Chromium.begin();
        ProofServer server = ProofServer.begin(HeadStart.of(file, Memory.inMemory()), 0, SheetReport::new, decided);
        OpenPage page = new OpenPage(driver, file, server);
        page.size(1280, 800, 1);
        driver.get(server.address());
        page.awaitShown();
        return page;
    }

    void awaitShown() {
        await(() -> is("document.documentElement.dataset.ready === 'true' && !document.getElementById('picture').hidden"
                + " && document.querySelectorAll('#overlay .things > *').length > 0"));
    }

    /** The sheet as it was at first, nothing selected, nothing said. */
    void restore(String text) throws IOException {
        Object done = driver.executeAsyncScript("""
                const done = arguments[1];
                (async () => {
                  const { version } = await (await fetch("/state")).json();
                  const wish = { version, text: arguments[0] };
                  await fetch("/text", { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(wish) });
                  return (await (await fetch("/state")).json()).version;
                })().then(done, (failure) => done(String(failure)));
                """, text);
        assertThat(done).isInstanceOf(Long.class);
        await(() -> is("document.documentElement.dataset.version === '" + done + "'"));
        run("document.querySelector('#lists').replaceChildren(); document.querySelector('#pane').focus()");
        press(Keys.ESCAPE);
        await(() -> is("!document.querySelector('#text .chosen, #text .handle[aria-pressed=true]')"));
        assertThat(text()).isEqualTo(text);
    }

    ChromeDriver driver() {
        return driver;
    }

    ProofServer server() {
        return server;
    }

    Path file() {
        return file;
    }

    /** The size of the page in CSS pixels, and device pixels for each of them. */
    void size(int width, int height, double density) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", density, "mobile", false));
    }

    /** The sheet file as it stands on the disk. */
    String text() throws IOException {
        return Files.readString(file);
    }

    /** The line of the sheet file that holds some words, without the blanks around it. */
    String line(String words) {
        try {
            return text().lines()
                    .filter(line -> line.contains(words))
                    .findFirst()
                    .orElse("")
                    .strip();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** True where some words come before others in the sheet file. */
    boolean sheetOrder(String first, String second) {
        try {
            return text().contains(first) && text().indexOf(first) < text().indexOf(second);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** Waits until a line of the sheet file reads so. */
    void awaitLine(String words, String wanted) {
        await(() -> line(words).contains(wanted), () -> "the line is: " + line(words) + "; the page says: " + said());
    }

    String said() {
        return find("#said").getText();
    }

    WebElement find(String selector) {
        return driver.findElement(By.cssSelector(selector));
    }

    boolean has(String selector) {
        return !driver.findElements(By.cssSelector(selector)).isEmpty();
    }

    /** The value of a key, in the text. */
    WebElement value(String key) {
        return find("#text [data-key=\"" + key + "\"]");
    }

    /** A thing in the drawing. */
    WebElement thing(String key) {
        return find("#overlay [data-key=\"" + key + "\"]");
    }

    String valueText(String key) {
        return String.valueOf(run(
                "return document.querySelector(arguments[0])?.getAttribute('aria-valuetext')",
                "#text [data-key=\"" + key + "\"]"));
    }

    /** Gives the keyboard to a value, as a script does. */
    void focus(String key) {
        run("document.querySelector(arguments[0]).focus()", "#text [data-key=\"" + key + "\"]");
        await(() -> focused().equals(key));
    }

    /** The key that has the keyboard, or what kind of element has it. */
    String focused() {
        return String.valueOf(
                run("const a = document.activeElement; return a.dataset.key ?? a.dataset.item ?? a.id ?? a.tagName"));
    }

    /** Sets the caret into the first row of the text that is no prose, behind its value. */
    void caretInFirstRow() {
        await(() -> {
            // what the page still has to say of the sheet may push the row away from under the pointer: then once more
            WebElement row = find("#text .cm-line.row");
            int half = row.getSize().getWidth() / 2;
            new Actions(driver).moveToElement(row, half - 45, 0).click().perform();
            return has("#text .cm-line.raw")
                    && !find("#text .cm-line.raw").getText().startsWith("#");
        });
    }

    /** Presses keys one after the other, wherever the keyboard is. */
    void press(CharSequence... keys) {
        for (CharSequence key : keys) {
            new Actions(driver).sendKeys(key).perform();
        }
    }

    /** Presses a key while others are held. */
    void press(Keys held, CharSequence key) {
        new Actions(driver).keyDown(held).sendKeys(key).keyUp(held).perform();
    }

    void press(Keys one, Keys other, CharSequence key) {
        new Actions(driver)
                .keyDown(one)
                .keyDown(other)
                .sendKeys(key)
                .keyUp(other)
                .keyUp(one)
                .perform();
    }

    /** Where a point of the sheet is seen, from the upper left corner of the page. */
    int[] at(double x, double y) {
        List<?> place = (List<?>) run("""
                const paper = document.getElementById("paper").getBoundingClientRect();
                return [paper.left + arguments[0] / 120 * paper.width, paper.top + arguments[1] / 80 * paper.height];
                """, x, y);
        return place.stream()
                .mapToInt(side -> (int) Math.round(((Number) side).doubleValue()))
                .toArray();
    }

    Actions moveTo(double x, double y) {
        int[] place = at(x, y);
        return new Actions(driver, Duration.ofMillis(20)).moveToLocation(place[0], place[1]);
    }

    /** Clicks on a point of the sheet. */
    void click(double x, double y) {
        moveTo(x, y).click().perform();
    }

    /** Drags from one point of the sheet to another, and stays there. */
    Actions drag(double x, double y, double toX, double toY) {
        int[] from = at(x, y);
        int[] to = at(toX, toY);
        Actions actions = new Actions(driver, Duration.ofMillis(20))
                .moveToLocation(from[0], from[1])
                .clickAndHold();
        for (int k = 1; k <= 4; k++) {
            actions = actions.moveToLocation(from[0] + (to[0] - from[0]) * k / 4, from[1] + (to[1] - from[1]) * k / 4);
        }
        return actions;
    }

    /** Waits until what was to be drawn is drawn. */
    void frame() {
        driver.executeAsyncScript(
                "const done = arguments[0]; requestAnimationFrame(() => requestAnimationFrame(() => done()))");
    }

    Object run(String script, Object... given) {
        return driver.executeScript(script, given);
    }

    boolean is(String condition) {
        return Boolean.TRUE.equals(run("return Boolean(" + condition + ")"));
    }

    void await(BooleanSupplier condition) {
        await(condition, () -> "not in time; the page says: " + said() + "; the browser: " + complaints());
    }

    void await(BooleanSupplier condition, Supplier<String> otherwise) {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (true) {
            try {
                if (condition.getAsBoolean()) {
                    return;
                }
            } catch (StaleElementReferenceException e) {
                // Set anew in the meantime; the next look finds the new one.
            }
            if (System.nanoTime() > end) {
                throw new AssertionError(otherwise.get());
            }
            try {
                Thread.sleep(15);
            } catch (InterruptedException e) {
                throw new AssertionError(e);
            }
        }
    }

    /** What the browser has to complain of. */
    List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .filter(entry -> entry.getLevel().intValue() >= java.util.logging.Level.WARNING.intValue())
                .map(LogEntry::getMessage)
                .toList();
    }

    @Override
    public void close() {
        try {
            driver.quit();
        } finally {
            server.close();
        }
    }
}
