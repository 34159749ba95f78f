package changeover.scheduling.recounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.CatalogueJson;
import changeover.contracts.catalogue.Task;
import changeover.contracts.catalogue.TicketNeeded;
import changeover.contracts.catalogue.Who;
import changeover.contracts.money.Money;
import changeover.contracts.plans.Plan;
import changeover.contracts.plans.PlanFacts;
import changeover.contracts.plans.Plans;
import changeover.contracts.tenants.SettableClock;
import changeover.contracts.words.Wording;
import changeover.scheduling.Shop;
import changeover.scheduling.closeout.CloseOut;
import changeover.scheduling.closeout.Operation;
import changeover.scheduling.closeout.OperationAnswer;
import changeover.scheduling.closeout.Outcome;
import changeover.scheduling.closeout.SentOperation;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import changeover.scheduling.visits.YearOfHome;
import changeover.scheduling.visits.YearsOfHomes;
import changeover.scheduling.visits.YearsRecounted;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A belt every three months and a changeover each season: what closing a visit early or late does to the rest of the year. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class DoneEarlyTest {

    private static final LocalDate SOLD = LocalDate.of(2026, 1, 5);

    @Inject
    Shop shop;

    @Inject
    SettableClock clock;

    @Inject
    Plans plans;

    @Inject
    Visits visits;

    @Inject
    Appointments appointments;

    @Inject
    CloseOut closeOut;

    @Inject
    YearsOfHomes years;

    @Inject
    YearsRecounted again;

    @Inject
    EntityManager rows;

    private record At(UUID tenant, UUID home) {}

    @AfterEach
    void theRealDayAgain() {
        clock.reset();
    }

    private At sold() {
        clock.setDay(SOLD);
        UUID tenant = shop.open("CA-ON");
        return shop.in(tenant, () -> {
            rows.createNativeQuery("insert into own_task (code, body) values ('belt', cast(:body as jsonb))")
                    .setParameter("body", CatalogueJson.write(belt()))
                    .executeUpdate();
            Plan plan = plans.draft(new PlanFacts(
                    "belts",
                    new Wording("Belts", "Courroies"),
                    4,
                    Money.of("249.00", "CAD"),
                    BigDecimal.ZERO,
                    1,
                    0,
                    false,
                    List.of(new PlanFacts.Promise("belt", null), new PlanFacts.Promise("test-heat", null)),
                    List.of(),
                    List.of()));
            plan.putOnSale(Shop.OPENED);
            plans.keep();
            UUID home = shop.home("ON");
            shop.sell(home, plan.id(), SOLD);
            return new At(tenant, home);
        });
    }

    private static Task belt() {
        return new Task(
                "belt",
                List.of("test-pump"),
                Map.of(),
                new Wording("Tighten the belt", "Tendre la courroie"),
                Who.TECHNICIAN,
                TicketNeeded.NONE,
                20,
                new Cadence.EveryMonths(3, 2, 4),
                null,
                List.of(),
                List.of(),
                null,
                Task.COMMON_PRACTICE,
                null);
    }

    private YearOfHome year(At at) {
        return shop.in(at.tenant, () -> years.of(at.home, new Window(SOLD, SOLD.plusMonths(18)), SOLD));
    }

    /** Each open visit by its days and tasks, then what no visit keeps. */
    private List<String> ahead(At at) {
        YearOfHome year = year(at);
        List<String> said = new ArrayList<>();
        year.visits().stream()
                .filter(visit -> visit.standing() != YearOfHome.Standing.CLOSED)
                .forEach(visit -> said.add(visit.window().from() + ".."
                        + visit.window().last() + " "
                        + visit.tasks().stream().map(YearOfHome.Line::taskCode).collect(Collectors.joining(" "))));
        year.unkept()
                .forEach(one -> said.add("not " + one.taskCode() + " "
                        + one.window().from() + ".." + one.window().last()));
        return said;
    }

    /** Closes a visit on a day with all its lines done. */
    @SuppressWarnings("unchecked")
    private void close(At at, UUID visit, LocalDate day) {
        clock.setDay(day);
        Instant noon = day.atTime(LocalTime.of(15, 0)).toInstant(ZoneOffset.UTC);
        List<UUID> lines = shop.in(
                at.tenant,
                () -> rows.createNativeQuery("select id from visit_task where visit_id = :visit", UUID.class)
                        .setParameter("visit", visit)
                        .getResultList());
        List<Operation> said = new ArrayList<>();
        said.add(new Operation.Arrive());
        lines.forEach(line -> said.add(new Operation.TaskAnswered(line, Outcome.DONE, null)));
        said.add(new Operation.MinutesTold(30, 0, null));
        said.add(new Operation.Received("Mara Quill", null));
        said.add(new Operation.Leave());
        said.add(new Operation.Close(null));
        List<SentOperation> sent = new ArrayList<>();
        for (Operation operation : said) {
            sent.add(SentOperation.of(
                    UUID.randomUUID(), "phone", sent.size() + 1, noon.plusSeconds(sent.size()), operation));
        }
        List<OperationAnswer> answers = shop.in(at.tenant, () -> closeOut.apply(visit, sent, Shop.TECHNICIAN));
        assertEquals(
                List.of(),
                answers.stream().flatMap(answer -> answer.refusals().stream()).toList());
    }

    /** A visit that somebody asked for beside the plan, with the belt. */
    private UUID askedFor(At at, LocalDate day) {
        return shop.in(at.tenant, () -> {
            UUID pump = (UUID) rows.createNativeQuery(
                            "select id from equipment where home_id = :home and kind = 'test-pump'", UUID.class)
                    .setParameter("home", at.home)
                    .getSingleResult();
            return visits.make(new NewVisit(
                            at.home,
                            null,
                            VisitKind.EXTRA,
                            Window.ofDay(day),
                            20,
                            null,
                            "It squeals",
                            List.of(new NewVisit.NewTask(pump, "belt", new Wording("squeals", "grince")))))
                    .id();
        });
    }

    @Test
    void as_it_is_sold_the_belt_is_due_four_times_and_the_changeover_once() {
        assertEquals(
                List.of(
                        "2026-01-05..2026-04-04 belt",
                        "2026-04-05..2026-05-05 belt",
                        "2026-06-05..2026-08-05 belt",
                        "2026-09-05..2026-11-05 belt test-heat"),
                ahead(sold()));
    }

    @Test
    void done_early_at_its_visit_the_belts_after_it_come_earlier_and_the_changeover_stays() {
        At at = sold();
        close(at, year(at).visits().getFirst().visitId(), LocalDate.of(2026, 1, 20));
        assertEquals(
                List.of(
                        "2026-03-20..2026-05-20 belt",
                        "2026-06-20..2026-08-20 belt",
                        "2026-09-20..2026-11-15 belt test-heat"),
                ahead(at));
        assertTrue(
                year(at).visits().get(1).tasks().getFirst().reason().en().contains("last done 20\u00a0January 2026"));
    }

    @Test
    void done_at_a_visit_that_somebody_asked_for_it_counts_too_and_a_day_that_was_given_stays() {
        At at = sold();
        close(at, year(at).visits().getFirst().visitId(), LocalDate.of(2026, 4, 4));
        UUID summer = year(at).visits().stream()
                .filter(visit -> visit.window().contains(LocalDate.of(2026, 7, 7)))
                .findFirst()
                .orElseThrow()
                .visitId();
        shop.in(at.tenant, () -> {
            appointments.give(
                    summer, new Appointments.Slot(Shop.TECHNICIAN, LocalDate.of(2026, 7, 7), LocalTime.of(9, 0), null));
            return 0;
        });
        UUID asked = askedFor(at, LocalDate.of(2026, 5, 4));
        close(at, asked, LocalDate.of(2026, 5, 4));
        YearOfHome year = year(at);
        assertEquals(
                LocalDate.of(2026, 7, 7),
                year.visits().stream()
                        .filter(visit -> visit.visitId().equals(summer))
                        .findFirst()
                        .orElseThrow()
                        .day());
        assertEquals(
                "belt",
                year.visits().stream()
                        .filter(visit -> visit.visitId().equals(summer))
                        .findFirst()
                        .orElseThrow()
                        .tasks()
                        .getFirst()
                        .taskCode());
        assertTrue(
                ahead(at).contains("2026-09-07..2026-11-07 belt test-heat"),
                ahead(at).toString());
        assertEquals(
                2, ahead(at).stream().filter(visit -> visit.contains("belt")).count());
    }

    @Test
    void closed_again_by_an_amendment_or_sent_twice_nothing_more_moves() {
        At at = sold();
        UUID first = year(at).visits().getFirst().visitId();
        close(at, first, LocalDate.of(2026, 1, 20));
        List<String> before = ahead(at);
        shop.in(at.tenant, () -> {
            again.follow(first);
            return 0;
        });
        assertEquals(before, ahead(at));
    }
}
