package changeover.web.api;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.hasItem;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.Today;
import changeover.web.AShop;
import changeover.web.AShop.Shop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A program lays on call in turns: by the week, by the day, past those who are gone, and never of nobody. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class OnCallRoundsApiTest {

    @Inject
    AShop shops;

    @Inject
    Today today;

    private LocalDate today(Shop shop) {
        return shops.in(shop, () -> today.day());
    }

    private static Map<String, Object> round(Object order, String span, LocalDate from, LocalDate last) {
        return new HashMap<>(Map.of("order", order, "span", span, "from", from.toString(), "last", last.toString()));
    }

    private static List<String> of(UUID... people) {
        return Stream.of(people).map(UUID::toString).toList();
    }

    private static void saysTurns(ValidatableResponse answer, List<String> people, List<LocalDate> firsts) {
        List<Map<String, String>> turns = answer.statusCode(200).extract().path("");
        assertEquals(people, turns.stream().map(turn -> turn.get("person")).toList());
        assertEquals(
                firsts.stream().map(LocalDate::toString).toList(),
                turns.stream().map(turn -> turn.get("first")).toList());
    }

    private static List<String> standing(Shop shop) {
        return as(shop.office())
                .get(shop.api("on-call"))
                .then()
                .statusCode(200)
                .extract()
                .path("person");
    }

    @Test
    void turns_go_round_by_the_week_once() {
        Shop shop = shops.open("CA-QC", "fr");
        LocalDate day = today(shop);
        var answer = Sending.twice(
                shop.office(),
                shop.api("on-call-rounds"),
                round(of(shop.technician(), shop.office()), "week", day, day.plusDays(17)));
        List<String> people = of(shop.technician(), shop.office(), shop.technician());
        saysTurns(answer, people, List.of(day, day.plusDays(7), day.plusDays(14)));
        assertEquals(day.plusDays(17).toString(), answer.extract().path("[2].last"), "the last turn is cut");
        assertEquals(people, standing(shop));
    }

    @Test
    void turns_go_round_by_the_day_and_a_day_that_has_somebody_stays_theirs() {
        Shop shop = shops.open("CA-ON", "en");
        LocalDate day = today(shop);
        send(
                        shop.office(),
                        shop.api("on-call"),
                        Map.of(
                                "person", shop.owner().toString(),
                                "from", day.plusDays(1).toString(),
                                "last", day.plusDays(1).toString()))
                .statusCode(201);
        saysTurns(
                send(
                        shop.office(),
                        shop.api("on-call-rounds"),
                        round(of(shop.technician(), shop.office()), "day", day, day.plusDays(3))),
                of(shop.technician(), shop.office(), shop.technician()),
                List.of(day, day.plusDays(2), day.plusDays(3)));
        assertEquals(of(shop.technician(), shop.owner(), shop.office(), shop.technician()), standing(shop));
        send(shop.office(), shop.api("on-call-rounds"), round(of(shop.technician()), "day", day, day.plusDays(3)))
                .statusCode(422)
                .body("refusals.code", hasItem("on-call.all-taken"));
    }

    @Test
    void whoever_is_gone_by_then_is_passed_over_and_days_of_nobody_are_said() {
        Shop shop = shops.open("CA-QC", "en");
        LocalDate day = today(shop);
        send(
                        shop.owner(),
                        shop.api("people/" + shop.technician() + "/ending"),
                        Map.of("day", day.plusDays(8).toString()))
                .statusCode(200);
        saysTurns(
                send(
                        shop.office(),
                        shop.api("on-call-rounds"),
                        round(of(shop.technician(), shop.office()), "week", day, day.plusDays(20))),
                of(shop.technician(), shop.office(), shop.office()),
                List.of(day, day.plusDays(7), day.plusDays(14)));
        LocalDate later = day.plusDays(21);
        send(shop.office(), shop.api("on-call-rounds"), round(of(shop.technician()), "week", later, later.plusDays(6)))
                .statusCode(422)
                .body("refusals.code", hasItem("on-call.nobody"));

        Shop other = shops.open("CA-QC", "en");
        send(
                        other.owner(),
                        other.api("people/" + other.technician() + "/ending"),
                        Map.of("day", day.plusDays(8).toString()))
                .statusCode(200);
        saysTurns(
                send(
                        other.office(),
                        other.api("on-call-rounds"),
                        round(of(other.technician()), "week", day, day.plusDays(20))),
                Arrays.asList(other.technician().toString(), null, null),
                List.of(day, day.plusDays(7), day.plusDays(14)));
        assertEquals(of(other.technician()), standing(other));
    }

    @Test
    void a_round_of_nobody_or_of_what_is_nobody_writes_nothing() {
        Shop shop = shops.open("CA-QC", "en");
        Shop other = shops.open("CA-QC", "en");
        LocalDate day = today(shop);
        LocalDate last = day.plusDays(6);
        refused(shop, round(List.of(), "week", day, last), "on-call.round-of-nobody");
        refused(shop, round(shop.office().toString(), "week", day, last), "typed.list-of-texts");
        refused(shop, round(List.of(7), "week", day, last), "typed.list-of-texts");
        refused(shop, round(List.of("Mika"), "week", day, last), "typed.id");
        refused(shop, round(of(UUID.randomUUID()), "week", day, last), "on-call.nobody");
        refused(shop, round(of(other.office()), "week", day, last), "on-call.nobody");
        List<String> crowd = Collections.nCopies(51, shop.office().toString());
        refused(shop, round(crowd, "week", day, last), "on-call.round-of-too-many");
        refused(shop, round(of(shop.office()), "month", day, last), "typed.one-of");
        refused(shop, round(of(shop.office()), "week", day, day.minusDays(1)), "visit.last-before-first");
        refused(shop, round(of(shop.office()), "week", day, day.plusDays(367)), "on-call.round-too-long");
        send(shop.technician(), shop.api("on-call-rounds"), round(of(shop.technician()), "week", day, last))
                .statusCode(404);
        assertEquals(List.of(), standing(shop));
    }

    private static void refused(Shop shop, Map<String, Object> round, String code) {
        send(shop.office(), shop.api("on-call-rounds"), round).statusCode(422).body("refusals.code", hasItem(code));
    }
}
