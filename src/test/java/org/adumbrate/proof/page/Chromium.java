package org.adumbrate.proof.page;

import static org.junit.jupiter.api.Assumptions.abort;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** The system's own browser. Nothing is downloaded: where there is none, or no driver of it, tests are skipped with a line. */
final class Chromium {
    private static final List<String> BROWSERS = List.of("chromium", "chromium-browser", "google-chrome");

    private Chromium() {}

    /** Opens a window that nobody sees. */
    static ChromeDriver begin() {
        Optional<Path> browser =
                BROWSERS.stream().flatMap(name -> found(name).stream()).findFirst();
        Optional<Path> driver = found("chromedriver");
        if (browser.isEmpty() || driver.isEmpty()) {
            String line = "The proof page is not tested in a browser: there is no "
                    + (browser.isEmpty() ? "chromium" : "chromedriver") + " on the path.";
            System.out.println(line);
            abort(line);
        }
        ChromeOptions options = new ChromeOptions();
        options.setBinary(browser.orElseThrow().toFile());
        options.addArguments("--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--lang=en");
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        return new ChromeDriver(
                new ChromeDriverService.Builder()
                        .usingDriverExecutable(driver.orElseThrow().toFile())
                        .build(),
                options);
    }

    private static Optional<Path> found(String name) {
        String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
        return Stream.of(path.split(File.pathSeparator, -1))
                .map(folder -> Path.of(folder, name))
                .filter(Files::isExecutable)
                .findFirst();
    }
}
