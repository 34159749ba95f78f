package changeover.deploy.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.Examples;
import java.util.List;
import java.util.Objects;

/** A look through a shop that has lived for a year: what is late, due, owed and to be renewed leads to its list. */
final class DemoTour {
    private final Browser browser;
    private final String at;

    DemoTour(Browser browser, Examples.Shop shop, String url) {
        this.browser = browser;
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

    private void reads(String link) {
        String paper = browser.find(link).getDomProperty("href");
        assertEquals("200 %PDF-", browser.beginning(Objects.requireNonNull(paper)));
    }
}
