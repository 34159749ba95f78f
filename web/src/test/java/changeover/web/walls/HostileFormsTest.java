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
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Whatever is typed into any field of any form: an answer in words, never a mishap, never markup that comes back alive. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class HostileFormsTest {

    private static final int EACH = Boolean.getBoolean("changeover.deep") ? 10 : 1;
    private static final long SEED = 20261125;
    private static final String ALIVE = "<img src=x onerror=alert(1)>";

    private static final List<String> HOSTILE = List.of(
            ALIVE,
            "\"><script>alert(1)</script>",
            "'; drop table home; --",
            "1' or '1'='1",
            "{inject:csrf.token}{#each x}",
            "${7*7}",
            "a\r\nSet-Cookie: x=1",
            "nul \u0000 inside",
            "\u202egnihtemos",
            "\ud800",
            "-1",
            "999999999999999999999999",
            "1e309",
            "NaN",
            "0.000000001",
            "2026-02-30",
            "9999-99-99",
            "+999999999-01-01",
            "99:99",
            "=1+1",
            "../../../../etc/passwd",
            "javascript:alert(1)",
            "x".repeat(60_000),
            "\ud83d\udd25".repeat(50),
            "   ",
            "00000000-0000-0000-0000-000000000000");

    @Inject
    Routes routes;

    @Inject
    Reached reached;

    @Inject
    ALivedInShop shops;

    private final Random random = new Random(SEED);
    private final Set<String> tried = new HashSet<>();
    private final List<String> wrong = new ArrayList<>();
    private int trials;

    @Test
    void every_field_of_every_form_of_the_office_and_the_field() {
        System.out.println("hostile forms: seed=" + SEED);
        Lived ours = shops.open("CA-QC", "en");
        walk(Who.member("owner", ours.shop().owner()), ours);
        walk(Who.member("technician", ours.shop().technician()), ours);
        System.out.println("hostile forms: trials=" + trials + " fields=" + tried.size());
        assertEquals(List.of(), wrong);
        assertTrue(tried.size() > 100, "fields: " + tried.size());
    }

    private void walk(Who who, Lived ours) {
        for (Route route : routes.all()) {
            if (route.isApi() || !route.method().equals("GET") || !route.path().startsWith("/{slug}")) {
                continue;
            }
            String path = reached.path(ours, route);
            Answer page = Caller.get(who, path);
            if (page.status() >= 500) {
                wrong.add("GET " + path + " " + page.status());
            }
            if (page.status() == 200 && page.isPage()) {
                Forms.on(page.body()).stream()
                        .filter(form -> !form.contains("multipart"))
                        .forEach(form -> fields(who, Forms.action(form, path), Forms.fields(form)));
            }
        }
    }

    private void fields(Who who, String to, Map<String, List<String>> fields) {
        for (String name : fields.keySet()) {
            if (name.equals("csrf") || !tried.add(Caller.shape(to) + " " + name)) {
                continue;
            }
            for (int time = 0; time < EACH; time++) {
                String value = HOSTILE.get(random.nextInt(HOSTILE.size()));
                var changed = new LinkedHashMap<>(fields);
                changed.put(name, List.of(value));
                if (fields.containsKey("made")) {
                    changed.put(
                            "made",
                            List.of(
                                    name.equals("made")
                                            ? value
                                            : UUID.randomUUID().toString()));
                }
                judge(to, name, value, Caller.ask(who, "POST", to, Sent.form(changed)));
            }
        }
    }

    private void judge(String to, String name, String value, Answer answer) {
        trials++;
        String shown = value.length() > 40 ? value.substring(0, 40) : value;
        String where = Caller.shape(to) + " " + name + "=" + shown + ": " + answer.status();
        if (answer.status() >= 500
                || answer.body().contains("Exception")
                || answer.location().contains("\n")) {
            wrong.add(where);
        } else if (answer.body().contains(ALIVE) || answer.body().contains("<script>alert(1)")) {
            wrong.add(where + " comes back alive");
        } else if (answer.status() == 422 && answer.isPage() && silent(answer, name)) {
            wrong.add(where + " without a sentence");
        }
    }

    /** Neither a sentence in red nor another page: what is over has no form any more. */
    private static boolean silent(Answer answer, String name) {
        return !answer.body().contains("wrong") && answer.body().contains("name=\"" + name + "\"");
    }
}
