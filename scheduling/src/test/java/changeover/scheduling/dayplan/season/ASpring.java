package changeover.scheduling.dayplan.season;

import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.calendar.OwnSeason;
import changeover.contracts.calendar.Seasons;
import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Role;
import changeover.scheduling.Shop;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.dayplan.DayPlans;
import changeover.scheduling.dayplan.Needs;
import changeover.scheduling.dayplan.SecondHands;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;

/** A shop with two technicians in the spring of 2027, and what the tests of its season ask it. */
abstract class ASpring {

    static final LocalDate MONDAY = LocalDate.of(2027, 5, 3);
    static final UUID SECOND = new UUID(7, 8);

    @Inject
    Shop shop;

    @Inject
    Seasons seasons;

    @Inject
    Visits visits;

    @Inject
    People people;

    @Inject
    Needs needs;

    @Inject
    SecondHands seconds;

    @Inject
    Appointments appointments;

    @Inject
    DayPlans days;

    @Inject
    SeasonRuns runs;

    @Inject
    SeasonAcceptance acceptance;

    @Inject
    SeasonRunReading reading;

    @Inject
    SeasonWork work;

    UUID tenant = UUID.randomUUID();
    UUID home = UUID.randomUUID();
    UUID season = UUID.randomUUID();
    Window spring = Window.ofDay(MONDAY);

    @BeforeEach
    void aShopInSpring() {
        tenant = shop.open("CA-ON");
        shop.in(tenant, () -> {
            people.add(Membership.begin(SECOND, "Ben Roe", "ben@example.com", "en", Role.TECHNICIAN));
            home = shop.unread("ON");
            OwnSeason cooling = seasons.all().stream()
                    .filter(one -> one.season().code().equals("cooling"))
                    .findFirst()
                    .orElseThrow();
            season = cooling.id();
            spring = cooling.season().opening(2027);
            return home;
        });
    }

    List<UUID> waiting(int count, Window window, int minutes) {
        return shop.in(
                tenant,
                () -> IntStream.range(0, count)
                        .mapToObj(_ -> visits.make(new NewVisit(
                                        home,
                                        null,
                                        VisitKind.EXTRA,
                                        window,
                                        minutes,
                                        null,
                                        "look at the drain",
                                        List.of()))
                                .id())
                        .toList());
    }

    SeasonQuestion question(Set<UUID> without) {
        return new SeasonQuestion(season, spring, MONDAY, without, 0, null, Set.of(), Set.of());
    }

    UUID planned(SeasonQuestion asked) {
        UUID run = shop.in(tenant, () -> runs.start(asked));
        while (work.turn(tenant)) {
            assertTrue(shop.in(tenant, () -> runs.find(run)).isPresent());
        }
        return run;
    }

    SeasonRun run(UUID id) {
        return shop.in(tenant, () -> runs.find(id)).orElseThrow();
    }

    long given() {
        return shop.in(tenant, () -> days.of(MONDAY)).stream()
                        .mapToLong(day -> day.stops().size())
                        .sum()
                + shop.in(tenant, () -> days.of(MONDAY.plusDays(1))).stream()
                        .mapToLong(day -> day.stops().size())
                        .sum();
    }
}
