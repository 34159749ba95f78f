package changeover.web;

import static changeover.web.ASeason.FILTER;
import static changeover.web.ASeason.SWITCH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.billing.invoices.Credits;
import changeover.billing.payments.Way;
import changeover.contracts.agreements.SaleChannel;
import changeover.contracts.calendar.Window;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import changeover.scheduling.closeout.Amendments;
import changeover.scheduling.closeout.Operation;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import jakarta.enterprise.context.Dependent;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** A plan sold at a distance, a call, the first visit, its correction, and the money of it. */
@Dependent
class SpringInQuebec extends OneHomesStory {

    @Inject
    Amendments amendments;

    @Inject
    Credits credits;

    /** The law of Quebec: at a distance, and not by card, nothing is asked before the first visit (CPA 54.x). */
    UUID isSoldAtADistance(UUID plan) {
        UUID offer = in(() -> agreements
                .offer(offers.forHome(home, plan, FROM, day("2026-03-20")))
                .id());
        assertEquals(
                "agreement.channel-refused",
                assertThrows(Refused.class, () -> sold(offer, "2026-03-20", SaleChannel.HOME))
                        .first()
                        .code());
        sold(offer, "2026-03-20", SaleChannel.DISTANCE);
        assertEquals(
                List.of(
                        "2026-05-01 .. 2026-06-15 TO_COME: filter-at-visit humidifier-off outdoor-coil",
                        "2026-09-01 .. 2026-11-15 TO_COME: defrost filter-at-visit humidifier-pad"),
                work.visits(shop, home, FROM, UNTIL));
        work.year(shop, home, FROM, UNTIL)
                .visits()
                .forEach(visit -> visit.tasks()
                        .forEach(task -> assertEquals(
                                false,
                                task.reason().en().isBlank()
                                        || task.reason().fr().isBlank())));
        return offer;
    }

    /** 55 minutes are 4 quarters: 96.00. With a filter at 38.00: 134.00 + 6.70 + 13.3665 = 154.07. */
    void aCallBeforeTheTermOwesItsFullPrice() {
        season.comes(shop, day("2026-03-24"));
        UUID call = in(() -> visits.make(new NewVisit(
                        home,
                        null,
                        VisitKind.CALL,
                        Window.ofDays(day("2026-03-24"), day("2026-03-25")),
                        60,
                        null,
                        "No heat",
                        List.of()))
                .id());
        work.closes(shop, call, List.of(part(FILTER, 1, "repair"), new Operation.MinutesTold(55, 0, null)));
        assertEquals("F-2026-0001: 134.00 + 6.70 + 13.37 = 154.07 by 2026-04-23", work.issue(shop, draft("visit")));
        work.pays(shop, payer, Way.CARD, "100.00");
        assertEquals("54.07 owed, 0.00 held", work.stands(shop, payer));
        season.comes(shop, day("2026-04-02"));
        work.pays(shop, payer, Way.TRANSFER, "54.07");
        assertEquals("0.00 owed, 0.00 held", work.stands(shop, payer));
        assertEquals(
                "invoice.awaits-first-visit",
                assertThrows(Refused.class, () -> work.issue(shop, draft("plan")))
                        .first()
                        .code(),
                "a call is not the plan's first visit");
    }

    /** Included: one filter, thirty of fifty extra minutes. The rest less ten percent: 41.40 and half an hour at 43.20. */
    UUID theSpringVisit() {
        season.comes(shop, day("2026-05-12"));
        UUID visit = work.year(shop, home, FROM, UNTIL).visits().getFirst().visitId();
        work.closes(
                shop,
                visit,
                List.of(
                        part(FILTER, 1, "plan"),
                        part(SWITCH, 1, "extra"),
                        new Operation.Found(
                                "recommended", null, "Ailettes pliées", "fr", null, null, "Camille", true, null, null),
                        new Operation.MinutesTold(85, 50, "Float switch fitted")));
        assertEquals(
                List.of(
                        "promised included 35 0",
                        "hour included 30 0",
                        "hour discounted 0.5 4320",
                        "FIL-16254 included 1 0",
                        "FLO-3 discounted 1 4140"),
                lines(visit));
        assertEquals("F-2026-0002: 249.00 + 12.45 + 24.84 = 286.29 by 2026-06-11", work.issue(shop, draft("plan")));
        return visit;
    }

    private List<String> lines(UUID visit) {
        return work.said(shop, """
                select l.item_code || ' ' || l.coverage || ' ' || trim_scale(l.quantity) || ' ' || l.net_minor
                  from invoice_line l join invoice i on i.id = l.invoice_id and i.kind = 'visit'
                 where l.visit_id = '%s' order by l.position""".formatted(visit));
    }

    /** Two switches instead of one: 82.80 + 43.20 = 126.00; 6.30 and 12.5685, 144.87. */
    void isCorrectedBeforeTheInvoice(UUID visit) {
        season.comes(shop, day("2026-05-13"));
        int version = in(() -> amendments.amend(
                UUID.randomUUID(),
                visit,
                "Two were fitted",
                work.sent(List.of(part(SWITCH, 1, "extra"))),
                shop.technician()));
        assertEquals(2, version);
        assertEquals("F-2026-0003: 126.00 + 6.30 + 12.57 = 144.87 by 2026-06-12", work.issue(shop, draft("visit")));
        season.comes(shop, day("2026-05-14"));
        assertEquals(List.of("report 1", "report 2"), work.said(shop, """
                        select of_kind || ' ' || version from document where of_kind = 'report' and of_id = '%s'
                         order by version""".formatted(visit)));
        assertEquals(
                List.of("1", "2"),
                work.said(
                        shop,
                        "select about_version::text from outbox where kind = 'report' and about_id = '" + visit
                                + "' order by 1"));
        assertEquals(List.of("FIL-16254 8", "FLO-3 8"), work.said(shop, """
                        select part_code || ' ' || trim_scale(sum(quantity)) from stock_movement
                         group by part_code order by 1"""));
    }

    /** 286.29 + 144.87 = 431.16; one switch goes back: 41.40 + 2.07 + 4.13 = 47.60 (126.00 less 41.40 owes 8.44 of QST). */
    void isPaidTooMuchAndGetsACredit() {
        assertEquals("431.16 owed, 0.00 held", work.stands(shop, payer));
        season.comes(shop, day("2026-06-02"));
        work.pays(shop, payer, Way.CHEQUE, "450.00");
        assertEquals("0.00 owed, 18.84 held", work.stands(shop, payer));
        season.comes(shop, day("2026-06-10"));
        UUID invoice = UUID.fromString(
                work.said(shop, "select invoice_id::text from invoice_issue where label = 'F-2026-0003'")
                        .getFirst());
        int line = Integer.parseInt(work.said(
                        shop,
                        "select max(position)::text from invoice_line where invoice_id = '" + invoice
                                + "' and item_code = 'FLO-3'")
                .getFirst());
        UUID credit = in(() -> credits.inPart(
                invoice,
                day("2026-06-10"),
                Map.of(line, Money.of("41.40", "CAD")),
                new Wording("One came back.", "Un est revenu.")));
        assertEquals("NC-2026-0001: 41.40 + 2.07 + 4.13 = 47.60 by 2026-06-10", work.issue(shop, credit));
        assertEquals("0.00 owed, 66.44 held", work.stands(shop, payer));
    }
}
