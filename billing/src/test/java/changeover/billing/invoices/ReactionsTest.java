package changeover.billing.invoices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.billing.ABusiness;
import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.Prices;
import changeover.contracts.PostgresForTests;
import changeover.contracts.agreements.AgreementSold;
import changeover.contracts.agreements.AgreementSold.Sold;
import changeover.contracts.agreements.SaleChannel;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refused;
import changeover.scheduling.closeout.VisitAmended;
import changeover.scheduling.closeout.VisitClosed;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What billing does by itself when a plan is sold and when a visit is closed or amended. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class ReactionsTest {

    static final LocalDate DAY = LocalDate.of(2026, 4, 1);

    @Inject
    ABusiness business;

    @Inject
    AnAgreement agreement;

    @Inject
    Event<AgreementSold> sold;

    @Inject
    Event<VisitClosed> closed;

    @Inject
    Event<VisitAmended> amended;

    @Inject
    Invoices invoices;

    @Inject
    Prices prices;

    @Inject
    Repricing repricing;

    private Sold sell(UUID home, UUID payer, int instalments, SaleChannel channel, boolean card) {
        UUID id = agreement.inForce(home, payer, DAY, instalments);
        Sold one = new Sold(
                id,
                home,
                payer,
                DAY,
                DAY.plusYears(1),
                Money.of("249.00", "CAD"),
                instalments,
                DAY,
                channel,
                card,
                "fr");
        sold.fire(new AgreementSold(List.of(one)));
        return one;
    }

    private static VisitClosed closed(
            UUID visit,
            UUID home,
            @Nullable UUID agreement,
            String kind,
            int minutes,
            int extra,
            VisitClosed.Part... parts) {
        return new VisitClosed(
                visit,
                home,
                agreement,
                kind,
                null,
                UUID.randomUUID(),
                DAY.plusDays(20),
                minutes,
                minutes,
                extra,
                Arrays.asList(parts),
                List.of());
    }

    private static VisitClosed.Part part(String code, int quantity) {
        return new VisitClosed.Part(UUID.randomUUID(), code, BigDecimal.valueOf(quantity), null, "extra");
    }

    private String drafts() {
        return business.one("""
                select string_agg(i.kind || ' ' || i.may_issue_from || ' ' || i.subtotal_minor
                         || case when i.awaits_first_visit then ' waits' else '' end, ', '
                         order by i.kind, i.may_issue_from, i.subtotal_minor desc)
                  from invoice i where not exists (select 1 from invoice_issue s where s.invoice_id = i.id)""");
    }

    private String lines(UUID visit) {
        return business.one("""
                select string_agg(l.item_code || ' ' || l.coverage || ' ' || trim_scale(l.quantity) || ' ' || l.net_minor,
                         ', ' order by l.invoice_id, l.position)
                  from invoice_line l join invoice i on i.id = l.invoice_id and i.kind = 'visit'
                 where l.visit_id = '%s'""".formatted(visit));
    }

    private void priced() {
        agreement.part("filter-16x25x1", "filter");
        prices.set(new PriceEntry(ItemKind.LABOUR, PriceBook.HOUR, Money.of("96.00", "CAD"), null, DAY));
        prices.set(new PriceEntry(ItemKind.PART, "filter-16x25x1", Money.of("18.50", "CAD"), null, DAY));
    }

    @Test
    void a_plan_is_asked_for_in_instalments_whose_sum_is_exact() {
        business.in(business.quebec(), () -> {
            UUID payer = business.customer("Ida Roe");
            sell(business.home(payer, "QC"), payer, 4, SaleChannel.COUNTER, false);
            assertEquals(
                    "plan 2026-04-01 6225, plan 2026-07-01 6225, plan 2026-10-01 6225, plan 2027-01-01 6225", drafts());
        });
    }

    @Test
    void a_sale_at_a_distance_in_quebec_waits_for_the_first_visit_unless_paid_by_card() {
        business.in(business.quebec(), () -> {
            UUID payer = business.customer("Ida Roe");
            UUID home = business.home(payer, "QC");
            Sold one = sell(home, payer, 2, SaleChannel.DISTANCE, false);
            assertEquals("plan 2026-04-01 12450 waits, plan 2026-10-01 12450 waits", drafts());
            UUID first = UUID.fromString(business.one("select id from invoice order by may_issue_from limit 1"));
            assertEquals(
                    "invoice.awaits-first-visit",
                    assertThrows(Refused.class, () -> invoices.issue(first, DAY.plusDays(9)))
                            .first()
                            .code());
            UUID visit = agreement.visit(home, one.agreementId());
            closed.fire(closed(visit, home, one.agreementId(), "plan", 75, 0));
            assertEquals("plan 2026-04-21 12450, plan 2026-10-01 12450, visit 2026-04-21 0", drafts());
            sell(business.home(payer, "ON"), payer, 1, SaleChannel.DISTANCE, false);
            sell(business.home(payer, "QC"), payer, 1, SaleChannel.DISTANCE, true);
            assertEquals("0", business.one("select count(*) from invoice where awaits_first_visit"));
        });
    }

    @Test
    void a_closed_visit_gives_what_the_plan_includes_until_it_is_used_up() {
        business.in(business.quebec(), () -> {
            priced();
            UUID payer = business.customer("Ida Roe");
            UUID home = business.home(payer, "QC");
            UUID plan = sell(home, payer, 1, SaleChannel.COUNTER, false).agreementId();
            UUID first = agreement.visit(home, plan);
            closed.fire(closed(first, home, plan, "plan", 95, 20, part("filter-16x25x1", 1)));
            assertEquals("promised included 75 0, hour included 20 0, filter-16x25x1 included 1 0", lines(first));
            UUID second = agreement.visit(home, plan);
            closed.fire(closed(second, home, plan, "plan", 95, 20, part("filter-16x25x1", 2)));
            assertEquals(
                    "promised included 75 0, hour included 10 0, hour discounted 0.25 2160,"
                            + " filter-16x25x1 included 1 0, filter-16x25x1 discounted 1 1665",
                    lines(second));
            UUID call = agreement.visit(home, null);
            closed.fire(closed(call, home, null, "call", 60, 0));
            assertEquals("hour discounted 1 8640", lines(call), "a call gets the plan's discount too");
        });
    }

    @Test
    void the_draft_follows_an_amended_visit() {
        business.in(business.quebec(), () -> {
            priced();
            UUID payer = business.customer("Ida Roe");
            UUID home = business.home(payer, "QC");
            UUID visit = agreement.visit(home, null);
            VisitClosed before = closed(visit, home, null, "call", 60, 0);
            closed.fire(before);
            VisitClosed now = closed(visit, home, null, "call", 90, 0, part("filter-16x25x1", 1));
            amended.fire(new VisitAmended(UUID.randomUUID(), 2, before, now));
            assertEquals("hour billable 1.5 14400, filter-16x25x1 billable 1 1850", lines(visit));
            assertEquals("visit 2026-04-21 16250", drafts());

            UUID draft = UUID.fromString(business.one("select id from invoice"));
            invoices.issue(draft, DAY.plusDays(21));
            amended.fire(new VisitAmended(UUID.randomUUID(), 3, now, now));
            assertEquals("none", noneIfNull(drafts()), "nothing to pay has changed");
            amended.fire(new VisitAmended(UUID.randomUUID(), 4, now, before));
            assertEquals("credit 2026-04-21 16250, visit 2026-04-21 9600", drafts());
            UUID credit = UUID.fromString(business.one("select id from invoice where kind = 'credit'"));
            invoices.issue(credit, DAY.plusDays(22));
            assertEquals(
                    invoices.view(draft).orElseThrow().total(),
                    invoices.view(credit).orElseThrow().total());
        });
    }

    @Test
    void a_line_without_a_price_waits_for_it() {
        business.in(business.quebec(), () -> {
            UUID payer = business.customer("Ida Roe");
            UUID home = business.home(payer, "QC");
            UUID visit = agreement.visit(home, null);
            closed.fire(closed(visit, home, null, "call", 60, 0));
            UUID draft = UUID.fromString(business.one("select id from invoice"));
            assertEquals(
                    "invoice.price-missing",
                    assertThrows(Refused.class, () -> invoices.issue(draft, DAY.plusDays(21)))
                            .first()
                            .code());
            priced();
            assertEquals(1, repricing.take(draft));
            invoices.issue(draft, DAY.plusDays(21));
            assertEquals("110.38", invoices.view(draft).orElseThrow().total().decimal());
        });
    }

    private static String noneIfNull(@Nullable String said) {
        return said == null ? "none" : said;
    }
}
