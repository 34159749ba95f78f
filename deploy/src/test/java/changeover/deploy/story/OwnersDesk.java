package changeover.deploy.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** What the owner does at the desk, page by page. */
final class OwnersDesk {
    private static final List<String> TASKS =
            List.of("filter-at-visit", "filter-direction", "outdoor-clearance", "outdoor-coil", "defrost");

    private final Browser browser;
    private final Business business;
    private final String at;
    private final String today = LocalDate.now(ZoneId.of("America/Toronto")).toString();

    OwnersDesk(Browser browser, Business business, String url) {
        this.browser = browser;
        this.business = business;
        this.at = url + "/" + business.slug();
    }

    /** Pages of a business in which nothing has happened say what to do next. */
    void looksAround() {
        for (String page : List.of("today", "homes", "season", "plans", "agreements", "money", "parts", "shop")) {
            browser.open(at + "/" + page);
            assertTrue(browser.all("main h1").size() == 1, page);
        }
    }

    /** @return the password that serves once */
    String invitesTheTechnician() {
        browser.open(at + "/shop/people/new");
        browser.fill("name", business.technician());
        browser.fill("email", business.technicianMail());
        browser.fill("role", "technician");
        browser.fill("language", business.language());
        browser.follow("main form button.first");
        return browser.text(".big");
    }

    void fillsTheVan() {
        browser.open(at + "/parts");
        browser.fill("code", "FIL-16254");
        browser.fill("nameEn", "Filter 16 × 25 × 4");
        browser.fill("nameFr", "Filtre 16 × 25 × 4");
        browser.fill("kind", "filter");
        browser.fill("size", "16x25x4");
        browser.follow("form[action$='/parts'] button");
        browser.fill("part", "FIL-16254");
        browser.fill("quantity", "6");
        var van = new Select(browser.find("[name=toPlace]"));
        van.selectByIndex(van.getOptions().size() - 1);
        browser.follow("form[action$='/parts/movements'] button");
        browser.open(at + "/shop/prices");
        price("part:FIL-16254", "38.00");
        price("labour:hour", "96.00");
    }

    /** Ontario's rate comes from memory; no document carries it before the owner has read it. */
    void readsTheRate() {
        if (business.isFrench()) {
            return;
        }
        browser.open(at + "/shop/taxes");
        browser.fill("row", "CA-ON hst 2010-07-01 any any any");
        browser.fill("readIn", "Canada Revenue Agency, GST/HST rates by province");
        browser.follow("form[action$='/shop/taxes/confirmations'] button");
        assertTrue(browser.text("main").contains("confirmed by you"), () -> browser.text("main"));
    }

    void price(String item, String amount) {
        browser.fill("item", item);
        browser.fill("price", business.amount(amount));
        browser.fill("from", today);
        browser.follow("form[action$='/shop/prices'] button");
    }

    /** @return the home's address */
    String typesAHome() {
        browser.open(at + "/homes/new");
        browser.fill("street", business.street());
        browser.fill("city", business.town());
        browser.fill("region", business.region().substring(3));
        browser.fill("country", "CA");
        browser.fill("name", business.customer());
        browser.fill("phone", "555-0129");
        browser.fill("email", "household@example.com");
        browser.fill("language", business.language());
        browser.follow("form[action$='/homes'] button.first");
        String home = Objects.requireNonNull(browser.driver().getCurrentUrl()).replaceAll("[?#].*", "");
        machine(home, "filter-slot", "fits.size", "16x25x4", "fits.thickness", "4");
        machine(home, "outdoor-heat-pump", "fits.drive", "inverter", "make", "Norrland");
        return home;
    }

    private void machine(String home, String kind, String... facts) {
        browser.open(home + "/machines/new");
        browser.follow("main a[href$='kind=" + kind + "']");
        browser.fill("name", business.in("Appareil ", "Unit ") + kind.length());
        for (int fact = 0; fact < facts.length; fact += 2) {
            browser.fill(facts[fact], facts[fact + 1]);
        }
        browser.follow("main form button.first");
    }

    /** A danger that whoever goes there must know. */
    void warns(String home) {
        browser.open(home + "/access");
        browser.fill("kind", "other");
        browser.fill("note", business.danger());
        browser.follow("form[action$='/hazards'] button");
    }

    /** Writes a plan of two visits, tries it on the home and puts it on sale. */
    void designsAPlan() {
        browser.open(at + "/plans/new");
        browser.fill("nameEn", "Two turns");
        browser.fill("nameFr", "Deux saisons");
        browser.fill("code", "two-turns");
        browser.fill("price", business.amount("249.00"));
        browser.fill("discountPercent", "10");
        TASKS.forEach(task -> browser.choose("tasks", task));
        browser.fill("part-filter", "1");
        browser.follow("form[action$='/plans/new'] button.first");
        String plan = browser.driver().getCurrentUrl();
        browser.open(plan + "?q=" + business.town().substring(0, 4));
        browser.follow("#tried ul.plain a");
        assertTrue(browser.text("#tried .verdict").contains("2"), "two visits keep it");
        browser.follow("form[action$='/sale'] button");
    }

    /** @return the agreement's address; a sale at the customer's home is refused in Quebec, with the reason */
    String sells(String home) {
        browser.open(home);
        browser.follow("a[href$='/offer']");
        browser.follow("main form[method=get] button");
        browser.follow(".slip form button.first");
        String agreement =
                Objects.requireNonNull(browser.driver().getCurrentUrl()).replaceAll("[?#].*", "");
        assertEquals("200 %PDF-", browser.beginning(agreement + "/pdf"));
        if (business.region().equals("CA-QC")) {
            says("home");
            assertTrue(browser.text(".wrongs, .wrong").contains("hors de l’établissement"), "the reason is said");
            assertEquals(business.customer(), browser.find("[name=by]").getDomProperty("value"), "nothing is lost");
        }
        says("counter");
        assertEquals(0, browser.all(".wrongs").size());
        return agreement;
    }

    private void says(String channel) {
        browser.fill("by", business.customer());
        browser.fill("day", today);
        browser.fill("channel", channel);
        browser.follow("form[action$='/acceptance'] button.first");
    }

    /** @return the visit's address; its checklist says why each task is due */
    String givesAVisitItsDay(String home) {
        browser.open(home);
        browser.follow("main td a[href*='/visits/']");
        String visit = Objects.requireNonNull(browser.driver().getCurrentUrl()).replaceAll("[?#].*", "");
        browser.all("main .ledger tbody tr td:last-child")
                .forEach(why -> assertTrue(!why.getText().isBlank(), "each task says why"));
        browser.fill("day", today);
        browser.fill("starts", "23:00");
        browser.follow("form[action$='/appointment'] button.first");
        return visit;
    }

    void readsTheReport(String visit) {
        browser.open(visit);
        String report = browser.find("main a.first").getDomProperty("href");
        assertEquals("200 %PDF-", browser.beginning(Objects.requireNonNull(report)));
    }

    /** @return the plan invoice's address */
    String issues(String agreement) {
        browser.open(at + "/money");
        browser.follow("form[action$='/money/issues'] button.first");
        browser.open(agreement);
        browser.follow("main .ledger a[href*='/money/invoices/']");
        String invoice =
                Objects.requireNonNull(browser.driver().getCurrentUrl()).replaceAll("[?#].*", "");
        assertTrue(browser.text("main").contains(business.total()), () -> browser.text("main"));
        assertEquals("200 %PDF-", browser.beginning(invoice + "/pdf"));
        return invoice;
    }

    /** From the invoice to the payment of all that is owed, with nothing but the keyboard. */
    void recordsThePaymentByKeyboard(String invoice) {
        browser.open(invoice);
        tabTo("a[href*='/payments/new']").sendKeys(Keys.ENTER);
        browser.waitForAddress("/payments/new");
        tabTo("[name=amount]").sendKeys(Keys.chord(Keys.CONTROL, "a"), business.owed());
        tabTo("main button[type=submit]").sendKeys(Keys.ENTER);
        browser.find(".said");
        browser.open(invoice);
        assertTrue(browser.all("main .stamp").size() == 2, "issued and paid");
    }

    private WebElement tabTo(String css) {
        browser.find(css);
        for (int step = 0; step < 80; step++) {
            WebElement here = browser.driver().switchTo().activeElement();
            Object there = browser.driver().executeScript("return arguments[0].matches(arguments[1])", here, css);
            if (Boolean.TRUE.equals(there)) {
                return here;
            }
            here.sendKeys(Keys.TAB);
        }
        throw new AssertionError("the keyboard does not reach " + css);
    }

    /** @return the address that opens the customer's own page */
    String makesTheCustomersLink(String home) {
        browser.open(home);
        browser.follow("main a[href*='/customers/']");
        browser.follow("main a[href$='/link']");
        browser.follow("form[action$='/link'] button.first");
        return browser.text("main code");
    }

    /** What lived through a day shows on every page that sums it up. */
    void looksBack(String home) {
        for (String page : List.of("/agreements", "/money/documents", "/season", "/today", "/shop/mail")) {
            browser.open(at + page);
        }
        browser.open(at + "/homes?q=" + business.town().substring(0, 4));
        browser.follow("#found a");
        assertEquals(home, browser.driver().getCurrentUrl());
    }
}
