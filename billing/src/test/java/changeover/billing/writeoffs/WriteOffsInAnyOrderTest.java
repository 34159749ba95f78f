package changeover.billing.writeoffs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ABusiness;
import changeover.billing.BooksHold;
import changeover.billing.invoices.Credits;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.payments.NewPayment;
import changeover.billing.payments.Owed;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Undoing;
import changeover.billing.payments.Way;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Debts given up, paid, sent back and credited in any order. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class WriteOffsInAnyOrderTest {

    static final LocalDate DAY = LocalDate.of(2026, 4, 1);
    static final Currency CAD = Currency.getInstance("CAD");

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    Credits credits;

    @Inject
    Payments payments;

    @Inject
    Owed owed;

    @Inject
    WriteOffs writeOffs;

    @Inject
    BooksHold books;

    private UUID invoice(UUID customer, LocalDate day, String net) {
        UUID id = drafts.write(List.of(SomeDrafts.plan(customer, business.home(customer, "QC"), net)))
                .getFirst();
        invoices.issue(id, day);
        return id;
    }

    private UUID pay(UUID customer, LocalDate day, String amount) {
        return payments.take(
                new NewPayment(customer, day, Way.TRANSFER, Money.of(amount, "CAD"), null, null, List.of()));
    }

    /** Whatever comes in whatever order: the books balance, no tax is given up beyond its own, nothing is open below nought. */
    @Test
    void whatever_happens_the_books_hold() {
        long seed = System.nanoTime();
        System.out.println("write-offs seed=" + seed);
        Random random = new Random(seed);
        business.in(business.quebec(), () -> {
            UUID customer = business.customer("Ida Roe");
            List<UUID> issued = new ArrayList<>();
            List<UUID> paid = new ArrayList<>();
            for (int event = 0; event < 60; event++) {
                LocalDate day = DAY.plusDays(event);
                UUID one = issued.isEmpty() ? null : issued.get(random.nextInt(issued.size()));
                switch (one == null ? 0 : random.nextInt(6)) {
                    case 0 ->
                        issued.add(invoice(customer, day, 1 + random.nextInt(400) + "." + (10 + random.nextInt(90))));
                    case 1, 2 ->
                        part(random, one, day).ifPresent(amount -> writeOffs.giveUp(one, day, amount, "Moved away"));
                    case 3 -> paid.add(pay(customer, day, 1 + random.nextInt(300) + ".37"));
                    case 4 -> {
                        if (!paid.isEmpty()) {
                            payments.undo(paid.removeLast(), Undoing.How.BOUNCED, day, "no funds");
                        }
                    }
                    default -> credited(one, day);
                }
                books.check();
                assertEquals("0", business.one(BEYOND), "seed " + seed + " event " + event);
            }
        });
    }

    private java.util.Optional<Money> part(Random random, UUID invoice, LocalDate day) {
        Money open = owed.item(invoice, day).orElseThrow().open();
        return open.isZero()
                ? java.util.Optional.empty()
                : java.util.Optional.of(new Money(1 + random.nextLong(open.minor()), CAD));
    }

    private void credited(UUID invoice, LocalDate day) {
        if (business.one("select count(*) from invoice where credits_id = '" + invoice + "'")
                .equals("0")) {
            invoices.issue(credits.inFull(invoice, day, new Wording("why", "why")), day);
        }
    }

    private static final String BEYOND = """
            select count(*) from (
              select w.invoice_id, sum(w.amount_minor) as minor from write_off w group by 1) g
              join invoice_issue s on s.invoice_id = g.invoice_id
             where g.minor < 0 or g.minor > s.total_minor - coalesce((
                     select sum(c.total_minor) from invoice_issue c where c.credits_id = s.invoice_id), 0)
                or (select sum(x.amount_minor) from write_off_tax x join write_off w on w.id = x.write_off_id
                     where w.invoice_id = g.invoice_id) not between 0 and s.tax_minor""";
}
