package changeover.web;

import static changeover.web.ASeason.FILTER;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.billing.notices.OfferMail;
import changeover.contracts.agreements.Renewals;
import changeover.contracts.agreements.SaleChannel;
import changeover.contracts.calendar.Window;
import changeover.contracts.words.Refused;
import changeover.scheduling.closeout.Operation;
import changeover.scheduling.visits.HouseholdTasks;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import jakarta.enterprise.context.Dependent;
import jakarta.inject.Inject;
import java.util.List;
import java.util.UUID;

/** The household’s own work, a door that stays shut, and the year after. */
@Dependent
class AutumnInQuebec extends OneHomesStory {

    @Inject
    HouseholdTasks household;

    @Inject
    Renewals renewals;

    @Inject
    OfferMail offerMail;

    void theHouseholdDoesItsPart() {
        season.comes(shop, day("2026-07-01"));
        var own = work.year(shop, home, FROM, UNTIL).household();
        assertEquals(12, own.size());
        var due = own.get(3);
        assertEquals(day("2026-07-01"), due.dueOn());
        in(() -> {
            household.done(home, due.id(), day("2026-07-01"), "Camille");
            household.done(home, due.id(), day("2026-07-05"), "Somebody else");
            return due;
        });
        var done = work.year(shop, home, FROM, UNTIL).household().get(3);
        assertEquals("2026-07-01 Camille", done.doneOn() + " " + done.doneBy());
        assertThrows(
                Refused.class,
                () -> in(() -> {
                    household.done(home, UUID.randomUUID(), day("2026-07-01"), "Camille");
                    return due;
                }));
    }

    /** The promised work of the visit that is made anew is still the plan's; a second filter is not: 34.20 + 1.71 + 3.41. */
    void nobodyOpensInAutumn(UUID agreement) {
        season.comes(shop, day("2026-10-06"));
        var autumn = work.year(shop, home, FROM, UNTIL).visits().getLast();
        in(() -> {
            visits.noAccess(autumn.visitId(), day("2026-10-06"), "Nobody opened");
            return autumn;
        });
        UUID again = in(() -> visits.make(new NewVisit(
                        home,
                        agreement,
                        VisitKind.PLAN,
                        Window.ofDays(day("2026-10-07"), day("2026-11-15")),
                        0,
                        autumn.visitId(),
                        null,
                        autumn.tasks().stream()
                                .map(task -> new NewVisit.NewTask(task.equipmentId(), task.taskCode(), task.reason()))
                                .toList()))
                .id());
        season.comes(shop, day("2026-10-20"));
        work.closes(shop, again, List.of(part(FILTER, 1, "plan"), new Operation.MinutesTold(40, 0, null)));
        assertEquals("F-2026-0004: 34.20 + 1.71 + 3.41 = 39.32 by 2026-11-19", work.issue(shop, draft("visit")));
        assertEquals("39.32 owed, 66.44 held", work.stands(shop, payer));
        in(() -> payments.settle(payer, day("2026-10-20")));
        assertEquals("0.00 owed, 27.12 held", work.stands(shop, payer));
        assertEquals(
                List.of("CLOSED", "NO_ACCESS", "CLOSED"),
                work.year(shop, home, FROM, UNTIL).visits().stream()
                        .map(visit -> visit.standing().name())
                        .toList());
    }

    /** Quebec's notice goes out between the 90th and the 60th day before the last one, 31 March 2027. */
    UUID isOfferedTheNextYear(UUID agreement, UUID plan) {
        season.comes(shop, day("2026-12-30"));
        assertEquals(List.of(), in(() -> renewals.list(day("2026-12-30"))));
        season.comes(shop, day("2026-12-31"));
        assertEquals(1, in(() -> renewals.list(day("2026-12-31"))).size());
        season.costs(shop, plan, "259.00", TASKS);
        season.comes(shop, day("2027-01-15"));
        UUID offer = in(() -> {
            UUID made = renewals.offer(agreement, day("2027-01-15")).id();
            offerMail.write(List.of(made));
            return made;
        });
        season.comes(shop, day("2027-01-16"));
        assertEquals(List.of("mail fr 1"), work.said(shop, """
                        select o.way || ' ' || o.language || ' ' || count(d.id) from outbox o
                          join outbox_attachment a on a.outbox_id = o.id
                          join document d on d.of_kind = a.of_kind and d.of_id = a.of_id
                         where o.kind = 'offer' and o.about_id = '%s' group by o.way, o.language""".formatted(offer)));
        return sold(offer, "2027-01-20", SaleChannel.DISTANCE);
    }

    /** 259.00 + 12.95 + 25.83525 is 297.79; 27.12 of it is held already. */
    void theNextYearBegins(UUID next) {
        season.comes(shop, UNTIL);
        assertEquals(
                List.of(
                        "2027-05-01 .. 2027-06-15 TO_COME: filter-at-visit humidifier-off outdoor-coil",
                        "2027-09-01 .. 2027-11-15 TO_COME: defrost filter-at-visit humidifier-pad"),
                work.visits(shop, home, UNTIL, UNTIL.plusYears(1)));
        assertEquals(0, in(() -> renewals.list(UNTIL)).size());
        season.comes(shop, day("2027-05-04"));
        work.closes(
                shop,
                work.year(shop, home, UNTIL, UNTIL.plusYears(1))
                        .visits()
                        .getFirst()
                        .visitId(),
                List.of(new Operation.MinutesTold(35, 0, null)));
        assertEquals(
                next.toString(),
                work.said(shop, "select agreement_id::text from invoice where id = '" + draft("plan") + "'")
                        .getFirst());
        assertEquals("F-2027-0001: 259.00 + 12.95 + 25.84 = 297.79 by 2027-06-03", work.issue(shop, draft("plan")));
        in(() -> payments.settle(payer, day("2027-05-04")));
        assertEquals("270.67 owed, 0.00 held", work.stands(shop, payer));
    }
}
