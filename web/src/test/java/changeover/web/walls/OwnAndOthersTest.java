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
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Walls inside a business: what is one's own is found, and a technician finds no visit of a colleague's. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class OwnAndOthersTest {

    /** Addresses that are nothing without a question, or have nothing to show when all letters have been printed. */
    private static final Set<String> NOTHING_TO_SHOW = Set.of(
            "/api/v1/{slug}/agreements",
            "/api/v1/{slug}/payments",
            "/api/v1/{slug}/refunds",
            "/{slug}/money/earned/agreements",
            "/{slug}/money/earned/behind",
            "/{slug}/money/journal/postings",
            "/{slug}/money/tax-report/documents",
            "/{slug}/shop/mail/letters.pdf");

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

    /** Or else every trial of another business's ids would try nothing: what is not found at all is always alike. */
    @Test
    void what_is_ours_is_found() {
        Lived ours = shops.ours();
        for (Route route : routes.all()) {
            if (route.method().equals("GET") && !NOTHING_TO_SHOW.contains(route.path())) {
                trials++;
                List<Integer> said = List.of(
                                Who.member("owner", ours.shop().owner()),
                                Who.member("technician", ours.shop().technician()),
                                Who.customer("customer", ours.secret()))
                        .stream()
                        .flatMap(who -> reached.paths(ours, route).stream().map(path -> Caller.get(who, path)))
                        .map(Answer::status)
                        .distinct()
                        .toList();
                if (said.stream().noneMatch(status -> status < 400 || status == 422)) {
                    wrong.add(route + " finds nothing of its own: " + said);
                }
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(trials > 50, "trials: " + trials);
    }

    @Test
    void a_technician_finds_no_visit_of_a_colleagues() {
        Lived ours = shops.ours();
        Who technician = Who.member("technician", ours.shop().technician());
        List<String> visits = eyes.texts(
                "select visit_id::text from appointment where tenant_id = ? and technician_id = ?",
                ours.shop().tenant(),
                ours.other());
        List<String> tasks = eyes.texts(
                "select id::text from visit_task where tenant_id = ? and visit_id::text = '" + visits.getFirst() + "'",
                ours.shop().tenant());
        for (Route route : routes.all()) {
            if (route.path().contains("/visits/{id}")) {
                Answer real = ask(technician, route, ours, visits.getFirst(), tasks.getFirst());
                Answer none = ask(technician, route, ours, UUID.randomUUID().toString(), tasks.getFirst());
                trials++;
                if (real.status() != 404 || !real.blank().equals(none.blank())) {
                    wrong.add(route + ": " + real.status() + " | " + none.status());
                }
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(trials >= 15, "trials: " + trials);
    }

    private static Answer ask(Who who, Route route, Lived ours, String visit, String task) {
        String path = route.at(name -> name.equals("slug")
                ? ours.shop().slug()
                : name.equals("id") ? visit : name.equals("task") ? task : "none");
        Sent sent = route.method().equals("GET")
                ? Sent.NOTHING
                : route.takes().startsWith("multipart")
                        ? Caller.multipart()
                        : route.takes().startsWith("image/")
                                ? new Sent(route.takes(), "x")
                                : route.isApi() ? Sent.json("{}") : Sent.EMPTY_FORM;
        return Caller.ask(who, route.method(), path, sent);
    }
}
