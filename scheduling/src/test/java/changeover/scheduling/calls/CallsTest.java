package changeover.scheduling.calls;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Window;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refused;
import changeover.scheduling.Shop;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.dayplan.DayPlan;
import changeover.scheduling.dayplan.DayPlans;
import changeover.scheduling.visits.Visit;
import changeover.scheduling.visits.Visits;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class CallsTest {

    /** 06:40 on the eleventh of January in Toronto. */
    private static final Instant RING = Instant.parse("2027-01-11T11:40:00Z");

    private static final LocalDate DAY = LocalDate.of(2027, 1, 11);

    @Inject
    Shop shop;

    @Inject
    Calls calls;

    @Inject
    CallLists lists;

    @Inject
    AnswerTimes times;

    @Inject
    Visits visits;

    @Inject
    Appointments appointments;

    @Inject
    DayPlans dayPlans;

    @Inject
    EntityManager rows;

    UUID tenant = UUID.randomUUID();
    UUID home = UUID.randomUUID();

    @BeforeEach
    void aHomeWithoutAPlan() {
        tenant = shop.open("CA-ON");
        home = shop.in(tenant, () -> shop.home("ON"));
    }

    private Call.Facts facts(Trouble trouble, Set<Risk> risks, boolean told) {
        return new Call.Facts(
                home,
                "Mara Quill",
                "555-0142",
                RING,
                trouble,
                "The furnace clicks and stops",
                Heat.NO,
                risks,
                told,
                null,
                Money.of("145.00", "CAD"),
                "the trip and the first hour");
    }

    private UUID take(Call.Facts facts) {
        return shop.in(tenant, () -> calls.take(UUID.randomUUID(), facts, RING.plusSeconds(60)))
                .id();
    }

    private String refused(Runnable deed) {
        return assertThrows(Refused.class, deed::run).first().code();
    }

    @Test
    void a_call_without_a_plan_becomes_a_visit_on_the_technicians_day() {
        UUID call = take(facts(Trouble.NO_HEAT, Set.of(Risk.INFANT), false));
        Call.Facts kept = shop.in(tenant, () -> calls.find(call).orElseThrow().facts());
        assertEquals(Set.of(Risk.INFANT), kept.risks());
        assertEquals(RING.plus(Duration.ofHours(12)), kept.promisedBy());
        assertEquals(Money.of("145.00", "CAD"), kept.told());
        UUID visit = shop.in(
                tenant,
                () -> calls.visit(call, 60, null, "Somebody has to look", RING)
                        .visitId()
                        .orElseThrow());
        Visit made = shop.in(tenant, () -> visits.find(visit).orElseThrow());
        assertEquals(Window.ofDay(DAY), made.window());
        assertEquals("call", made.kind().code());
        assertTrue(made.note().orElseThrow().contains("An infant lives there. The furnace clicks"));
        shop.in(
                tenant,
                () -> appointments.give(visit, new Appointments.Slot(Shop.TECHNICIAN, DAY, LocalTime.of(8, 0), null)));
        DayPlan day = shop.in(tenant, () -> dayPlans.of(Shop.TECHNICIAN, DAY));
        assertEquals(visit, day.stops().getFirst().visitId());
        CallLists.Row row = shop.in(tenant, () -> lists.waiting()).getFirst();
        assertEquals("Ida Roe", row.technician());
        assertTrue(row.waits());
        shop.in(tenant, () -> {
            visits.cancel(visit, DAY, "It works again");
            return 0;
        });
        assertEquals(List.of(), shop.in(tenant, () -> lists.waiting()));
        assertEquals(
                "cancelled", shop.in(tenant, () -> lists.over(0, 9)).getFirst().ended());
        assertEquals(1, shop.in(tenant, () -> lists.ofHome(home, 9)).size());
    }

    @Test
    void a_home_with_a_plan_is_answered_sooner_as_the_business_says() {
        UUID agreement = shop.in(tenant, () -> shop.sell(home, shop.plan().id(), DAY.minusDays(30)));
        shop.in(tenant, () -> {
            times.write(Map.of(new AnswerHours.Asked(Urgency.SOON, true), 5));
            times.write(Map.of(new AnswerHours.Asked(Urgency.SOON, true), 6));
            return 0;
        });
        UUID call = take(facts(Trouble.NO_HEAT, Set.of(), false));
        Call kept = shop.in(tenant, () -> calls.find(call).orElseThrow());
        assertEquals(agreement, kept.agreementId().orElseThrow());
        assertEquals(RING.plus(Duration.ofHours(6)), kept.promisedBy());
        assertEquals(
                "call.answer-hours",
                refused(() -> shop.in(tenant, () -> {
                    times.write(Map.of(new AnswerHours.Asked(Urgency.SOON, true), 0));
                    return 0;
                })));
    }

    @Test
    void nobody_is_written_down_before_they_are_told_to_leave() {
        for (Risk risk : List.of(Risk.ALARM, Risk.GAS, Risk.SYMPTOMS)) {
            assertEquals("call.life-first", refused(() -> take(facts(Trouble.OTHER, Set.of(risk), false))));
        }
        assertEquals("call.life-first", refused(() -> take(facts(Trouble.ALARM, Set.of(), false))));
        UUID call = take(facts(Trouble.ALARM, Set.of(), true));
        assertEquals(
                Set.of(Risk.ALARM),
                shop.in(tenant, () -> calls.find(call).orElseThrow().facts().risks()));
        take(facts(Trouble.NOISE, Set.of(Risk.AGE), false));
        assertEquals(
                List.of(Urgency.LIFE, Urgency.SOON).getFirst(),
                shop.in(tenant, () -> lists.waiting()).getFirst().urgency());
        assertEquals(new CallLists.Counts(2, 0), shop.in(tenant, () -> lists.counts(RING)));
        assertEquals(new CallLists.Counts(2, 2), shop.in(tenant, () -> lists.counts(RING.plus(Duration.ofDays(30)))));
    }

    @Test
    void the_same_call_is_taken_once_and_answered_once() {
        UUID id = UUID.randomUUID();
        for (int press = 0; press < 2; press++) {
            shop.in(tenant, () -> calls.take(id, facts(Trouble.NOISE, Set.of(), false), RING));
        }
        assertEquals(1, shop.in(tenant, () -> lists.waiting()).size());
        assertEquals("call.says-why", refused(() -> shop.in(tenant, () -> calls.advice(id, "  ", RING))));
        shop.in(tenant, () -> calls.advice(id, "The filter was in backwards", RING));
        assertEquals("call.answered", refused(() -> shop.in(tenant, () -> calls.nothing(id, "Twice", RING))));
        assertEquals("call.unknown", refused(() -> shop.in(tenant, () -> calls.nothing(UUID.randomUUID(), "x", RING))));
        assertFalse(shop.in(tenant, () -> lists.over(0, 9)).getFirst().waits());
    }

    @Test
    void what_was_said_never_changes_and_never_goes() {
        UUID call = take(facts(Trouble.NOISE, Set.of(), false));
        for (String sql : List.of("delete from call", "update call set caller = 'Nobody'")) {
            var failure = assertThrows(
                    Exception.class,
                    () -> shop.in(tenant, () -> rows.createNativeQuery(sql).executeUpdate()));
            assertTrue(
                    String.valueOf(failure.getMessage()).contains("permission denied")
                            || String.valueOf(failure.getCause()).contains("permission denied"),
                    failure.toString());
        }
        UUID other = shop.open("CA-QC");
        assertTrue(shop.in(other, () -> calls.find(call)).isEmpty());
        assertEquals(List.of(), shop.in(other, () -> lists.waiting()));
    }

    @Test
    void an_hour_to_come_and_a_promise_before_the_ring_are_refused() {
        assertEquals(
                "call.ahead",
                refused(() -> shop.in(
                        tenant,
                        () -> calls.take(
                                UUID.randomUUID(), facts(Trouble.NOISE, Set.of(), false), RING.minusSeconds(1)))));
        Call.Facts said = facts(Trouble.NOISE, Set.of(), false);
        var before = new Call.Facts(
                home,
                "Mara Quill",
                null,
                RING,
                Trouble.NOISE,
                "It hums",
                Heat.YES,
                Set.of(),
                false,
                RING.minusSeconds(1),
                null,
                null);
        assertEquals("call.promise-before-ring", refused(() -> take(before)));
        UUID call = take(said);
        assertEquals(
                "call.visit-in-the-past",
                refused(() -> shop.in(tenant, () -> calls.visit(call, 60, DAY.minusDays(1), "Look", RING))));
    }
}
