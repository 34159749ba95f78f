package changeover.deploy.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import org.openqa.selenium.support.ui.Select;

/** Somebody rings at 06:40 without a plan and without heat: what the desk does, from the first ring to the money. */
final class MorningCall {
    static final String PART = "IND-7";

    private static final String SUPPLIER = "Tannery Supply";
    private static final ZoneId TORONTO = ZoneId.of("America/Toronto");

    private final Browser browser;
    private final Business business;
    private final String at;
    private final LocalDate today = LocalDate.now(TORONTO);

    MorningCall(Browser browser, Business business, String url) {
        this.browser = browser;
        this.business = business;
        this.at = url + "/" + business.slug();
    }

    void setsUpTheShop(OwnersDesk desk) {
        browser.open(at + "/parts");
        browser.fill("code", PART);
        browser.fill("nameEn", "Inducer motor");
        browser.fill("nameFr", "Moteur d’extraction");
        browser.follow("form[action$='/parts'] button");
        browser.open(at + "/shop/prices");
        desk.price("part:" + PART, "210.00");
        desk.price("labour:hour", "96.00");
        desk.price("travel:visit", "35.00");
    }

    /** From Today to the form: life first, then who, where and what. @return the visit that the call becomes */
    String takesTheCall() {
        browser.open(at + "/today");
        browser.follow("main a[href$='/calls/new']");
        browser.fill("caller", business.customer());
        browser.fill("phone", "555-0164");
        boolean before = LocalTime.now(TORONTO).isBefore(LocalTime.of(6, 40));
        browser.fill("day", today.minusDays(before ? 1 : 0).toString());
        browser.fill("time", "06:40");
        browser.fill("street", business.street());
        browser.fill("city", business.town());
        browser.fill("language", business.language());
        browser.fill("trouble", "no_heat");
        browser.choose("heat", "no");
        browser.choose("risks", "infant");
        browser.fill("words", business.in("Rien ne part, un bébé à la maison", "Nothing starts, a baby at home"));
        browser.follow("main form button.first");
        assertTrue(browser.text("main").contains("06:40"), () -> browser.text("main"));
        browser.fill("why", business.in("Sans chauffage avec un bébé", "No heat, with a baby"));
        browser.follow("form[action$='/outcome'] button.first");
        return here();
    }

    void givesItsDay(String visit, String hour) {
        browser.open(visit);
        browser.fill("day", today.toString());
        browser.fill("starts", hour);
        browser.follow("form[action$='/appointment'] button.first");
    }

    /** The paper that came with the machine says how long its maker answers for it. */
    void writesTheWarranty(String visit) {
        browser.open(visit);
        browser.follow("main .crumb a[href*='/homes/']");
        browser.follow("main a[href*='/machines/']:not([href$='new']):not([href$='rhythm'])");
        browser.fill("makerWarrantyUntil", today.plusYears(4).toString());
        browser.fill("registration", "NR-40217");
        browser.follow("main form:not([action*='/agreement']):not([action*='/intervals']) button.first");
        assertEquals(0, browser.all(".wrongs").size(), () -> browser.text("main"));
    }

    /** What the technician left to be estimated is written, offered, and agreed to on the telephone. */
    void estimates() {
        browser.open(at + "/today");
        browser.follow("main a[href$='/estimates']");
        browser.follow("main a[href*='/estimates/new?followUp=']");
        browser.fill("minutes", "120");
        browser.fill("part-0-code", PART);
        browser.fill("part-0-quantity", "1");
        browser.follow("main form button.first");
        browser.follow("form[action$='/offer'] button");
        browser.choose("how", "accepted");
        browser.fill("byName", business.customer());
        browser.follow("form[action$='/answer'] button.first");
        assertEquals(0, browser.all(".wrongs").size(), () -> browser.text("main"));
        assertEquals(1, browser.all("main .stamp").size(), () -> browser.text("main"));
    }

    /** From whom, when it is expected; then it comes, the customer is told, and a second visit uses it. @return that visit */
    String waitsForThePart(String visit) {
        browser.open(visit);
        browser.follow("main a[href$='/orders']");
        browser.fill("part", PART);
        browser.fill("supplier", SUPPLIER);
        browser.fill("expected", today.plusDays(1).toString());
        browser.follow("main form button.first");
        assertTrue(browser.text("main").contains(SUPPLIER), () -> browser.text("main"));
        var place = new Select(browser.find("main [name=place]"));
        place.selectByIndex(place.getOptions().size() - 1);
        browser.follow("form[action$='/arrival'] button.first");
        browser.fill("who", business.customer());
        browser.follow("form[action$='/notice'] button");
        assertTrue(browser.text("main").contains(business.customer()), () -> browser.text("main"));
        browser.fill("minutes", "30");
        browser.follow("form[action$='/visit'] button");
        return here();
    }

    /** The maker answers for the part: it is claimed. */
    void claimsThePart(String visit) {
        browser.open(visit);
        browser.follow("main a[href$='/claims']");
        browser.fill("oldSerial", "W-118");
        browser.fill("newSerial", "W-532");
        browser.fill("maker", "Norrland");
        browser.fill("credit", business.amount("140.00"));
        browser.follow("main form button.first");
        browser.open(at + "/parts/claims");
        assertTrue(browser.text("main").contains("Norrland"), () -> browser.text("main"));
    }

    /** Both visits are invoiced, the part for nothing; what is owed is paid and nothing is left. */
    void isPaid(String visit) {
        browser.open(at + "/money");
        browser.follow("form[action$='/money/issues'] button.first");
        browser.open(visit);
        browser.follow("main .crumb a[href*='/homes/']");
        browser.follow("main a[href*='/customers/']");
        String customer = here().replaceAll(".*/", "");
        browser.open(at + "/money/payments/new?customer=" + customer);
        String owed = browser.text(".page-head p");
        assertTrue(owed.contains(business.owed()), owed);
        browser.fill("amount", business.owed());
        browser.follow("main form button.first");
        browser.open(at + "/money/customers/" + customer);
        List<String> invoices = browser.all("main a[href*='/money/invoices/']").stream()
                .map(link -> Objects.requireNonNull(link.getDomProperty("href")))
                .distinct()
                .toList();
        assertEquals(2, invoices.size(), () -> browser.text("main"));
        for (String invoice : invoices) {
            browser.open(invoice);
            assertEquals(2, browser.all("main .stamp").size(), () -> browser.text("main"));
        }
        String both = invoices.stream()
                .map(invoice -> {
                    browser.open(invoice);
                    return browser.text("main");
                })
                .reduce("", String::concat);
        assertTrue(both.contains(business.total()), both);
        assertTrue(both.contains("NR-40217"), both);
    }

    private String here() {
        return Objects.requireNonNull(browser.driver().getCurrentUrl()).replaceAll("[?#].*", "");
    }
}
