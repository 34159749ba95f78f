package changeover.deploy.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.oldsheet.AnUntidySheet;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** A shop that ran on a spreadsheet of three hundred untidy rows is taken over at the desk. */
final class TakesOver {
    private static final long SEED = 7;

    private static final Map<String, String> KINDS = Map.of(
            "thermo murale", "ductless-head", "heat pump", "outdoor-heat-pump", "échangeur", "hrv", "?? voir", "none");

    /** Answers the text of a file that this person may take out. */
    private static final String TAKE = """
            const done = arguments[arguments.length - 1];
            fetch(arguments[0]).then(a => a.text()).then(done).catch(e => done(String(e)));""";

    private final Browser browser;
    private final Business business;
    private final String at;

    TakesOver(Browser browser, Business business, String url) {
        this.browser = browser;
        this.business = business;
        this.at = url + "/" + business.slug();
    }

    void theSpreadsheet() {
        String sheet = brings(new AnUntidySheet(SEED, LocalDate.now(ZoneId.of("America/Toronto"))).bytes());
        names();
        browser.follow("form[action$='/reading'] button");
        assertEquals(
                4,
                browser.find("main section.part table thead tr")
                        .findElements(By.cssSelector("th"))
                        .size(),
                "three rows are shown as they are read");
        browser.follow("form[action$='/homes'] button.first");
        assertTrue(browser.all("main section table tbody tr").size() > AnUntidySheet.BAD, "the bad rows are said");
        mends(sheet);
        merges();
        finds();
    }

    private String brings(byte[] file) {
        browser.open(at + "/homes/sheets");
        browser.find("#file").sendKeys(kept(file).toString());
        browser.follow("form[action$='/homes/sheets'] button.first");
        return browser.driver().getCurrentUrl().replaceAll("[?#].*", "");
    }

    private static Path kept(byte[] file) {
        try {
            return Files.write(Files.createTempFile(Browser.kept(), "clients", ".csv"), file);
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }

    /** What no list of ours knows, a person says once. */
    private void names() {
        browser.fill("dayOrder", "day");
        browser.fill("region", business.region().substring(3));
        browser.fill("plan", "two-turns");
        words("kindWord-").forEach(word -> {
            String name = String.valueOf(word.getDomAttribute("name"));
            String said = String.valueOf(word.getDomAttribute("value")).strip().toLowerCase(Locale.ROOT);
            if (KINDS.containsKey(said)) {
                browser.fill(name.replace("Word", ""), KINDS.get(said));
            }
        });
        words("planWord-")
                .forEach(word -> browser.fill(
                        String.valueOf(word.getDomAttribute("name")).replace("Word", ""), "two-turns"));
    }

    private List<WebElement> words(String name) {
        return browser.all("main input[name^='" + name + "']");
    }

    /** The bad rows come back as a file, are mended elsewhere and brought again; how to read them is known by now. */
    private void mends(String sheet) {
        String back = String.valueOf(browser.driver().executeAsyncScript(TAKE, sheet + "/bad-rows.csv"));
        assertEquals(AnUntidySheet.BAD + 1, back.strip().lines().count(), back);
        brings(AnUntidySheet.mended(back).getBytes(StandardCharsets.UTF_8));
        browser.follow("form[action$='/reading'] button");
        browser.follow("form[action$='/homes'] button.first");
        assertEquals(0, browser.all(".slip.off").size(), "nothing is left to mend");
    }

    /** A home that somebody types once more looks like the one that is there; the merge is undone, and made again. */
    private void merges() {
        browser.open(at + "/homes/new");
        browser.fill("street", "901, kiln lane");
        browser.fill("city", "PORT AMBROSE");
        browser.fill("region", "ON");
        browser.fill("country", "CA");
        browser.fill("name", "Ida Roe");
        browser.fill("language", business.language());
        browser.follow("form[action$='/homes'] button.first");
        browser.open(at + "/homes/alike");
        int pairs = pairs();
        browser.follow("main form button[value='first']");
        assertEquals(pairs - 1, pairs());
        browser.follow("form[action$='/undoing'] button");
        assertEquals(pairs, pairs());
        browser.follow("main form button[value='first']");
        assertEquals(pairs - 1, pairs());
    }

    private int pairs() {
        return browser.all("main form button[value='first']").isEmpty()
                ? 0
                : Integer.parseInt(browser.text("main section .count"));
    }

    private void finds() {
        browser.open(at + "/homes?q=905+kiln");
        assertTrue(browser.text("#found").contains("905 Kiln Lane"), () -> browser.text("main"));
    }
}
