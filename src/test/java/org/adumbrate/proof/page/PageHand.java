package org.adumbrate.proof.page;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;

/** What a person does at the proof page with pointer and keyboard, each action counted. It sees what the page shows. */
final class PageHand implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(30);
    private static final Duration GLIDE = Duration.ofMillis(20);

    private final ChromeDriver driver;
    private double widthMm;
    private int actions;

    private PageHand(ChromeDriver driver) {
        this.driver = driver;
    }

    /** Opens the address, and waits until the drawing is shown. */
    static PageHand open(String address) {
        PageHand hand = new PageHand(Chromium.begin());
        hand.driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", 1600, "height", 1000, "deviceScaleFactor", 1, "mobile", false));
        hand.driver.get(address);
        hand.await(
                () -> hand.is("document.documentElement.dataset.ready === 'true'"
                        + " && !document.getElementById('picture').hidden"),
                () -> "the drawing is not shown");
        hand.widthMm = hand.readWidth();
        return hand;
    }

    /** Clicks, drags, keys and typed entries so far. */
    int actions() {
        return actions;
    }

    /** What the page says of itself, empty where it is silent. */
    String said() {
        return driver.findElement(By.id("said")).getText();
    }

    String hint() {
        return driver.findElement(By.id("hint")).getText();
    }

    /** What there is to know of the sheet at a glance. */
    String facts() {
        return driver.findElement(By.id("facts")).getText();
    }

    String results() {
        return driver.findElement(By.id("results")).getText();
    }

    List<WebElement> all(String selector) {
        return driver.findElements(By.cssSelector(selector));
    }

    boolean has(String selector) {
        return !all(selector).isEmpty();
    }

    /** The number of the state that the text shows. */
    String version() {
        return String.valueOf(driver.executeScript("return document.documentElement.dataset.version"));
    }

    /** Scrolls to an element, as a person turns to it, and clicks on it. */
    void click(WebElement element) {
        bring(element);
        new Actions(driver, GLIDE).moveToElement(element).click().perform();
        actions++;
    }

    /** Clicks on a word of the page, or of a part of it. */
    void word(String within, String text) {
        await(() -> found(within, text) != null, () -> "no word \"" + text + "\"; words: " + words(within));
        click(found(within, text));
    }

    /** Clicks on a choice of the list that is open. */
    void pick(String name) {
        String choice = "#lists [role=option][aria-label=\"" + name + "\"]";
        await(() -> has(choice), () -> "no choice \"" + name + "\"; choices: " + choices());
        WebElement option = driver.findElement(By.cssSelector(choice));
        bring(option);
        option.click();
        actions++;
    }

    private List<String> choices() {
        return all("#lists [role=option]").stream()
                .map(option -> option.getDomAttribute("aria-label"))
                .toList();
    }

    private WebElement found(String within, String text) {
        return all(within + " .word").stream()
                .filter(word -> word.isDisplayed() && word.getText().equals(text))
                .findFirst()
                .orElse(null);
    }

    private List<String> words(String within) {
        return all(within + " .word").stream()
                .filter(WebElement::isDisplayed)
                .map(WebElement::getText)
                .toList();
    }

    void press(CharSequence... keys) {
        for (CharSequence key : keys) {
            new Actions(driver).sendKeys(key).perform();
            actions++;
        }
    }

    /** Types a text over the value that has the keyboard, and enters it. */
    void typeOver(String text) {
        if (has("#lists input.entry")) {
            enter(text);
            return;
        }
        new Actions(driver).sendKeys(text.substring(0, 1)).perform();
        await(() -> has("#lists input.entry"), () -> "nothing opens to type in");
        new Actions(driver).sendKeys(text.substring(1) + Keys.ENTER).perform();
        actions++;
    }

    /** Types into the line that is open, in the place of what is in it, and enters it. */
    void enter(String text) {
        await(() -> has("#lists input.entry"), () -> "nothing is open to type in");
        new Actions(driver)
                .keyDown(Keys.CONTROL)
                .sendKeys("a")
                .keyUp(Keys.CONTROL)
                .sendKeys(text + Keys.ENTER)
                .perform();
        actions++;
    }

    /** The control of a value where it can be seen; selects the item that it belongs to where it is tucked away. */
    WebElement control(String key) {
        String place = "#text [data-key=\"" + key + "\"]";
        await(() -> has(place), () -> "no value " + key);
        if (!shown(place)) {
            String item = key.replaceAll("^([^.\\[]+(?:\\[\\d+\\]|\\.[^.\\[]+)).*$", "$1");
            String handle = "#text [data-item=\"" + item + "\"]";
            if (!has(handle)) {
                handle = "#text [data-item=\"" + item.replaceAll("[.\\[].*$", "") + "\"]";
            }
            click(driver.findElement(By.cssSelector(handle)));
            await(() -> shown(place), () -> key + " does not show");
        }
        return all(place).stream().filter(WebElement::isDisplayed).findFirst().orElseThrow();
    }

    private boolean shown(String place) {
        return all(place).stream().anyMatch(WebElement::isDisplayed);
    }

    /** Gives the keyboard to a value by a click, where it has not got it yet. */
    void focus(String key) {
        if (key.equals(driver.executeScript("return document.activeElement.dataset.key"))) {
            return;
        }
        WebElement control = control(key);
        bring(control);
        WebElement figure = control.findElements(By.cssSelector(".figure")).stream()
                .findFirst()
                .orElse(control);
        new Actions(driver, GLIDE).moveToElement(figure).click().perform();
        actions++;
        await(
                () -> key.equals(driver.executeScript("return document.activeElement.dataset.key"))
                        || has("#lists [role=option], #lists input.entry"),
                () -> key + " does not take the keyboard");
    }

    /** Drags the knob of a percentage along its scale. */
    void slide(String key, double percent) {
        WebElement control = control(key);
        bring(control);
        List<?> box = (List<?>) driver.executeScript("""
                const box = arguments[0].querySelector(".scale").getBoundingClientRect();
                const knob = arguments[0].querySelector(".knob").getBoundingClientRect();
                return [(knob.left + knob.right) / 2, (box.top + box.bottom) / 2, box.left, box.width];
                """, control);
        double[] at =
                box.stream().mapToDouble(side -> ((Number) side).doubleValue()).toArray();
        int to = (int) Math.round(at[2] + at[3] * percent / 100);
        new Actions(driver, GLIDE)
                .moveToLocation((int) Math.round(at[0]), (int) Math.round(at[1]))
                .clickAndHold()
                .moveToLocation((int) Math.round((at[0] + to) / 2), (int) Math.round(at[1]))
                .moveToLocation(to, (int) Math.round(at[1]))
                .release()
                .perform();
        actions++;
    }

    /** Moves the pointer to a point of the sheet, in mm. */
    void point(double x, double y) {
        int[] place = at(x, y);
        new Actions(driver, GLIDE)
                .moveToLocation(place[0] - 3, place[1])
                .moveToLocation(place[0], place[1])
                .perform();
    }

    /** Clicks on a point of the sheet. */
    void clickAt(double x, double y) {
        point(x, y);
        new Actions(driver).click().perform();
        actions++;
    }

    /** Drags from one point of the sheet to another. */
    void drag(double x, double y, double toX, double toY) {
        int[] from = at(x, y);
        int[] to = at(toX, toY);
        Actions way =
                new Actions(driver, GLIDE).moveToLocation(from[0], from[1]).clickAndHold();
        for (int k = 1; k <= 4; k++) {
            way = way.moveToLocation(from[0] + (to[0] - from[0]) * k / 4, from[1] + (to[1] - from[1]) * k / 4);
        }
        way.perform();
        rest(300);
        new Actions(driver).release().perform();
        actions++;
    }

    private int[] at(double x, double y) {
        List<?> box = (List<?>) driver.executeScript("""
                const box = document.getElementById("paper").getBoundingClientRect();
                return [box.left, box.top, box.width];
                """);
        double[] paper =
                box.stream().mapToDouble(side -> ((Number) side).doubleValue()).toArray();
        double scale = paper[2] / widthMm;
        return new int[] {(int) Math.round(paper[0] + x * scale), (int) Math.round(paper[1] + y * scale)};
    }

    /** How wide the sheet is, from what the page says of two places under the pointer. */
    private double readWidth() {
        List<?> box = (List<?>) driver.executeScript("""
                const box = document.getElementById("paper").getBoundingClientRect();
                return [box.left, box.top, box.width, box.height];
                """);
        double[] paper =
                box.stream().mapToDouble(side -> ((Number) side).doubleValue()).toArray();
        int left = (int) paper[0] + 20;
        int right = (int) (paper[0] + paper[2]) - 20;
        int height = (int) (paper[1] + paper[3] / 2);
        return (place(right, height) - place(left, height)) * paper[2] / (right - left);
    }

    private double place(int x, int y) {
        new Actions(driver, GLIDE).moveToLocation(x, y).perform();
        await(
                () -> driver.findElement(By.id("place")).getText().contains(","),
                () -> "the page does not say where the pointer is");
        rest(50);
        return Double.parseDouble(driver.findElement(By.id("place")).getText().split(",", -1)[0]);
    }

    private void bring(WebElement element) {
        driver.executeScript("""
                const box = arguments[0].getBoundingClientRect();
                if (box.top < 40 || box.bottom > innerHeight - 120) arguments[0].scrollIntoView({ block: "center" });
                """, element);
    }

    /** Waits until the picture is exact, and keeps what the page looks like. */
    void picture(Path file) throws IOException {
        await(
                () -> is("document.getElementById('coarse').hidden && !document.getElementById('picture').hidden"),
                () -> "the picture stays coarse");
        rest(400);
        Files.write(file, driver.getScreenshotAs(OutputType.BYTES));
    }

    void rest(long millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    void await(BooleanSupplier condition, Supplier<String> otherwise) {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (!holds(condition)) {
            if (System.nanoTime() > end) {
                throw new IllegalStateException(otherwise.get() + "; the page says: " + said());
            }
            rest(20);
        }
    }

    private static boolean holds(BooleanSupplier condition) {
        try {
            return condition.getAsBoolean();
        } catch (StaleElementReferenceException e) {
            return false;
        }
    }

    private boolean is(String condition) {
        return Boolean.TRUE.equals(driver.executeScript("return Boolean(" + condition + ")"));
    }

    @Override
    public void close() {
        driver.quit();
    }
}
