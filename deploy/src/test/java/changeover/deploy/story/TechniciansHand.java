package changeover.deploy.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.openqa.selenium.support.ui.Select;

/** What the technician does in front of the machine, on a telephone. */
final class TechniciansHand {
    private static final String CLEARANCE = "input[name$=clearance]";

    private final Browser browser;
    private final Business business;
    private final String at;

    TechniciansHand(Browser browser, Business business, String url) {
        this.browser = browser;
        this.business = business;
        this.at = url + "/" + business.slug();
    }

    /** Today's stop is there with what to load; the office's pages are not. */
    void goesToTheStop() {
        browser.open(at + "/field");
        assertEquals(1, browser.all("ol.rows.dated li").size());
        browser.follow("ol.rows.dated a");
        assertTrue(browser.text("main").contains(business.danger()), () -> browser.text("main"));
        browser.follow("form[action$='/arrival'] button");
    }

    /** Task by task to a reading outside its band, with a finding and parts; the others in one go at the end. */
    void closesTheVisit() {
        int tasks = 0;
        while (browser.all(CLEARANCE).isEmpty()) {
            answers();
            assertTrue(++tasks < 12, "the checklist has the clearance");
        }
        browser.all(CLEARANCE).getFirst().sendKeys("42");
        browser.choose("level", "recommended");
        browser.fill("text", business.in("Neige contre l’appareil", "Snow against the unit"));
        browser.choose("language", business.language());
        browser.fill("toldTo", business.customer());
        browser.choose("answer", "yes");
        browser.fill("part", "FIL-16254");
        browser.fill("quantity", "2");
        browser.choose("why", "plan");
        browser.choose("outcome", "done");
        photographs();
        answers();
        browser.open(visit() + "/closure");
        browser.choose("rest", "yes");
        browser.fill("minutes", "50");
        browser.fill("by", business.customer());
        browser.follow("main form button.first");
        assertTrue(!browser.all(".stamp").isEmpty(), () -> browser.text("main"));
    }

    /** A call has no checklist: the machine is written down from its plate, what failed is said, and the sheet closed. */
    void findsWhatFailed() {
        browser.open(at + "/field");
        browser.follow("ol.rows.dated a");
        browser.follow("form[action$='/arrival'] button");
        String visit = visit();
        browser.open(visit);
        browser.follow("main a[href$='/machines']");
        browser.follow("main a[href$='kind=gas-furnace']");
        browser.fill("name", business.in("Fournaise", "Furnace"));
        browser.fill("make", "Norrland");
        browser.fill("serial", "N-7714");
        browser.follow("main form button.first");
        browser.open(visit);
        browser.follow("main a[href$='/findings']");
        new Select(browser.find("main [name=machine]")).selectByIndex(1);
        browser.choose("level", "urgent");
        browser.fill("text", business.in("Le moteur d’extraction ne tourne pas", "The inducer motor does not turn"));
        browser.choose("language", business.language());
        browser.fill("toldTo", business.customer());
        browser.choose("answer", "yes");
        browser.fill("next", "estimate");
        browser.follow("main form button.first");
        assertEquals(1, browser.all("main .notice").size(), () -> browser.text("main"));
        browser.follow("main a[href$='/closure']");
        closes("60");
    }

    /** The part that came is fitted under the maker's warranty. */
    void fitsThePart() {
        browser.open(at + "/field");
        browser.follow("ol.rows.dated li:last-child a");
        browser.follow("form[action$='/arrival'] button");
        browser.follow("main a[href$='/parts']");
        browser.fill("taken", MorningCall.PART);
        browser.fill("used", "1");
        browser.choose("why", "warranty");
        new Select(browser.find("main [name=machine]")).selectByIndex(1);
        browser.follow("form[action$='/parts'] button.first");
        assertEquals(0, browser.all(".wrongs").size(), () -> browser.text("main"));
        browser.open(visit() + "/closure");
        closes("30");
    }

    private void closes(String minutes) {
        browser.fill("minutes", minutes);
        browser.fill("by", business.customer());
        browser.follow("main form button.first");
        assertTrue(!browser.all(".stamp").isEmpty(), () -> browser.text("main"));
    }

    /** What is kept with the task so far stays; the picture is shown where it was added. */
    private void photographs() {
        browser.follow("#task button[name=photo]");
        assertEquals(0, browser.all(".wrongs").size(), () -> browser.text("main"));
        browser.find("#picture").sendKeys(picture());
        browser.fill("caption", business.in("Côté rue", "Street side"));
        browser.follow("#photos .foot button");
        assertEquals(1, browser.all("figure.photo img").size(), () -> browser.text("main"));
        Object pixels = browser.driver()
                .executeAsyncScript("const done = arguments[0], image = document.querySelector('figure.photo img');"
                        + "image.loading = 'eager';"
                        + "image.decode().then(() => done(image.naturalWidth)).catch(e => done(String(e)))");
        assertEquals(640L, pixels);
        browser.follow("#photos .foot a");
    }

    private static String picture() {
        try {
            Path file = Files.createTempFile(Browser.kept(), "seen", ".png");
            ImageIO.write(new BufferedImage(640, 480, BufferedImage.TYPE_INT_RGB), "png", file.toFile());
            return file.toString();
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }

    private void answers() {
        browser.choose("outcome", "done");
        browser.follow("#task button.first");
        assertEquals(0, browser.all(".wrongs").size(), () -> browser.text("main"));
    }

    private String visit() {
        return String.valueOf(browser.driver().getCurrentUrl()).replaceAll("(/field/visits/[^/?#]+).*", "$1");
    }
}
