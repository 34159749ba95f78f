package changeover.web.walls;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.web.walls.ALivedInShop.Lived;
import changeover.web.walls.Caller.Answer;
import changeover.web.walls.Caller.Sent;
import changeover.web.walls.Caller.Who;
import changeover.web.walls.Routes.Route;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** An id of another business inside a form, a document or a question is answered like one that does not exist. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class NamedInsideTest {

    private static final Pattern ID = Pattern.compile("[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}");

    @Inject
    Routes routes;

    @Inject
    Reached reached;

    @Inject
    ALivedInShop shops;

    @Inject
    OwnersEyes eyes;

    private final List<String> wrong = new ArrayList<>();
    private int trials;

    @Test
    void a_form_that_names_a_row_of_another_business_names_nothing() {
        Lived ours = shops.ours();
        Lived theirs = shops.theirs();
        Map<String, String> before = eyes.checksum(theirs.shop().tenant());
        Who owner = Who.member("owner", ours.shop().owner());
        for (Route route : routes.all()) {
            if (route.isApi() || !route.method().equals("GET") || !route.path().startsWith("/{slug}")) {
                continue;
            }
            String path = reached.path(ours, route);
            Answer page = Caller.get(owner, path);
            if (page.status() == 200 && page.isPage()) {
                Forms.on(page.body()).forEach(form -> forms(owner, path, form, ours, theirs));
            }
        }
        System.out.println("named inside: trials=" + trials);
        assertEquals(List.of(), wrong);
        assertEquals(before, eyes.checksum(theirs.shop().tenant()), "a row of the other business was touched");
        assertTrue(trials >= 5, "trials: " + trials);
    }

    private void forms(Who who, String page, String form, Lived ours, Lived theirs) {
        String to = Forms.action(form, page);
        Map<String, List<String>> fields = Forms.fields(form);
        if (form.contains("multipart")) {
            return;
        }
        fields.forEach((name, values) -> {
            String value = values.getFirst();
            if (!ID.matcher(value).matches() || name.equals("made") || name.equals("writer")) {
                return;
            }
            Optional<String> column = eyes.whereIs(value, ours.shop().tenant());
            if (column.isEmpty()) {
                return;
            }
            String foreign = eyes.values(column.get(), theirs.shop().tenant()).getFirst();
            same(
                    who,
                    to,
                    with(fields, name, foreign),
                    with(fields, name, UUID.randomUUID().toString()),
                    name);
        });
    }

    private void same(Who who, String to, Sent real, Sent none, String name) {
        Answer theirs = Caller.ask(who, "POST", to, real);
        Answer nobodys = Caller.ask(who, "POST", to, none);
        trials++;
        if (theirs.status() >= 500 || theirs.status() < 400 || !theirs.blank().equals(nobodys.blank())) {
            wrong.add(to + " " + name + ": " + theirs.status() + " | " + nobodys.status());
        }
    }

    private static Sent with(Map<String, List<String>> fields, String name, String value) {
        var changed = new LinkedHashMap<>(fields);
        changed.put(name, List.of(value));
        return Sent.form(changed);
    }

    @Test
    void a_document_that_names_a_row_of_another_business_names_nothing() {
        Lived ours = shops.ours();
        Lived theirs = shops.theirs();
        Map<String, String> before = eyes.checksum(theirs.shop().tenant());
        for (String[] one : new String[][] {
            {"agreements", "{\"home\": \"%s\", \"plan\": \"" + own(ours, "plan.id") + "\"}", "home.id"},
            {"agreements", "{\"home\": \"" + ours.home() + "\", \"plan\": \"%s\"}", "plan.id"},
            {"payments", "{\"customer\": \"%s\", \"amount\": \"5.00\", \"way\": \"cheque\"}", "customer.id"},
            {"credits", "{\"invoice\": \"%s\", \"why\": \"x\"}", "invoice.id"},
            {
                "visits/" + own(ours, "visit.id") + "/appointment",
                "{\"technician\": \"%s\", \"day\": \"2026-12-01\", \"starts\": \"09:00\"}",
                "membership.person_id"
            },
            {
                "stock",
                "{\"kind\": \"receipt\", \"part\": \"pad-112\", \"place\": \"%s\", \"quantity\": \"1\"}",
                "stock_place.id"
            },
            {
                "operations",
                "{\"operations\": [{\"id\": \"" + UUID.randomUUID()
                        + "\", \"visit\": \"%s\", \"device\": \"d\", \"sequence\": 1, \"at\": \"2026-11-25T10:00:00Z\","
                        + " \"kind\": \"arrive\", \"body\": {}}]}",
                "visit.id"
            },
        }) {
            for (UUID person : List.of(ours.shop().owner(), ours.shop().technician())) {
                Who who = Who.member("member", person);
                String path = ours.shop().api(one[0]);
                String foreign = eyes.values(one[2], theirs.shop().tenant()).getFirst();
                Answer real = Caller.ask(who, "POST", path, Sent.json(one[1].formatted(foreign)));
                Answer none = Caller.ask(who, "POST", path, Sent.json(one[1].formatted(UUID.randomUUID())));
                if (real.status() >= 500 || real.status() < 400 || !real.blank().equals(none.blank())) {
                    wrong.add(one[0] + " " + one[2] + ": " + real.status() + " | " + none.status() + " " + real.body());
                }
            }
        }
        assertEquals(List.of(), wrong);
        assertEquals(before, eyes.checksum(theirs.shop().tenant()), "a row of the other business was touched");
    }

    private String own(Lived lived, String column) {
        return eyes.values(column, lived.shop().tenant()).getLast();
    }
}
