package changeover.web.walls;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.web.walls.ALivedInShop.Lived;
import changeover.web.walls.Caller.Answer;
import changeover.web.walls.Caller.Sent;
import changeover.web.walls.Caller.Who;
import changeover.web.walls.Routes.Route;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.TextNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whatever is sent to the API: nothing breaks, and what is not done is said in a sentence, as a problem document. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class HostileDocumentsTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final boolean DEEP = Boolean.getBoolean("changeover.deep");
    private static final int VALUES = DEEP ? 50 : 2;
    private static final int MEMBERS = DEEP ? Integer.MAX_VALUE : 5;

    /** What stands in the place of a text. */
    private static final List<String> OTHER_TYPES =
            List.of("null", "true", "[]", "{}", "[[[[1]]]]", "1e99999", "-1", "99999999999999999999", "0.1", "[\"a\"]");

    private static final List<String> WHOLE = List.of(
            "",
            "null",
            "[]",
            "\"text\"",
            "{",
            "{\"a\":1,}",
            "<home/>",
            "[".repeat(20_000),
            "{\"a\":".repeat(5_000),
            "{\"\\u0000\":1}",
            "{\"a\":\"\\ud800\"}",
            "\u0000");

    private static final List<String> INSIDE =
            List.of("\tat ", "Exception", "jakarta.", "org.hibernate", "java.lang", "com.fasterxml", "SQLSTATE");

    @Inject
    ALivedInShop shops;

    @Inject
    Routes routes;

    @Inject
    Reached reached;

    @Inject
    Named named;

    private final List<String> wrong = new ArrayList<>();
    private int sent;

    @Test
    void nothing_that_is_sent_breaks_anything() throws JsonProcessingException {
        long seed = Long.getLong("changeover.seed", DEEP ? System.nanoTime() : 20_261_125);
        var random = new Random(seed);
        Lived lived = shops.open("CA-QC", "en");
        Who owner = Who.member("owner", lived.shop().owner());
        for (Route route : routes.all()) {
            if (route.isApi() && !route.method().equals("GET")) {
                String path = route.at(name -> name.equals("slug")
                        ? lived.shop().slug()
                        : reached.of(lived, route, name).orElse("none"));
                whole(owner, route, path, random);
                if (route.takes().isEmpty()) {
                    members(owner, route, path, lived, random);
                }
            }
        }
        questions(owner, lived, random);
        System.out.println("walls: documents sent=" + sent + " seed=" + seed);
        assertEquals(List.of(), wrong);
        assertTrue(sent > 200, "sent: " + sent);
    }

    private void whole(Who owner, Route route, String path, Random random) {
        var texts = new ArrayList<>(WHOLE);
        Collections.shuffle(texts, random);
        for (String text : DEEP ? texts : texts.subList(0, 3)) {
            String type = route.takes().isEmpty() ? "application/json" : route.takes();
            judge(route + " of " + brief(text), Caller.ask(owner, route.method(), path, new Sent(type, text)));
        }
    }

    private void members(Who owner, Route route, String path, Lived lived, Random random)
            throws JsonProcessingException {
        Learned learned = Learned.by(
                owner,
                route.method(),
                path,
                name -> named.of(name, lived.shop().tenant()).orElse(""));
        var members = new ArrayList<>(learned.kinds().keySet());
        Collections.shuffle(members, random);
        for (String member : members.subList(0, Math.min(MEMBERS, members.size()))) {
            var values = new ArrayList<JsonNode>();
            HostileWords.some(VALUES, random).forEach(text -> values.add(new TextNode(text)));
            for (String other : DEEP ? OTHER_TYPES : List.of(OTHER_TYPES.get(random.nextInt(OTHER_TYPES.size())))) {
                values.add(JSON.readTree(other));
            }
            for (JsonNode value : values) {
                String document = learned.with(member, value);
                judge(
                        route + " " + member + "=" + brief(value.toString()),
                        Caller.ask(owner, route.method(), path, Sent.json(document)));
            }
        }
    }

    /** Every word behind a question mark that the API's own description names. */
    private void questions(Who owner, Lived lived, Random random) throws JsonProcessingException {
        JsonNode paths = JSON.readTree(
                        Caller.get(Who.NOBODY, "/q/openapi?format=json").body())
                .path("paths");
        for (var one : paths.properties()) {
            for (JsonNode parameter : one.getValue().path("get").path("parameters")) {
                if (one.getKey().startsWith("/api/")
                        && parameter.path("in").asText().equals("query")) {
                    Route route = new Route("GET", one.getKey(), "");
                    String path = route.at(name -> name.equals("slug")
                            ? lived.shop().slug()
                            : reached.of(lived, route, name).orElse("none"));
                    String name = parameter.path("name").asText();
                    for (String value : HostileWords.some(VALUES, random)) {
                        String shortened = value.length() > 3000 ? value.substring(0, 3000) : value;
                        judge(
                                route + "?" + name + "=" + brief(value),
                                Caller.get(owner, path + "?" + name + "=" + Caller.encoded(shortened)));
                    }
                }
            }
        }
    }

    private void judge(String at, Answer answer) {
        sent++;
        if (answer.status() >= 500) {
            wrong.add(at + ": " + answer.status());
            return;
        }
        if (answer.status() >= 400) {
            String sentence = sentence(answer);
            if (!answer.type().startsWith("application/problem+json")
                    || !sentence.strip().contains(" ")) {
                wrong.add(at + ": " + answer.status() + " without a sentence: " + brief(answer.body()));
            }
            INSIDE.stream().filter(answer.body()::contains).forEach(inside -> wrong.add(at + " tells " + inside));
        }
    }

    private static String sentence(Answer answer) {
        try {
            return JSON.readTree(answer.body()).path("refusal").asText();
        } catch (JsonProcessingException notJson) {
            return "";
        }
    }

    private static String brief(String text) {
        String line = text.replaceAll("[\\s\\p{Cntrl}]+", " ");
        return line.length() > 70 ? line.substring(0, 60) + "… (" + text.length() + ")" : line;
    }
}
