package changeover.deploy.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
        answers();
        browser.open(visit() + "/closure");
        browser.choose("rest", "yes");
        browser.fill("minutes", "50");
        browser.fill("by", business.customer());
        browser.follow("main form button.first");
        assertTrue(!browser.all(".stamp").isEmpty(), () -> browser.text("main"));
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
