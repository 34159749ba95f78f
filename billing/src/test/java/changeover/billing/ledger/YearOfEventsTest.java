package changeover.billing.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.BooksHold;
import changeover.billing.payments.Owed;
import changeover.billing.payments.OwedBy;
import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * A random year of events against books kept by hand: after each one the numbers have no gap, the documents add up, and every customer owes
 * what the books say; the same seed gives the same cents again.
 */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class YearOfEventsTest {

    private static final int EVENTS = Boolean.getBoolean("changeover.deep") ? 10_000 : 200;
    private static final int WHOLE = EVENTS / 20;
    private static final long SEED = Long.getLong("changeover.seed", 20_261_130);

    /** A customer's documents of which more is given up than is left of them, or more of a tax than its own. */
    private static final String BEYOND = """
            select count(*) from invoice_issue s
              join lateral (
                select sum(w.amount_minor) as minor,
                       coalesce(sum((select sum(x.amount_minor) from write_off_tax x where x.write_off_id = w.id)), 0) as tax
                  from write_off w where w.invoice_id = s.invoice_id having count(*) > 0) g on true
             where s.customer_id = '%s' and (g.tax not between 0 and s.tax_minor or (g.minor = 0 and g.tax <> 0)
                or g.minor not between 0 and greatest(0, s.total_minor
                     - coalesce((select sum(c.total_minor) from invoice_issue c where c.credits_id = s.invoice_id), 0)
                     - coalesce((select sum(a.amount_minor) from payment_allocation a
                          where a.invoice_id = s.invoice_id and not exists (
                            select 1 from payment_undoing u where u.payment_id = a.payment_id)), 0)))""";

    @Inject
    ABusiness business;

    @Inject
    RandomEvents events;

    @Inject
    RandomDebts debts;

    @Inject
    Owed owed;

    @Inject
    Journal journal;

    @Inject
    Earned earned;

    @Inject
    BooksHold books;

    @Test
    void after_every_event_the_books_are_those_kept_by_hand_and_a_second_going_is_the_same() {
        List<String> first = goingBy(EVENTS);
        List<String> second = goingBy(EVENTS);
        assertEquals(first.size(), second.size());
        IntStream.range(0, first.size()).forEach(at -> assertEquals(first.get(at), second.get(at)));
    }

    private List<String> goingBy(int most) {
        UUID tenant = business.quebec();
        RandomEvents.Year year = business.in(tenant, () -> events.begin(SEED, most));
        for (int event = 1; event <= most; event++) {
            UUID customer = business.in(tenant, year::next);
            int at = event;
            business.in(tenant, () -> holds(year, customer, at));
            if (event % WHOLE == 0 || event == most) {
                business.in(tenant, () -> holdsWhole(year));
            }
        }
        List<String> said = new ArrayList<>(year.books.events());
        Period whole = new Period(RandomEvents.FIRST, RandomEvents.FIRST.plusYears(1));
        business.in(
                tenant,
                () -> journal.of(whole).stream()
                        .map(entry -> entry.day() + " " + entry.document() + " " + entry.postings())
                        .sorted()
                        .forEach(said::add));
        return said;
    }

    /** What one event may have broken. */
    private void holds(RandomEvents.Year year, UUID customer, int event) {
        String where = "seed " + SEED + ", event " + event;
        LocalDate day = year.day();
        assertEquals(
                year.books.documents + " " + year.books.documents + " " + year.books.credits + " " + year.books.credits
                        + " " + year.books.net + " " + year.books.taxes,
                business.one("""
                        with series as (
                          select kind = 'credit' as back, series, count(*) as documents, max(number) as numbers,
                                 sum(subtotal_minor) as net, sum(tax_minor) as tax from invoice_issue group by 1, 2)
                        select concat_ws(' ', coalesce(sum(documents) filter (where not back), 0),
                                 coalesce(sum(numbers) filter (where not back), 0),
                                 coalesce(sum(documents) filter (where back), 0),
                                 coalesce(sum(numbers) filter (where back), 0),
                                 coalesce(sum(case when back then -net else net end), 0),
                                 coalesce(sum(case when back then -tax else tax end), 0))
                          from series"""),
                where);
        OwedBy now = owed.of(customer, day);
        long balance = year.books.balance(customer) - debts.givenUp(customer);
        assertEquals(balance, now.all().minus(now.credit()).minor(), where);
        assertEquals("0", business.one(BEYOND.formatted(customer)), where);
    }

    /** Every invariant of documents and books, and every customer. */
    private void holdsWhole(RandomEvents.Year year) {
        LocalDate day = year.day();
        books.check();
        for (UUID customer : year.customers()) {
            OwedBy now = owed.of(customer, day);
            long balance = year.books.balance(customer) - debts.givenUp(customer);
            assertEquals(balance, now.all().minus(now.credit()).minor());
        }
        List<JournalEntry> entries = journal.of(new Period(RandomEvents.FIRST, day));
        assertTrue(entries.stream().allMatch(JournalEntry::balances));
        OwedBy all = owed.all(day);
        assertEquals(all.open().minor(), sum(entries, "receivable"));
        assertEquals(all.beyond().minus(all.credit()).minor(), sum(entries, "deposits"));
        Map<UUID, EarnedOn.Plan> plans = earned.on(day).plans().stream()
                .collect(Collectors.toMap(EarnedOn.Plan::agreementId, Function.identity()));
        for (PlanByHand plan : year.sold) {
            EarnedOn.Plan said = plans.get(plan.sold.id());
            assertEquals(
                    plan.earned(day) + " of " + plan.invoiced(day),
                    said == null
                            ? "0 of 0"
                            : said.earned().ever().minor() + " of "
                                    + said.invoiced().minor());
        }
        assertEquals(-year.sold.stream().mapToLong(plan -> plan.earned(day)).sum(), sum(entries, "revenue-plan"));
        long givenUp = Long.parseLong(business.one("select coalesce(sum(amount_minor), 0) from write_off_tax"));
        assertEquals(givenUp - year.books.taxes, sum(entries, "tax "));
    }

    private static long sum(List<JournalEntry> entries, String role) {
        return entries.stream()
                .flatMap(entry -> entry.postings().stream())
                .filter(one -> one.role().startsWith(role))
                .mapToLong(one -> one.amount().minor())
                .sum();
    }
}
