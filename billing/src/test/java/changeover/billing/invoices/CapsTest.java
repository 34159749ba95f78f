package changeover.billing.invoices;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ABusiness;
import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.Prices;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import changeover.scheduling.closeout.VisitAmended;
import changeover.scheduling.closeout.VisitClosed;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Two filters a year are included, then billed less the plan's discount: over amended and credited visits too. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class CapsTest {

    private static final LocalDate DAY = LocalDate.of(2026, 4, 21);

    @Inject
    ABusiness business;

    @Inject
    AnAgreement agreement;

    @Inject
    Event<VisitClosed> closed;

    @Inject
    Event<VisitAmended> amended;

    @Inject
    Prices prices;

    @Inject
    Invoices invoices;

    @Inject
    Credits credits;

    @Test
    void what_an_amended_visit_no_longer_used_is_given_to_the_next_one() {
        business.in(business.quebec(), () -> {
            agreement.part("filter-16x25x1", "filter");
            prices.set(
                    new PriceEntry(ItemKind.PART, "filter-16x25x1", Money.of("18.50", "CAD"), null, DAY.minusDays(30)));
            UUID payer = business.customer("Ida Roe");
            UUID home = business.home(payer, "QC");
            UUID plan = agreement.inForce(home, payer, DAY.minusDays(20), 1);

            VisitClosed first = visit(home, plan, 2);
            closed.fire(first);
            assertEquals("included 2 0", lines(first.visitId()));
            VisitClosed second = visit(home, plan, 1);
            closed.fire(second);
            assertEquals("discounted 1 1665", lines(second.visitId()));

            UUID paid = draft(second.visitId());
            invoices.issue(paid, DAY);
            invoices.issue(draft(first.visitId()), DAY);
            invoices.issue(credits.inFull(paid, DAY, new Wording("A courtesy", "Un geste")), DAY);
            VisitClosed third = visit(home, plan, 1);
            closed.fire(third);
            assertEquals("discounted 1 1665", lines(third.visitId()), "a credit note gives money back, no filter");

            amended.fire(new VisitAmended(UUID.randomUUID(), 2, first, again(first, 1)));
            VisitClosed fourth = visit(home, plan, 2);
            closed.fire(fourth);
            assertEquals("included 1 0, discounted 1 1665", lines(fourth.visitId()));

            amended.fire(new VisitAmended(UUID.randomUUID(), 3, again(first, 1), again(first, 0)));
            VisitClosed fifth = visit(home, plan, 2);
            closed.fire(fifth);
            assertEquals("included 1 0, discounted 1 1665", lines(fifth.visitId()), "the first used none after all");
        });
    }

    private VisitClosed visit(UUID home, UUID plan, int filters) {
        return visit(agreement.visit(home, plan), home, plan, filters);
    }

    private static VisitClosed again(VisitClosed visit, int filters) {
        return visit(visit.visitId(), visit.homeId(), visit.agreementId(), filters);
    }

    private static VisitClosed visit(UUID id, UUID home, UUID plan, int filters) {
        List<VisitClosed.Part> parts = filters == 0
                ? List.of()
                : List.of(new VisitClosed.Part(
                        UUID.randomUUID(), "filter-16x25x1", BigDecimal.valueOf(filters), null, "plan"));
        return new VisitClosed(id, home, plan, "plan", null, UUID.randomUUID(), DAY, 0, 0, 0, parts, List.of());
    }

    private UUID draft(UUID visit) {
        return UUID.fromString(business.one("select id from invoice where visit_id = '" + visit + "'"));
    }

    private String lines(UUID visit) {
        return business.one("""
                select string_agg(coverage || ' ' || trim_scale(quantity) || ' ' || net_minor, ', ' order by position)
                  from invoice_line where visit_id = '%s'""".formatted(visit));
    }
}
