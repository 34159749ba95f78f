package changeover.web.walls;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Role;
import changeover.web.AShop;
import changeover.web.session.ListFile;
import changeover.web.walls.ALivedInShop.Lived;
import changeover.web.walls.Caller.Answer;
import changeover.web.walls.Caller.Sent;
import changeover.web.walls.Caller.Who;
import changeover.web.walls.Routes.Route;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every route by an accountant: money is read as the owner reads it, everything else is refused, and nothing is written. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class AccountantTest {

    /** What is read: the pages of money, and what the API gives of documents, money and exports. */
    private static final Pattern READ = Pattern.compile("/\\{slug}/money(/.*)?"
            + "|/api/v1/\\{slug}/(billing-runs|credits|deposits|earned|earned\\.csv|fees|invoices|journal|journal\\.csv"
            + "|payments|periods|refunds|statements|tax-report|taxes|write-offs)([/.].*)?"
            + "|/api/v1/\\{slug}/customers/\\{id}/statements");

    /** A code of a home that is lived in. */
    private static final String CODE = "2468";

    @Inject
    Routes routes;

    @Inject
    Reached reached;

    @Inject
    ALivedInShop shops;

    @Inject
    AShop shop;

    @Inject
    OwnersEyes eyes;

    @Inject
    People people;

    private final List<String> wrong = new ArrayList<>();

    @Test
    void an_accountant_reads_the_money_and_writes_nothing() {
        Lived ours = shops.ours();
        UUID accountant = UUID.randomUUID();
        shop.in(
                ours.shop(),
                () -> people.add(
                        Membership.begin(accountant, "Rosa Fane", accountant + "@example.com", "fr", Role.ACCOUNTANT)));
        Who who = Who.member("accountant", accountant);
        Who owner = Who.member("owner", ours.shop().owner());
        Map<String, String> before = written(ours);
        int read = 0;
        int refused = 0;
        for (Route route : routes.all()) {
            boolean theirs = !route.path().contains("{slug}")
                    || route.path().contains("/yours")
                    || route.path().contains("/calendars")
                    || route.path().endsWith("/language");
            if (theirs) {
                continue;
            }
            boolean reads =
                    route.method().equals("GET") && READ.matcher(route.path()).matches();
            for (String path : reached.paths(ours, route)) {
                Answer answer = Caller.ask(who, route.method(), path, sent(route));
                if (reads) {
                    read++;
                    int told = Caller.get(owner, path).status();
                    if (answer.status() != told || answer.body().contains(CODE)) {
                        wrong.add(route + " reads " + answer.status() + " where the owner reads " + told);
                    }
                } else {
                    refused++;
                    if (answer.status() != 403 && answer.status() != 404) {
                        wrong.add(route + " answers " + answer.status());
                    }
                }
            }
        }
        assertEquals(List.of(), wrong);
        assertEquals(before, written(ours), "an accountant wrote");
        assertTrue(read > 40 && refused > 300, "read: " + read + ", refused: " + refused);
    }

    @Test
    void the_lists_of_money_are_theirs_and_no_other() {
        Lived ours = shops.ours();
        UUID accountant = UUID.randomUUID();
        shop.in(
                ours.shop(),
                () -> people.add(
                        Membership.begin(accountant, "Rosa Fane", accountant + "@example.com", "en", Role.ACCOUNTANT)));
        Who who = Who.member("accountant", accountant);
        String page = Caller.get(who, ours.shop().at("money/lists")).body();
        for (ListFile list : ListFile.values()) {
            String expected = list.isMoney() ? "200 200" : "404 404";
            Answer file = Caller.get(who, ours.shop().at("money/lists/" + list.code()));
            Answer api = Caller.get(who, ours.shop().api("exports/lists/" + list.code()));
            assertEquals(expected, file.status() + " " + api.status(), list.code());
            assertEquals(list.isMoney(), page.contains("money/lists/" + list.code() + "\""), list.code());
            assertTrue(!file.body().contains(CODE) && !api.body().contains(CODE));
        }
    }

    @Test
    void an_accountants_pages_show_the_money_tab_alone_and_say_that_nothing_is_written() {
        var open = shop.open("CA-QC", "en");
        UUID accountant = UUID.randomUUID();
        shop.in(
                open,
                () -> people.add(
                        Membership.begin(accountant, "Rosa Fane", accountant + "@example.com", "en", Role.ACCOUNTANT)));
        Answer page = Caller.get(Who.member("accountant", accountant), open.at("money"));
        assertEquals(200, page.status());
        assertTrue(page.body().contains("nothing can be written") && page.body().contains("class=\"reads\""));
        assertTrue(
                !page.body().contains(open.at("homes") + "\"") && !page.body().contains(open.at("today") + "\""));
    }

    /** Every table's rows, but for papers: these are made of frozen rows when somebody first reads them. */
    private Map<String, String> written(Lived ours) {
        var written = new TreeMap<>(eyes.checksum(ours.shop().tenant()));
        written.keySet().removeAll(Set.of("document", "document_order", "paper_start"));
        return written;
    }

    private static Sent sent(Route route) {
        if (route.method().equals("GET")) {
            return Sent.NOTHING;
        }
        if (route.takes().startsWith("multipart")) {
            return Caller.multipart();
        }
        if (route.takes().startsWith("text/csv") || route.takes().startsWith("image/")) {
            return new Sent(route.takes(), "x");
        }
        return route.isApi() ? Sent.json("{}") : Sent.EMPTY_FORM;
    }
}
