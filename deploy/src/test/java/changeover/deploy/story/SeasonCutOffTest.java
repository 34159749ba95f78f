package changeover.deploy.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.Examples;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.StreamSupport;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A season is planned over the API with one technician taken away; the application is killed with -9 in the middle of the
 * search. Started again by its watch it goes on from what was written down, names what cannot be kept and the days that
 * would, and gives every day once.
 */
@Tag("deep")
class SeasonCutOffTest {

    private static final Examples.Shop SHOP = Examples.KILN_LANE;

    /** So many visits more of each home at every try, until the search takes longer than one of its turns. */
    private static final int A_HOME = 14;

    private static final int TRIES = 5;
    private static final Duration LONGEST = Duration.ofMinutes(6);
    private static final ObjectMapper JSON = new ObjectMapper();

    private static Installed installed;
    private static String token;

    private final HttpClient http =
            HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(10)).build();

    @BeforeAll
    static void start() {
        installed = Installed.start(Path.of("target", "story", "cut-off"), "--demo");
        token = installed.admin("token", SHOP.people().getFirst().email());
    }

    @AfterAll
    static void stop() {
        installed.close();
    }

    @Test
    void what_was_killed_in_the_middle_goes_on_and_nothing_is_double() {
        JsonNode season = StreamSupport.stream(get("seasons").spliterator(), false)
                .filter(one -> one.get("code").asText().equals("cooling"))
                .findFirst()
                .orElseThrow();
        String runs = "seasons/" + season.get("id").asText() + "/plan-runs";
        String away = sql("select person_id from membership where role = 'technician' order by name limit 1");
        int before = number("select count(*) from appointment");

        String run = "";
        int rounds = 0;
        for (int tried = 0; rounds == 0 && tried < TRIES; tried++) {
            sql("insert into visit (home_id, kind, window_from, window_until, minutes) select h.id, 'extra', date '"
                    + season.get("opens").asText() + "', date '"
                    + season.get("closes").asText() + "' + 1, 45 from home h"
                    + " cross join generate_series(1, " + A_HOME + ")");
            run = post(runs, UUID.randomUUID(), "{\"without\": [\"" + away + "\"]}")
                    .get("id")
                    .asText();
            rounds = caughtInTheMiddle(runs + "/" + run);
        }
        assertTrue(rounds > 0, "every search was over before it could be cut off");
        installed.kill("application");
        JsonNode done = whenDone(runs + "/" + run);

        String of = " from season_run_step where run_id = '" + run + "'";
        assertEquals("t", sql("select bool_or(rounds <= " + rounds + ")" + of), "what was written before is there");
        assertEquals(
                "t",
                sql("select bool_and(rounds > earlier) from (select rounds, lag(rounds) over (order by made_at, id) as"
                        + " earlier" + of + ") s where earlier is not null"),
                "it went on from there");
        assertEquals(1, number("select count(*) from season_run_end where run_id = '" + run + "'"));
        int waiting = done.get("waiting").asInt();
        int kept = done.get("kept").size();
        int unkept = done.get("unkept").size();
        assertEquals(waiting, kept + unkept, "each visit has a day or a reason");
        assertEquals(
                waiting, number("select count(distinct visit_id) from season_run_visit where run_id = '" + run + "'"));
        assertEquals(unkept == 0, done.get("allKept").asBoolean());
        assertTrue(
                unkept == 0
                        || !done.get("moreDays").isEmpty()
                        || !done.get("moreTickets").isEmpty(),
                "what would keep the rest is named");
        assertEquals(
                0,
                number("select count(*) from season_run_visit where run_id = '" + run + "' and technician_id = '" + away
                        + "'"));
        assertEquals(before, number("select count(*) from appointment"), "planning gives no day");

        UUID yes = UUID.randomUUID();
        int given =
                post(runs + "/" + run + "/acceptance", yes, "{}").get("given").asInt();
        assertEquals(
                given,
                post(runs + "/" + run + "/acceptance", yes, "{}").get("given").asInt());
        assertEquals(kept, given);
        assertEquals(before + given, number("select count(*) from appointment"));
        assertEquals(0, number("select count(*) - count(distinct visit_id) from appointment"));
        assertEquals("check all ok", installed.admin("check"));
    }

    /** How many rounds were written down while it still ran; nought when it was over before anybody could look. */
    private int caughtInTheMiddle(String run) {
        Instant until = Instant.now().plus(LONGEST);
        while (Instant.now().isBefore(until)) {
            JsonNode standing = get(run);
            if (!standing.get("state").asText().equals("running")) {
                return 0;
            }
            if (standing.get("rounds").asInt() > 0) {
                return standing.get("rounds").asInt();
            }
            LockSupport.parkNanos(Duration.ofMillis(100).toNanos());
        }
        throw new AssertionError("the search never began");
    }

    private JsonNode whenDone(String run) {
        Instant until = Instant.now().plus(LONGEST);
        while (Instant.now().isBefore(until)) {
            JsonNode standing = answered(run, "GET", null, null);
            if (standing != null && standing.get("state").asText().equals("done")) {
                return standing;
            }
            LockSupport.parkNanos(Duration.ofSeconds(1).toNanos());
        }
        throw new AssertionError("the search did not go on");
    }

    private static String sql(String statement) {
        return installed.admin("sql", "--as", "app", "--business", SHOP.slug(), "-c", statement);
    }

    private static int number(String statement) {
        return Integer.parseInt(sql(statement));
    }

    private JsonNode get(String path) {
        JsonNode answer = answered(path, "GET", null, null);
        if (answer == null) {
            throw new AssertionError("no answer of " + path);
        }
        return answer;
    }

    private JsonNode post(String path, UUID operation, String body) {
        JsonNode answer = answered(path, "POST", operation, body);
        if (answer == null) {
            throw new AssertionError("no answer of " + path);
        }
        return answer;
    }

    /** Null while nobody answers. */
    private @Nullable JsonNode answered(String path, String method, @Nullable UUID operation, @Nullable String body) {
        HttpRequest.Builder request = HttpRequest.newBuilder(
                        URI.create(installed.url() + "/api/v1/" + SHOP.slug() + "/" + path))
                .timeout(Duration.ofMinutes(1))
                .header("Authorization", "Bearer " + token)
                .header("Content-Type", "application/json")
                .method(
                        method,
                        body == null ? HttpRequest.BodyPublishers.noBody() : HttpRequest.BodyPublishers.ofString(body));
        if (operation != null) {
            request.header("Operation-Id", operation.toString());
        }
        try {
            HttpResponse<String> answer = http.send(request.build(), HttpResponse.BodyHandlers.ofString());
            if (answer.statusCode() >= 500) {
                return null;
            }
            assertTrue(answer.statusCode() < 300, path + " " + answer.statusCode() + " " + answer.body());
            return JSON.readTree(answer.body());
        } catch (IOException nobody) {
            return null;
        } catch (InterruptedException cause) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(cause);
        }
    }
}
