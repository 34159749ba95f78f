package changeover.scheduling.recounts;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
import changeover.scheduling.closeout.Amendments;
import changeover.scheduling.closeout.CloseOut;
import changeover.scheduling.closeout.Operation;
import changeover.scheduling.closeout.OperationAnswer;
import changeover.scheduling.closeout.Outcome;
import changeover.scheduling.closeout.SentOperation;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.partners.Licensed;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import changeover.scheduling.visits.YearOfHome;
import changeover.scheduling.visits.YearsOfHomes;
import changeover.scheduling.visits.YearsRecounted;
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
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;

/** A home with a belt every three months and a changeover each season, and visits closed there: for the tests of what moves. */
abstract class SoldBelts {

    static final LocalDate SOLD = LocalDate.of(2026, 1, 5);

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
    Amendments amendments;

    @Inject
    YearsOfHomes years;

    @Inject
    YearsRecounted again;

    @Inject
    Licensed licensed;

    @Inject
    EntityManager rows;

    record At(UUID tenant, UUID home) {}

    @AfterEach
    void theRealDayAgain() {
        clock.reset();
    }

    At sold() {
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

    YearOfHome year(At at) {
        return shop.in(at.tenant, () -> years.of(at.home, new Window(SOLD, SOLD.plusMonths(18)), SOLD));
    }

    /** Each open visit by its days and tasks, then what no visit keeps. */
    List<String> ahead(At at) {
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

    /** Somebody is there, so that the visit's work stays with it. */
    void begin(At at, UUID visit, LocalDate day) {
        clock.setDay(day);
        Instant before = day.atTime(LocalTime.of(14, 0)).toInstant(ZoneOffset.UTC);
        shop.in(
                at.tenant,
                () -> closeOut.apply(
                        visit,
                        List.of(SentOperation.of(
                                UUID.randomUUID(), "phone", 1, before, new Operation.MinutesTold(5, 0, null))),
                        Shop.TECHNICIAN));
    }

    /** Closes a visit on a day with all its lines done. */
    @SuppressWarnings("unchecked")
    void close(At at, UUID visit, LocalDate day) {
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

    /** What was said of every line of a closed visit is corrected. */
    @SuppressWarnings("unchecked")
    void amend(At at, UUID visit, Outcome outcome, @Nullable String words) {
        shop.in(at.tenant, () -> {
            List<UUID> lines = rows.createNativeQuery("select id from visit_task where visit_id = :visit", UUID.class)
                    .setParameter("visit", visit)
                    .getResultList();
            List<SentOperation> corrections = lines.stream()
                    .map(line -> SentOperation.of(
                            UUID.randomUUID(),
                            "office",
                            1,
                            clock.instant(),
                            new Operation.TaskAnswered(line, outcome, words)))
                    .toList();
            return amendments.amend(UUID.randomUUID(), visit, "typed wrong", corrections, Shop.TECHNICIAN);
        });
    }

    /** A visit that somebody asked for beside the plan, with the belt. */
    UUID askedFor(At at, LocalDate day) {
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
}
