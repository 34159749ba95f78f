package changeover.web.roads;

import static changeover.web.AShop.as;
import static org.hamcrest.CoreMatchers.containsString;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Window;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Today;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import changeover.web.AShop;
import com.sun.net.httpserver.HttpServer;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The day's pages say when the table of roads has not answered, and use it when it has. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class RoadsOnPagesTest {

    private static final String TWENTY_MINUTES = "{\"code\": \"Ok\", \"durations\": [[0, 1200], [1200, 0]]}";

    @Inject
    AShop shops;

    @Inject
    Homes homes;

    @Inject
    Visits visits;

    @Inject
    Appointments appointments;

    @Inject
    Today today;

    @Inject
    EntityManager rows;

    @Inject
    RoadTable table;

    @AfterEach
    void noTable() {
        table.use(null, Duration.ofSeconds(3));
    }

    private LocalDate aDay(AShop.Shop shop, String north) {
        return shops.in(shop, () -> {
            LocalDate day = today.day()
                    .plusDays(7)
                    .datesUntil(today.day().plusDays(70))
                    .filter(one -> one.getDayOfWeek() == DayOfWeek.THURSDAY)
                    .findFirst()
                    .orElseThrow();
            given(shop, day, north + ".401", 9);
            given(shop, day, north + ".501", 13);
            return day;
        });
    }

    private void given(AShop.Shop shop, LocalDate day, String north, int hour) {
        UUID home = homes.add(Home.Facts.at("9 Tannery Row", "Port Ambrose", "QC", null, "CA"))
                .id();
        rows.flush();
        rows.createNativeQuery(
                        "update home set latitude = " + north + ", longitude = -71.9 where id = cast(:home as uuid)")
                .setParameter("home", home.toString())
                .executeUpdate();
        UUID visit = visits.make(new NewVisit(
                        home, null, VisitKind.EXTRA, Window.ofDay(day), 60, null, "look at the drain", List.of()))
                .id();
        appointments.give(visit, new Appointments.Slot(shop.technician(), day, LocalTime.of(hour, 0), null));
    }

    @Test
    void the_page_says_that_roads_are_as_the_crow_flies_until_the_table_has_answered() throws IOException {
        for (String language : List.of("en", "fr")) {
            var shop = shops.open("CA-QC", language);
            // Elsewhere for each language: what one business was answered is remembered for all.
            LocalDate day = aDay(shop, language.equals("fr") ? "46" : "45");
            String path = shop.at("season/" + day + "/order");
            String sentence = language.equals("fr") ? "à vol d’oiseau" : "as the crow flies";
            HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
            URI address = URI.create("http://127.0.0.1:" + server.getAddress().getPort());
            table.use(address, Duration.ofSeconds(3));
            as(shop.office()).get(path).then().statusCode(200).body(containsString(sentence));
            as(shop.office())
                    .get(shop.api("days/" + day + "/orders"))
                    .then()
                    .body("[0].roads", org.hamcrest.CoreMatchers.equalTo("crow_for_table"));
            server.createContext("/", asked -> {
                byte[] bytes = TWENTY_MINUTES.getBytes(StandardCharsets.UTF_8);
                asked.sendResponseHeaders(200, bytes.length);
                asked.getResponseBody().write(bytes);
                asked.close();
            });
            server.start();
            boolean answered = false;
            for (int look = 0; look < 200 && !answered; look++) {
                table.use(address, Duration.ofSeconds(3));
                String page = as(shop.office())
                        .get(path)
                        .then()
                        .statusCode(200)
                        .extract()
                        .asString();
                answered = !page.contains(sentence) && page.contains("20 min");
            }
            assertTrue(answered);
            server.stop(0);
        }
    }
}
