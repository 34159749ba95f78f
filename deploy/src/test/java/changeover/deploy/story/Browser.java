package changeover.deploy.story;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** One person's browser, headless, speaking one language, with nothing left from anybody before. */
final class Browser implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(30);

    private final ChromeDriver driver;
    private final String language;

    Browser(String language, int width) {
        this.language = language;
        try {
            ChromeOptions options = new ChromeOptions();
            options.setBinary(System.getProperty("browser.binary", "/usr/bin/chromium"));
            options.addArguments(
                    "--headless",
                    "--no-sandbox",
                    "--disable-background-networking",
                    "--disable-dev-shm-usage",
                    "--accept-lang=" + language,
                    "--user-data-dir=" + Files.createTempDirectory("browser"));
            this.driver = new ChromeDriver(
                    new ChromeDriverService.Builder()
                            .usingDriverExecutable(
                                    Path.of(System.getProperty("browser.driver", "/usr/bin/chromedriver"))
                                            .toFile())
                            .build(),
                    options);
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
        driver.manage().window().setSize(new Dimension(width, 900));
    }

    ChromeDriver driver() {
        return driver;
    }

    WebElement find(String css) {
        return new WebDriverWait(driver, PATIENCE)
                .until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector(css)));
    }

    void write(String css, String text) {
        WebElement field = find(css);
        field.clear();
        field.sendKeys(text);
    }

    void waitForAddress(String part) {
        new WebDriverWait(driver, PATIENCE).until(ExpectedConditions.urlContains(part));
    }

    /** Signs in at the door; a password that serves once is replaced by the new one. */
    void signIn(String address, String mail, String password, String newPassword) {
        driver.get(address);
        write("#username", mail);
        write("#password", password);
        find("[name=login]").click();
        write("#password-new", newPassword);
        write("#password-confirm", newPassword);
        find("[type=submit]").click();
    }

    /** Says to deploy/verify that the story was walked to its end in this language. */
    void walked() {
        try {
            Files.writeString(
                    Path.of("target", "browser-languages"),
                    language + "\n",
                    StandardCharsets.UTF_8,
                    StandardOpenOption.CREATE,
                    StandardOpenOption.APPEND);
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }

    @Override
    public void close() {
        driver.quit();
    }
}
