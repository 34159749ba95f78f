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
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/**
 * What is another business's is not found: on every route, by every method and role, its ids are answered like ids that
 * do not exist, and its rows stay as they are. Source: OWASP ASVS 5.0, 8.2.2 and 8.4.1 (from memory): access to an object is
 * decided for each object, and one tenant's operations never reach another's.
 */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class EveryRouteKeepsItsWallsTest {

    private static final int ROUNDS = Boolean.getBoolean("changeover.deep") ? 3 : 1;

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
    void every_route_answers_for_another_business_as_for_nothing() {
        Lived ours = shops.ours();
        Lived theirs = shops.theirs();
        Map<String, String> before = eyes.checksum(theirs.shop().tenant());
        for (int round = 0; round < ROUNDS; round++) {
            for (Route route : routes.all()) {
                for (Who who : people(ours, theirs)) {
                    byIds(route, who, ours, theirs);
                    byBusiness(route, who, theirs);
                }
            }
        }
        System.out.println("walls: trials=" + trials + " routes=" + routes.all().size());
        assertEquals(List.of(), wrong);
        assertEquals(before, eyes.checksum(theirs.shop().tenant()), "a row of the other business was touched");
        assertTrue(trials > 1000 * ROUNDS, "trials: " + trials);
    }

    /** Somebody of ours stays at our address and names their rows. */
    private void byIds(Route route, Who who, Lived ours, Lived theirs) {
        List<String> parameters = route.parameters().stream()
                .filter(name -> reached.isRow(route, name))
                .toList();
        for (int at = 0; at < parameters.size(); at++) {
            String foreign = parameters.get(at);
            if (reached.of(theirs, route, foreign).isEmpty()) {
                wrong.add(route + " has a parameter " + foreign + " without a row to try it with");
                return;
            }
            int depth = at;
            String real = route.at(name -> value(route, name, parameters.indexOf(name), depth, ours, theirs, false));
            String none = route.at(name -> value(route, name, parameters.indexOf(name), depth, ours, theirs, true));
            same(route, who, real, none, route.isApi() && who.words().equals("owner"));
        }
    }

    private String value(Route route, String name, int index, int depth, Lived ours, Lived theirs, boolean nobodys) {
        if (name.equals("slug")) {
            return ours.shop().slug();
        }
        if (!reached.isRow(route, name)) {
            return name.equals("where") ? "homes" : name.equals("day") ? "2026-11-25" : "filter-check";
        }
        if (index < depth) {
            return reached.of(ours, route, name).orElseThrow();
        }
        return nobodys ? reached.nobodys(name) : reached.of(theirs, route, name).orElseThrow();
    }

    /** Nobody but its own people passes the door of a business; it answers like a business that is not there. */
    private void byBusiness(Route route, Who who, Lived theirs) {
        boolean customers = route.path().contains("/yours") || route.path().contains("/calendars");
        if (!route.path().contains("{slug}") || who.words().startsWith("their") || customers) {
            // That a business is there is no secret to customers: its name stands in every link.
            return;
        }
        String none = "none-" + UUID.randomUUID().toString().substring(0, 8);
        String real = inside(route, theirs, theirs.shop().slug());
        String nowhere = inside(route, theirs, none);
        Answer there = Caller.ask(who, route.method(), real, sent(route));
        Answer nothing = Caller.ask(who, route.method(), nowhere, sent(route));
        trials++;
        String one = there.blank().replace(theirs.shop().slug(), "#");
        String other = nothing.blank().replace(none, "#");
        if (!one.equals(other)) {
            wrong.add(who.words() + " " + route + ": " + brief(one) + " | " + brief(other));
        }
    }

    private String inside(Route route, Lived theirs, String slug) {
        return route.at(name -> name.equals("slug")
                ? slug
                : !reached.isRow(route, name)
                        ? (name.equals("where") ? "homes" : name.equals("day") ? "2026-11-25" : "filter-check")
                        : name.equals("secret")
                                ? reached.nobodys(name)
                                : reached.of(theirs, route, name).orElse("x"));
    }

    private void same(Route route, Who who, String real, String none, boolean notFound) {
        Answer theirs = Caller.ask(who, route.method(), real, sent(route));
        Answer nobodys = Caller.ask(who, route.method(), none, sent(route));
        trials++;
        if (theirs.status() >= 500 || !hide(theirs, real).equals(hide(nobodys, none))) {
            wrong.add(
                    who.words() + " " + route + ": " + brief(hide(theirs, real)) + " | " + brief(hide(nobodys, none)));
        } else if (notFound && theirs.status() != 404) {
            wrong.add(who.words() + " " + route + " says " + theirs.status() + " instead of 404");
        }
    }

    /** The answer without the words of the address that was asked. */
    private static String hide(Answer answer, String path) {
        String text = answer.blank();
        for (String word : path.split("[/.]")) {
            if (word.length() > 12) {
                text = text.replace(word, "#");
            }
        }
        return text;
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

    private static List<Who> people(Lived ours, Lived theirs) {
        return List.of(
                Who.member("owner", ours.shop().owner()),
                Who.member("office", ours.shop().office()),
                Who.member("technician", ours.shop().technician()),
                Who.customer("customer", ours.secret()),
                Who.member("their owner", theirs.shop().owner()),
                Who.NOBODY);
    }

    private static String brief(String answer) {
        String line = answer.replaceAll("\\s+", " ");
        return line.length() > 160 ? line.substring(0, 160) : line;
    }
}
