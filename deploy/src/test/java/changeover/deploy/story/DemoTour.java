package changeover.deploy.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.Examples;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import org.openqa.selenium.support.ui.Select;

/** A look through a shop that has lived for a year: what is late, due, owed and to be renewed leads to its list. */
final class DemoTour {
    private final Browser browser;
    private final Examples.Shop shop;
    private final String today = LocalDate.now(ZoneId.of("America/Toronto")).toString();
    private final String at;

    DemoTour(Browser browser, Examples.Shop shop, String url) {
        this.browser = browser;
        this.shop = shop;
        this.at = url + "/" + shop.slug();
    }

    void goesAround() {
        for (String page : List.of("season", "plans", "parts", "shop", "shop/taxes", "shop/mail", "money/documents")) {
            browser.open(at + "/" + page);
        }
        browser.open(at + "/today");
        browser.follow("main a[href*='/homes/']:not([href$='new'])");
        assertFalse(browser.all("figure.band svg").isEmpty(), "a home has its year");
        reads("main a[href$='/card.pdf']");
        browser.follow("main td a[href*='/visits/']");
    }

    /** Something must not be used, something was put back, and a closed visit waits to be looked over. */
    void seesWhatIsHeld() {
        browser.open(at + "/today");
        browser.follow("main a[href$='/stopped']");
        assertFalse(browser.all("main .stamp").isEmpty(), "one was put back");
        browser.follow("main .act a[href*='/stopped/']");
        browser.follow("main a[href$='/correction']");
        browser.open(at + "/today");
        browser.follow("main a[href$='/reviews']");
        browser.follow("main .act a[href*='/reviews/']");
        browser.open(at + "/shop/reviews");
    }

    void readsAPaper() {
        browser.open(at + "/money");
        browser.follow("main a[href*='/money/invoices/']");
        browser.open(at + "/money/documents");
        browser.follow("main a[href*='/money/invoices/']");
        reads("main a[href$='/pdf']");
    }

    /** What nears its end is on the list, and making its offer puts it among those that wait for an answer. */
    void offersARenewal() {
        browser.open(at + "/agreements");
        int waiting = browser.all("main form[action$='/renewal']").size();
        assertTrue(waiting > 0, "renewals are coming");
        browser.follow("main form[action$='/renewal'] button");
        browser.open(at + "/agreements");
        assertEquals(waiting - 1, browser.all("main form[action$='/renewal']").size());
    }

    /** Somebody has called from the house with the dog: the visit gets its hour today. */
    void givesACallItsDay(String technician) {
        browser.open(
                at + "/homes?q=" + URLEncoder.encode(Examples.everyKind(shop).street(), StandardCharsets.UTF_8));
        browser.follow("#found a[href*='/homes/']");
        browser.follow("main a[href$='/visits/new']");
        browser.fill("kind", "call");
        browser.fill("first", today);
        browser.fill("last", today);
        browser.fill("minutes", "40");
        browser.fill("note", shop.language().equals("fr") ? "Bruit au démarrage" : "Noise at the start");
        browser.follow("main form button.first");
        new Select(browser.find("[name=technician]")).selectByVisibleText(technician);
        browser.fill("day", today);
        browser.fill("starts", "22:30");
        browser.follow("form[action$='/appointment'] button.first");
    }

    /** Each stop of today opens; at the house with the dog the dangers stand before anything else. */
    void ridesAlong() {
        browser.open(at + "/field");
        List<String> stops = browser.all("ol.rows.dated a").stream()
                .map(stop -> Objects.requireNonNull(stop.getDomProperty("href")))
                .toList();
        stops.forEach(browser::open);
        List<Examples.Danger> dangers = Examples.everyKind(shop).dangers();
        for (int at = 0; at < dangers.size(); at++) {
            String notice = browser.all("main .notice").get(at).getText();
            assertTrue(notice.contains(dangers.get(at).note()), notice);
        }
    }

    private void reads(String link) {
        String paper = browser.find(link).getDomProperty("href");
        assertEquals("200 %PDF-", browser.beginning(Objects.requireNonNull(paper)));
    }
}
