package changeover.scheduling.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.calendar.Climate;
import changeover.contracts.calendar.Term;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.Due;
import changeover.contracts.catalogue.History;
import changeover.contracts.catalogue.LongestVisit;
import changeover.contracts.catalogue.SeasonRules;
import changeover.contracts.catalogue.Who;
import changeover.contracts.customers.ShutTimes;
import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What is owed at a home that is shut for some time; every answer counted by hand on a calendar. */
class OpenDaysTest {

    private static final UUID MACHINE = new UUID(1, 1);

    /** @param until the day on which it is open again; null while nobody knows */
    private static Window shut(String from, @Nullable String until) {
        return ShutTimes.time(LocalDate.parse(from), until == null ? null : LocalDate.parse(until));
    }

    private static Promise promise(String first, String last, String on) {
        return new Promise(
                MACHINE,
                "belt",
                Who.TECHNICIAN,
                30,
                new Due(Window.ofDays(LocalDate.parse(first), LocalDate.parse(last)), LocalDate.parse(on), Due.Act.DO),
                new Wording("Once a year.", "Une fois par année."));
    }

    private static void check(Promise promise, String expected, String en, String fr, Window... times) {
        Promise open = OpenDays.of(promise, new ShutTimes(Arrays.asList(times)));
        assertEquals(
                expected,
                open.window().from() + ".." + open.window().last() + " on "
                        + open.due().on());
        assertEquals("Once a year." + en, open.reason().en().replace('\u00a0', ' '));
        assertEquals("Une fois par année." + fr, open.reason().fr().replace('\u00a0', ' '));
    }

    private static final Promise SPRING = promise("2027-03-01", "2027-04-30", "2027-03-15");

    @Test
    void shutAtItsBeginningItBeginsWhenTheHomeOpens() {
        check(
                SPRING,
                "2027-04-03..2027-04-30 on 2027-04-03",
                " The home opens again on 3 April 2027.",
                " La maison rouvre le 3 avril 2027.",
                shut("2026-11-01", "2027-04-03"));
    }

    @Test
    void shutAtItsEndItEndsTheDayBefore() {
        check(
                SPRING,
                "2027-03-01..2027-04-15 on 2027-03-15",
                " The home is shut from 16 April 2027.",
                " La maison est fermée à partir du 16 avril 2027.",
                shut("2027-04-16", "2027-05-20"));
        check(
                SPRING,
                "2027-03-01..2027-03-09 on 2027-03-09",
                " The home is shut from 10 March 2027.",
                " La maison est fermée à partir du 10 mars 2027.",
                shut("2027-03-10", null));
    }

    @Test
    void shutInItsMiddleItKeepsTheLongerPart() {
        check(
                SPRING,
                "2027-03-25..2027-04-30 on 2027-03-25",
                " The home opens again on 25 March 2027.",
                " La maison rouvre le 25 mars 2027.",
                shut("2027-03-20", "2027-03-25"));
        check(
                SPRING,
                "2027-03-05..2027-04-19 on 2027-03-15",
                " The home opens again on 5 March 2027 and is shut from 20 April 2027.",
                " La maison rouvre le 5 mars 2027 et est fermée à partir du 20 avril 2027.",
                shut("2027-02-01", "2027-03-05"),
                shut("2027-04-20", null));
    }

    @Test
    void shutThroughoutOrNeverItStaysAsItIs() {
        for (Window time : List.of(
                shut("2027-03-01", "2027-05-01"),
                shut("2026-01-01", null),
                shut("2027-05-01", null),
                shut("2027-02-01", "2027-03-01"))) {
            assertSame(SPRING, OpenDays.of(SPRING, new ShutTimes(List.of(time))));
        }
        assertSame(SPRING, OpenDays.of(SPRING, ShutTimes.NEVER));
    }

    @Test
    void theLeapDayIsADayLikeAnyOther() {
        check(
                promise("2028-02-01", "2028-03-01", "2028-02-10"),
                "2028-02-29..2028-03-01 on 2028-02-29",
                " The home opens again on 29 February 2028.",
                " La maison rouvre le 29 février 2028.",
                shut("2028-01-10", "2028-02-29"));
        check(
                promise("2028-02-29", "2028-02-29", "2028-02-29"),
                "2028-02-29..2028-02-29 on 2028-02-29",
                "",
                "",
                shut("2028-02-20", "2028-03-01"));
    }

    /** One belt until 14 March, another from 10 March on; shut on 12 and 13 March, each alone would lie on its own side. */
    @Test
    void shutDaysCostNoPromise() {
        List<Promise> belts = List.of(
                promise("2027-03-01", "2027-03-14", "2027-03-01"), promise("2027-03-10", "2027-03-31", "2027-03-10"));
        var shut = new ShutTimes(List.of(shut("2027-03-12", "2027-03-14")));
        Term term = Term.ofYear(LocalDate.of(2027, 1, 1));
        VisitPlan one = VisitPlan.of(belts, shut, 1, term, SmallYears.NO_SEASONS, LongestVisit.ANY);
        assertEquals(List.of(), one.unkept());
        assertEquals(
                List.of(Window.ofDays(LocalDate.of(2027, 3, 10), LocalDate.of(2027, 3, 11))),
                one.visits().stream().map(PlannedVisit::window).toList());
        VisitPlan two = VisitPlan.of(belts, shut, 2, term, SmallYears.NO_SEASONS, LongestVisit.ANY);
        assertEquals(
                List.of(
                        Window.ofDays(LocalDate.of(2027, 3, 1), LocalDate.of(2027, 3, 11)),
                        Window.ofDays(LocalDate.of(2027, 3, 14), LocalDate.of(2027, 3, 31))),
                two.visits().stream().map(PlannedVisit::window).toList());
    }

    @Test
    void withoutShutTimesNothingChangesAndWithThemNothingIsKeptLessAndNoVisitIsOnAShutDay() {
        SmallYears.each(2_000, 16, (promises, random) -> {
            int sold = random.nextInt(6);
            SeasonRules rules = random.nextBoolean() ? SeasonRules.USUAL : SmallYears.NO_SEASONS;
            LongestVisit longest = random.nextBoolean() ? LongestVisit.ANY : new LongestVisit(90);
            VisitPlan plan = VisitPlan.of(promises, sold, SmallYears.TERM, List.of(), rules, longest);
            assertEquals(plan, VisitPlan.of(promises, ShutTimes.NEVER, sold, SmallYears.TERM, rules, longest));
            LocalDate from = SmallYears.FIRST.plusDays(random.nextInt(SmallYears.HORIZON) - 2);
            var shut = new ShutTimes(List.of(new Window(from, from.plusDays(1 + random.nextInt(8)))));
            VisitPlan open = VisitPlan.of(promises, shut, sold, SmallYears.TERM, rules, longest);
            assertTrue(open.unkept().size() <= plan.unkept().size());
            for (PlannedVisit visit : open.visits()) {
                assertEquals(visit.window(), shut.longestOpen(visit.window()).orElse(visit.window()));
            }
        });
    }

    @Test
    void whatIsLeftOfATakenOverYearWaitsUntilTheHomeOpens() {
        var heating = new PromisedTask(
                MACHINE, "heating", Who.TECHNICIAN, 10, Cadence.EachSeason.of("heating"), false, History.NONE);
        RestOfYear rest = RestOfYear.of(
                Term.ofYear(LocalDate.of(2026, 3, 1)),
                2,
                List.of(heating),
                1,
                LocalDate.of(2026, 4, 20),
                new ShutTimes(List.of(shut("2026-09-01", "2026-10-05"))),
                new SeasonRules(Climate.cold(), true),
                LongestVisit.ANY,
                LocalDate.of(2026, 9, 20));
        assertEquals(
                List.of(Window.ofDays(LocalDate.of(2026, 10, 5), LocalDate.of(2026, 11, 15))),
                rest.plan().visits().stream().map(PlannedVisit::window).toList());
    }

    private static Recount recount(ShutTimes shut, String... standing) {
        List<StandingVisit> visits = new ArrayList<>();
        Arrays.stream(standing).forEach(days -> visits.add(RecountTest.visit(visits.size(), days)));
        return Recount.of(
                RecountTest.CALENDAR_YEAR,
                visits,
                Map.of(ABelt.last(RecountTest.EACH_QUARTER, "2026-03-10"), Recount.Why.DONE),
                Map.of(),
                shut,
                SeasonRules.USUAL,
                LocalDate.of(2026, 3, 10));
    }

    @Test
    void whatIsCountedAnewKeepsToTheOpenDaysAndASecondTimeChangesNothing() {
        var shut = new ShutTimes(List.of(shut("2026-06-20", "2026-08-20")));
        Recount recount = recount(shut, "2026-06-01..2026-08-01", "2026-09-01..2026-11-01");
        String[] now = {"2026-05-10..2026-06-19", "2026-08-20..2026-10-10", "2026-11-10..2027-01-10"};
        assertEquals(
                List.of(now),
                recount.owed().stream()
                        .map(promise -> RecountTest.said(promise.window()))
                        .toList());
        assertTrue(recount(shut, now).changesNothing());
        assertTrue(recount(shut, "2026-05-10..2026-07-10", "2026-08-10..2026-10-10", "2026-11-10..2027-01-10")
                .changesNothing());
    }
}
