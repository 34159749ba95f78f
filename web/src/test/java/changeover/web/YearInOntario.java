package changeover.web;

import static changeover.web.ASeason.FILTER;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.billing.payments.Way;
import changeover.contracts.agreements.SaleChannel;
import changeover.contracts.words.Refused;
import changeover.scheduling.closeout.Operation;
import jakarta.enterprise.context.Dependent;
import java.util.List;
import java.util.UUID;

/** Ontario asks one tax of 13 percent and knows no wait for the first visit: the same year, shorter. */
@Dependent
class YearInOntario extends OneHomesStory {

    /** Sold in the open heating season: it is kept now, and its next opening belongs to the next term. */
    UUID isSoldAtTheCounterInTwoInstalments() {
        UUID plan = season.plan(shop, "249.00", 2, TASKS);
        UUID agreement = in(() -> agreements
                .offer(offers.forHome(home, plan, day("2026-10-20"), day("2026-10-20")))
                .id());
        sold(agreement, "2026-10-20", SaleChannel.COUNTER);
        assertEquals(
                List.of(
                        "2026-10-20 .. 2026-11-15 WITHOUT_DAY: defrost filter-at-visit humidifier-pad",
                        "2027-05-01 .. 2027-06-15 TO_COME: filter-at-visit humidifier-off outdoor-coil"),
                work.visits(shop, home, day("2026-10-20"), day("2027-10-20")));
        assertEquals(
                List.of("2026-10-20 12450", "2027-04-20 12450"),
                work.said(shop, "select may_issue_from || ' ' || subtotal_minor from invoice order by 1"));
        return agreement;
    }

    /** 124.50 and 16.185; a quarter hour at 21.60 and a filter at 34.20 are 55.80 and 7.254. */
    void theAutumnVisitIsPaidInCash() {
        assertEquals("INV-2026-0001: 124.50 + 16.19 = 140.69 by 2026-11-19", work.issue(shop, draft("plan")));
        season.comes(shop, day("2026-11-03"));
        work.closes(
                shop,
                work.year(shop, home, day("2026-10-20"), day("2027-10-20"))
                        .visits()
                        .getFirst()
                        .visitId(),
                List.of(part(FILTER, 2, "plan"), new Operation.MinutesTold(76, 45, "Pan levelled")));
        assertEquals("INV-2026-0002: 55.80 + 7.25 = 63.05 by 2026-12-03", work.issue(shop, draft("visit")));
        assertEquals("203.74 owed, 0.00 held", work.stands(shop, payer));
        work.pays(shop, payer, Way.CASH, "203.75");
        assertEquals("0.00 owed, 0.00 held", work.stands(shop, payer), "a cent is rounded away in cash");
    }

    /** The second instalment has its own day; what is not done yet falls when the household moves away. */
    void theHouseholdMovesAway(UUID agreement) {
        season.comes(shop, day("2027-04-19"));
        assertEquals(
                "invoice.too-early",
                assertThrows(Refused.class, () -> work.issue(shop, draft("plan")))
                        .first()
                        .code());
        season.comes(shop, day("2027-04-20"));
        assertEquals("INV-2027-0001: 124.50 + 16.19 = 140.69 by 2027-05-20", work.issue(shop, draft("plan")));
        work.pays(shop, payer, Way.CARD, "140.69");
        season.comes(shop, day("2027-04-25"));
        in(() -> {
            agreements.end(agreement, day("2027-04-25"), "moved away");
            return agreement;
        });
        assertEquals(
                List.of("CLOSED", "CANCELLED"),
                work.year(shop, home, day("2026-10-20"), day("2027-10-20")).visits().stream()
                        .map(visit -> visit.standing().name())
                        .toList());
        assertEquals("0.00 owed, 0.00 held", work.stands(shop, payer));
    }
}
