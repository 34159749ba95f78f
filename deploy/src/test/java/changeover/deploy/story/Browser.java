package changeover.deploy.story;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.List;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.WebDriverException;
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
    private final PageRules rules;

    Browser(String language, int width) {
        this.language = language;
        this.rules = new PageRules(language, width);
        try {
            ChromeOptions options = new ChromeOptions();
            options.setBinary(System.getProperty("browser.binary", "/usr/bin/chromium"));
            options.addArguments(
                    "--headless",
                    "--no-sandbox",
                    "--disable-background-networking",
                    "--disable-dev-shm-usage",
                    "--accept-lang=" + language,
                    "--user-data-dir=" + Files.createTempDirectory(kept(), "browser"));
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
        driver.manage().timeouts().scriptTimeout(Duration.ofMinutes(3));
        wide(width);
    }

    /** Where browsers keep what is theirs: in the folder of the build, so that nothing stays behind elsewhere. */
    static Path kept() throws IOException {
        return Files.createDirectories(Path.of("target", "browsers").toAbsolutePath());
    }

    ChromeDriver driver() {
        return driver;
    }

    void wide(int width) {
        driver.manage().window().setSize(new Dimension(width, 900));
    }

    WebElement find(String css) {
        return new WebDriverWait(driver, PATIENCE)
                .until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector(css)));
    }

    /** Those on the page now, seen or not. */
    List<WebElement> all(String css) {
        return driver.findElements(By.cssSelector(css));
    }

    String text(String css) {
        return find(css).getText();
    }

    void write(String css, String text) {
        WebElement field = find(css);
        field.clear();
        field.sendKeys(text);
    }

    /** Writes a field by its name; a day or an hour is given as the browser keeps it, whatever its keyboard. */
    void fill(String name, String value) {
        WebElement field = find("main [name='" + name + "']");
        String type = String.valueOf(field.getDomAttribute("type"));
        if (List.of("date", "time").contains(type) || field.getTagName().equals("select")) {
            driver.executeScript("arguments[0].value = arguments[1]", field, value);
        } else {
            field.clear();
            field.sendKeys(value);
        }
    }

    /** Ticks a box or a button of several, by its label, as a person does. */
    void choose(String name, String value) {
        WebElement input = driver.findElement(By.cssSelector("main [name='" + name + "'][value='" + value + "']"));
        String id = input.getDomAttribute("id");
        WebElement label = id == null || id.isEmpty()
                ? input.findElement(By.xpath("ancestor::label"))
                : driver.findElement(By.cssSelector("label[for='" + id + "']"));
        press(label);
    }

    /** Opens an address of the business and judges what it shows. */
    void open(String address) {
        driver.get(address);
        judge();
    }

    /** Follows a link or presses a button, waits for the page it leads to and judges that. */
    void follow(String css) {
        driver.executeScript("window.left = false");
        press(find(css));
        new WebDriverWait(driver, PATIENCE)
                .ignoring(WebDriverException.class)
                .until(_ -> Boolean.TRUE.equals(driver.executeScript(
                        "return window.left === undefined && document.readyState === 'complete'")));
        find("main");
        judge();
    }

    private void press(WebElement element) {
        driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", element);
        element.click();
    }

    private void judge() {
        rules.judge(this);
    }

    /** The first bytes of what stands at an address of this site, as this person gets it. */
    String beginning(String address) {
        return String.valueOf(driver.executeAsyncScript("""
                const done = arguments[arguments.length - 1];
                fetch(arguments[0]).then(a => a.arrayBuffer().then(b => done(a.status + ' '
                  + new TextDecoder('latin1').decode(b.slice(0, 5))))).catch(e => done(String(e)));""", address));
    }

    void waitForAddress(String part) {
        new WebDriverWait(driver, PATIENCE).until(ExpectedConditions.urlContains(part));
    }

    /** Signs in at the door; a password that serves once is replaced by the new one. */
    void signIn(String address, String mail, String password, String newPassword) {
        signIn(address, mail, password);
        write("#password-new", newPassword);
        write("#password-confirm", newPassword);
        find("[type=submit]").click();
        find("main");
        waitForAddress(address);
        judge();
    }

    /** Signs in with a password of one's own. */
    void signIn(String address, String mail, String password) {
        driver.get(address);
        write("#username", mail);
        write("#password", password);
        find("[name=login]").click();
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
