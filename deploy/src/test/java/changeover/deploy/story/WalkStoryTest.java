package changeover.deploy.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.Examples;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;

/**
 * The whole job in a browser, in either language, on a business opened by command line: from the password that serves once
 * over the sold plan and the closed visit to the paid invoice and the customer's own page. Then the two shops of the demo.
 */
@Tag("browser")
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class WalkStoryTest {
    /** What is done to a page, and what the rules then say. */
    private static final Map<String, String> FAULTS = Map.of(
            "document.querySelector('main').append(new Image(9, 9))", "image-alt",
            "document.querySelector('main input, main a').style.color = '#eee'", "color-contrast",
            "document.querySelector('h1').textContent = 'Votre shop'", "“Votre”",
            "document.querySelector('h1').textContent = 'visit:late_by'", "“visit:late_by”",
            "document.querySelector('h1').setAttribute('aria-label', 'of null homes')", "“null”",
            "document.querySelector('h1').style.width = '2000px'", "too wide");

    private static Installed installed;

    @BeforeAll
    static void start() {
        installed = Installed.start(Path.of("target", "story", "opened"), "--demo");
    }

    @AfterAll
    static void stop() {
        installed.close();
    }

    @Test
    @Order(1)
    void the_job_is_done_in_quebec_in_french() {
        walk(Business.QUEBEC);
    }

    @Test
    @Order(2)
    void the_job_is_done_in_ontario_in_english() {
        walk(Business.ONTARIO);
    }

    @Test
    @Order(3)
    void a_call_without_a_plan_ends_in_a_paid_second_visit_in_french() {
        called(Business.QUEBEC_CALLED);
    }

    @Test
    @Order(4)
    void a_call_without_a_plan_ends_in_a_paid_second_visit_in_english() {
        called(Business.ONTARIO_CALLED);
    }

    @Test
    @Order(5)
    void the_demo_shows_a_living_shop_in_french() {
        tour(Examples.LISIERE);
    }

    @Test
    @Order(6)
    void the_demo_shows_a_living_shop_in_english() {
        tour(Examples.KILN_LANE);
    }

    @Test
    @Order(7)
    void what_breaks_a_rule_is_found() {
        Examples.Shop shop = Examples.KILN_LANE;
        try (Browser browser = new Browser(shop.language(), 1280)) {
            signIn(browser, shop, 0);
            FAULTS.forEach((fault, found) -> {
                browser.driver().navigate().refresh();
                browser.driver().executeScript(fault);
                var rules = new PageRules(shop.language(), 1280);
                String said = assertThrows(AssertionError.class, () -> rules.judge(browser), fault)
                        .getMessage();
                assertTrue(said.contains(found), said);
            });
        }
    }

    @Test
    @Order(8)
    void every_invariant_holds_afterwards() {
        assertEquals("check all ok", installed.admin("check"));
    }

    private static void tour(Examples.Shop shop) {
        try (Browser browser = new Browser(shop.language(), 1280)) {
            signIn(browser, shop, 0);
            var tour = new DemoTour(browser, shop, installed.url());
            tour.goesAround();
            tour.seesWhatIsHeld();
            tour.readsAPaper();
            tour.offersARenewal();
            tour.givesACallItsDay(shop.people().get(2).name());
        }
        try (Browser telephone = new Browser(shop.language(), 390)) {
            signIn(telephone, shop, 2);
            new DemoTour(telephone, shop, installed.url()).ridesAlong();
        }
    }

    private static void signIn(Browser browser, Examples.Shop shop, int person) {
        String mail = shop.people().get(person).email();
        browser.signIn(installed.url() + "/" + shop.slug(), mail, installed.password(mail));
        browser.waitForAddress(installed.url() + "/" + shop.slug());
        browser.find("main");
    }

    private static void walk(Business business) {
        String password = opened(business);
        try (Browser browser = new Browser(business.language(), 1280)) {
            firstSignIn(browser, business, business.owner(), password);
            walk(business, new OwnersDesk(browser, business, installed.url()));
            new TakesOver(browser, business, installed.url()).theSpreadsheet();
            browser.walked();
        }
    }

    private static void called(Business business) {
        String password = opened(business);
        try (Browser browser = new Browser(business.language(), 1280)) {
            firstSignIn(browser, business, business.owner(), password);
            var owner = new OwnersDesk(browser, business, installed.url());
            var desk = new MorningCall(browser, business, installed.url());
            String technicians = owner.invitesTheTechnician();
            owner.readsTheRate();
            desk.setsUpTheShop(owner);
            String first = desk.takesTheCall();
            desk.givesItsDay(first, "07:30");
            try (Browser telephone = new Browser(business.language(), 390)) {
                firstSignIn(telephone, business, business.technicianMail(), technicians);
                var technician = new TechniciansHand(telephone, business, installed.url());
                technician.findsWhatFailed();
                desk.writesTheWarranty(first);
                desk.estimates();
                String second = desk.waitsForThePart(first);
                desk.givesItsDay(second, "14:00");
                technician.fitsThePart();
                desk.claimsThePart(second);
                desk.isPaid(second);
            }
        }
    }

    private static void firstSignIn(Browser browser, Business business, String mail, String password) {
        browser.signIn(installed.url() + "/" + business.slug(), mail, password, Business.OWN_PASSWORD);
    }

    /** @return the owner's password, which serves once */
    private static String opened(Business business) {
        return installed
                .admin(
                        "business",
                        "add",
                        "--slug",
                        business.slug(),
                        "--name",
                        business.name(),
                        "--address",
                        "1, " + business.town(),
                        "--region",
                        business.region(),
                        "--language",
                        business.language(),
                        "--owner",
                        business.owner(),
                        "--gst",
                        "123456789 RT0001",
                        "--qst",
                        "1234567890 TQ0001")
                .replaceAll(".* password=", "");
    }

    private static void walk(Business business, OwnersDesk owner) {
        owner.looksAround();
        String password = owner.invitesTheTechnician();
        owner.fillsTheVan();
        owner.readsTheRate();
        String home = owner.typesAHome();
        owner.warns(home);
        owner.designsAPlan();
        String agreement = owner.sells(home);
        String visit = owner.givesAVisitItsDay(home);
        try (Browser telephone = new Browser(business.language(), 390)) {
            firstSignIn(telephone, business, business.technicianMail(), password);
            var technician = new TechniciansHand(telephone, business, installed.url());
            technician.goesToTheStop();
            technician.closesTheVisit();
        }
        owner.readsTheReport(visit);
        owner.recordsThePaymentByKeyboard(owner.issues(agreement));
        String link = owner.makesTheCustomersLink(home);
        try (Browser customer = new Browser(business.language(), 390)) {
            customer.open(link);
            customer.follow("main form button.first");
            String page = customer.text("main");
            assertTrue(page.contains(business.street()), page);
        }
        owner.looksBack(home);
    }
}
