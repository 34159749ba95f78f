package changeover.web.roads;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.scheduling.dayplan.routes.AsTheCrowFlies;
import changeover.scheduling.dayplan.routes.Drives;
import changeover.scheduling.dayplan.routes.Travel.Place;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A table of roads on this machine: one that answers, and every way in which one does not. */
class RoadTableTest {

    private static final List<Place> THREE =
            List.of(new Place(45.401, -71.901), new Place(45.415, -71.88), new Place(45.39, -71.95));

    private interface Answer {
        void to(HttpExchange asked) throws IOException;
    }

    private final CountDownLatch evening = new CountDownLatch(1);
    private final List<String> asked = new ArrayList<>();
    private final RoadTable table = new RoadTable();
    private HttpServer server;
    private Instant now = Instant.parse("2027-05-03T12:00:00Z");
    private Answer answer = RoadTableTest::minutes;

    @BeforeEach
    void aTableOfRoads() throws IOException {
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.setExecutor(Executors.newVirtualThreadPerTaskExecutor());
        server.createContext("/", exchange -> {
            synchronized (asked) {
                asked.add(exchange.getRequestURI().toString());
            }
            answer.to(exchange);
        });
        server.start();
        InstantSource source = () -> now;
        table.clock = source.withZone(ZoneOffset.UTC);
        table.use(address(), Duration.ofMillis(400));
    }

    @AfterEach
    void close() {
        evening.countDown();
        server.stop(0);
        table.stop();
    }

    private URI address() {
        return URI.create("http://127.0.0.1:" + server.getAddress().getPort());
    }

    /** A minute for every place further on in the question, half a second more. */
    private static void minutes(HttpExchange asked) throws IOException {
        String query = asked.getRequestURI().getQuery();
        List<Integer> sources = numbers(query, "sources");
        List<Integer> destinations = numbers(query, "destinations");
        say(
                asked,
                200,
                sources.stream()
                        .map(from -> destinations.stream()
                                .map(to -> String.valueOf(60 * Math.abs(to - from) + 0.5))
                                .collect(Collectors.joining(",", "[", "]")))
                        .collect(Collectors.joining(",", "{\"code\": \"Ok\", \"durations\": [", "]}")));
    }

    private static List<Integer> numbers(String query, String name) {
        return Arrays.stream(query.split("&"))
                .filter(part -> part.startsWith(name + "="))
                .flatMap(part -> Arrays.stream(part.substring(name.length() + 1).split(";")))
                .map(Integer::valueOf)
                .toList();
    }

    private static void say(HttpExchange asked, int status, String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        asked.sendResponseHeaders(status, bytes.length);
        asked.getResponseBody().write(bytes);
        asked.close();
    }

    private void check(Drives.By expected) {
        table.prepare(THREE);
        Drives drives = table.between(THREE);
        assertEquals(expected, drives.by());
        if (expected != Drives.By.TABLE) {
            assertEquals(AsTheCrowFlies.USUAL.between(THREE).seconds(0, 1), drives.seconds(0, 1));
        }
    }

    private void no(Answer other) {
        answer = other;
        now = now.plus(Duration.ofMinutes(2));
        int before = asked.size();
        check(Drives.By.CROW_FOR_TABLE);
        assertEquals(before + 1, asked.size(), "it was asked once and then left alone");
    }

    @Test
    void an_answer_is_used_and_remembered_for_a_day_also_for_fewer_places() {
        check(Drives.By.TABLE);
        Drives drives = table.between(THREE);
        // Sources stand before destinations in the question: the first place is the fourth of it.
        assertEquals(List.of(0, 241, 301), List.of(drives.seconds(0, 0), drives.seconds(0, 1), drives.seconds(0, 2)));
        assertEquals(1, asked.size());
        assertEquals(
                "/table/v1/driving/-71.90100,45.40100;-71.88000,45.41500;-71.95000,45.39000;-71.90100,45.40100;"
                        + "-71.88000,45.41500;-71.95000,45.39000?annotations=duration&sources=0;1;2&destinations=3;4;5",
                asked.getFirst());
        Drives fewer = table.between(List.of(THREE.get(2), THREE.get(0)));
        assertEquals(Drives.By.TABLE, fewer.by());
        assertEquals(drives.seconds(2, 0), fewer.seconds(0, 1));
        now = now.plus(Duration.ofHours(25));
        check(Drives.By.TABLE);
        assertEquals(2, asked.size());
    }

    @Test
    void many_places_are_asked_in_squares_and_put_together() {
        table.most = 4;
        List<Place> five = IntStream.range(0, 5)
                .mapToObj(at -> new Place(45.4 + at / 100.0, -71.9))
                .toList();
        table.prepare(five);
        assertEquals(9, asked.size());
        Drives drives = table.between(five);
        assertEquals(Drives.By.TABLE, drives.by());
        // The last place alone is both source and destination of the last square.
        assertEquals(0, drives.seconds(4, 4));
        assertEquals(121, drives.seconds(0, 2));
    }

    @Test
    void what_is_late_broken_or_of_another_size_is_no_answer() {
        no(slow -> await());
        no(asked -> say(asked, 500, "{}"));
        no(asked -> say(asked, 200, "{\"code\": \"NoTable\"}"));
        no(asked -> say(asked, 200, "{\"code\": \"Ok\", \"durations\": [[0"));
        no(asked -> say(asked, 200, "<html>"));
        no(asked -> say(asked, 200, ""));
        no(asked -> say(asked, 200, "{\"code\": \"Ok\", \"durations\": [[0, 1], [1, 0]]}"));
        no(asked -> say(asked, 200, "{\"code\": \"Ok\", \"durations\": [[0, 1, 2], [1, 0], [2, 1, 0]]}"));
        no(asked -> say(asked, 200, "{\"code\": \"Ok\", \"durations\": [[0, 1, 2], [1, 0, 3], [2, -1, 0]]}"));
        no(asked -> say(asked, 200, "{\"code\": \"Ok\", \"durations\": [[0, 1, 2], [1, 0, 3], [2, \"x\", 0]]}"));
        no(asked -> say(asked, 200, " ".repeat(9 * 1024 * 1024)));
        no(asked -> {
            asked.getResponseHeaders().add("Location", address().toString());
            say(asked, 302, "");
        });
        no(asked -> {
            // It begins to answer, and never ends.
            asked.sendResponseHeaders(200, 0);
            asked.getResponseBody().write('{');
            asked.getResponseBody().flush();
            await();
        });
        answer = RoadTableTest::minutes;
        check(Drives.By.CROW_FOR_TABLE);
        now = now.plus(Duration.ofMinutes(2));
        check(Drives.By.TABLE);
    }

    private void await() {
        try {
            evening.await();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    @Test
    void where_there_is_no_road_it_is_reckoned_as_the_crow_flies() {
        answer = asked -> say(asked, 200, "{\"code\": \"Ok\", \"durations\": [[0, null, 2], [null, 0, 3], [2, 3, 0]]}");
        check(Drives.By.TABLE);
        Drives drives = table.between(THREE);
        assertEquals(AsTheCrowFlies.USUAL.between(THREE).seconds(0, 1), drives.seconds(0, 1));
        assertEquals(2, drives.seconds(0, 2));
    }

    @Test
    void without_a_table_and_with_one_that_is_not_there_the_crow_flies() {
        table.use(null, Duration.ofMillis(400));
        check(Drives.By.CROW);
        URI gone = address();
        server.stop(0);
        table.use(gone, Duration.ofMillis(400));
        check(Drives.By.CROW_FOR_TABLE);
    }
}
