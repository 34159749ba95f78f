package changeover.billing.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ABusiness;
import changeover.billing.invoices.Credits;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.ledger.ASoldPlan.Sold;
import changeover.billing.ledger.EarnedOn.Plan;
import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.Prices;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** What of a plan for 249.00 is earned on a day, as its visits are done, its filters given and its days pass. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class EarnedTest {

    static final LocalDate FIRST = ASoldPlan.FIRST;

    @Inject
    ABusiness business;

    @Inject
    ASoldPlan plans;

    @Inject
    Earned earned;

    @Inject
    Credits credits;

    @Inject
    Invoices invoices;

    @Inject
    Prices prices;

    @Inject
    Drafts drafts;

    @Inject
    Journal journal;

    private void check(Sold sold, LocalDate day, String expected) {
        Plan plan = earned.on(day).plans().stream()
                .filter(one -> one.agreementId().equals(sold.id()))
                .findFirst()
                .orElseThrow();
        assertEquals(
                expected,
                plan.earned().ever().decimal() + " of " + plan.invoiced().decimal() + ", prepaid "
                        + plan.prepaid().decimal() + ", ahead " + plan.ahead().decimal() + ", " + plan.basis(),
                day.toString());
    }

    /** Without prices an hour is 60.00 and a filter 15.00: two tasks of an hour, two filters and 30 ready minutes are 180.00. */
    @Test
    void a_visit_earns_its_share_and_readiness_its_days() {
        business.in(business.quebec(), () -> {
            Sold sold = plans.of("Ida Roe", 30, 2);
            UUID spring = plans.visit(sold, "plan", 60, null);
            UUID autumn = plans.visit(sold, "plan", 60, null);
            plans.invoiced(sold, FIRST, 1, "249.00");
            plans.closed(sold, spring, LocalDate.of(2026, 5, 4), "done");
            plans.filters(sold, spring, LocalDate.of(2026, 5, 4), 1);
            plans.closed(sold, autumn, LocalDate.of(2026, 10, 12), "deferred");
            UUID again = plans.visit(sold, "return", 60, autumn);
            plans.closed(sold, again, LocalDate.of(2026, 10, 20), "done");
            check(sold, FIRST, "0.11 of 249.00, prepaid 248.89, ahead 0.00, ASSUMED");
            check(sold, LocalDate.of(2026, 5, 3), "3.75 of 249.00, prepaid 245.25, ahead 0.00, ASSUMED");
            check(sold, LocalDate.of(2026, 5, 4), "107.62 of 249.00, prepaid 141.38, ahead 0.00, ASSUMED");
            check(sold, LocalDate.of(2026, 10, 19), "126.72 of 249.00, prepaid 122.28, ahead 0.00, ASSUMED");
            check(sold, LocalDate.of(2026, 10, 20), "209.83 of 249.00, prepaid 39.17, ahead 0.00, ASSUMED");
            check(sold, LocalDate.of(2027, 6, 1), "228.25 of 249.00, prepaid 20.75, ahead 0.00, ASSUMED");
            assertEquals(
                    1,
                    earned.on(LocalDate.of(2027, 6, 1))
                            .where(earned.on(LocalDate.of(2027, 6, 1))::overdue)
                            .size());
        });
    }

    /** A filter of 15.00 in 180.00 is 20.75 of 249.00: the visit, written anew, used none after all. */
    @Test
    void what_a_visit_no_longer_used_is_not_earned() {
        business.in(business.quebec(), () -> {
            Sold sold = plans.of("Ida Roe", 30, 2);
            UUID spring = plans.visit(sold, "plan", 60, null);
            plans.visit(sold, "plan", 60, null);
            plans.invoiced(sold, FIRST, 1, "249.00");
            plans.closed(sold, spring, LocalDate.of(2026, 5, 4), "done");
            plans.filters(sold, spring, LocalDate.of(2026, 5, 4), 1);
            business.execute("update invoice set visit_version = 2 where visit_id = '" + spring + "'");
            check(sold, LocalDate.of(2026, 5, 4), "86.87 of 249.00, prepaid 162.13, ahead 0.00, ASSUMED");
        });
    }

    /** An hour at 120.00 and the cheaper filter at 10.00: 120, 120, 10 and 10 of 260. */
    @Test
    void the_price_book_splits_the_price() {
        business.in(business.quebec(), () -> {
            Sold sold = plans.of("Jo Poe", 0, 2);
            business.execute(
                    "insert into part (code, name_en, name_fr, unit, fits_key) values ('f-16', 'F', 'F', 'C62',"
                            + " 'filter'), ('f-20', 'F', 'F', 'C62', 'filter')");
            price(ItemKind.LABOUR, PriceBook.HOUR, "120.00", FIRST.minusDays(9));
            price(ItemKind.LABOUR, PriceBook.HOUR, "999.00", FIRST.plusDays(9));
            price(ItemKind.PART, "f-16", "10.00", FIRST.plusMonths(1));
            price(ItemKind.PART, "f-20", "14.00", FIRST.minusDays(1));
            UUID spring = plans.visit(sold, "plan", 60, null);
            plans.visit(sold, "plan", 60, null);
            plans.invoiced(sold, FIRST, 1, "249.00");
            plans.closed(sold, spring, FIRST.plusDays(20), "done");
            check(sold, FIRST.plusDays(19), "0.00 of 249.00, prepaid 249.00, ahead 0.00, PRICES");
            check(sold, FIRST.plusDays(20), "114.92 of 249.00, prepaid 134.08, ahead 0.00, PRICES");
        });
    }

    @Test
    void work_before_the_second_instalment_is_earned_ahead() {
        business.in(business.quebec(), () -> {
            Sold sold = plans.of("Mo Tarn", 0, 0);
            UUID only = plans.visit(sold, "plan", 60, null);
            plans.invoiced(sold, FIRST, 1, "124.50");
            plans.draft(sold, FIRST.plusMonths(6), 2, "124.50");
            plans.closed(sold, only, FIRST.plusDays(20), "done");
            check(sold, FIRST.plusDays(20), "249.00 of 124.50, prepaid 0.00, ahead 124.50, ASSUMED");
        });
    }

    /** 136 of 365 days are 92.78; a credit note for 156.22 gives back 179.62 with its taxes. */
    @Test
    void a_cancelled_plan_has_earned_its_days_and_then_what_is_kept() {
        business.in(business.quebec(), () -> {
            Sold sold = plans.of("Al Birk", 0, 0);
            UUID invoice = plans.invoiced(sold, FIRST, 1, "249.00");
            LocalDate end = LocalDate.of(2026, 8, 15);
            plans.ends(sold, end);
            check(sold, end.minusDays(1), "92.78 of 249.00, prepaid 156.22, ahead 0.00, DAYS");
            check(sold, end.plusDays(60), "92.78 of 249.00, prepaid 156.22, ahead 0.00, DAYS");
            UUID note = credits.inPart(
                    invoice, end, Map.of(1, Money.of("156.22", "CAD")), new Wording("Moved away.", "Déménagement."));
            invoices.issue(note, end);
            assertEquals("179.62", invoices.view(note).orElseThrow().total().decimal());
            check(sold, end.plusDays(60), "92.78 of 92.78, prepaid 0.00, ahead 0.00, DAYS");
            assertEquals("156.22", earned.on(end).plans().getFirst().givenBack().decimal());
        });
    }

    private void price(ItemKind kind, String code, String price, LocalDate from) {
        prices.set(new PriceEntry(kind, code, Money.of(price, "CAD"), null, from));
    }

    /** A plan's line that belongs to no agreement has no term to be earned over: earned and booked as it is invoiced. */
    @Test
    void a_plan_without_an_agreement_is_earned_as_the_journal_books_it() {
        business.in(business.quebec(), () -> {
            UUID customer = business.customer("Vi Orr");
            UUID draft = drafts.write(List.of(SomeDrafts.on(FIRST, customer, business.home(customer, "QC"), "80.00")))
                    .getFirst();
            invoices.issue(draft, FIRST);
            assertEquals("80.00", earned.on(FIRST).visits().ever().decimal());
            assertEquals(
                    List.of("receivable 91.98", "revenue-visit -80.00"),
                    journal.of(new Period(FIRST, FIRST)).stream()
                            .flatMap(entry -> entry.postings().stream())
                            .filter(one -> !one.role().startsWith("tax"))
                            .map(one -> one.role() + " " + one.amount().decimal())
                            .toList());
        });
    }
}
