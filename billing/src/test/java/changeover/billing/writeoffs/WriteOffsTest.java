package changeover.billing.writeoffs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.BooksHold;
import changeover.billing.invoices.Credits;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.ledger.Journal;
import changeover.billing.ledger.Period;
import changeover.billing.ledger.TaxReport;
import changeover.billing.ledger.TaxReports;
import changeover.billing.payments.InvoiceFilter;
import changeover.billing.payments.InvoiceLists;
import changeover.billing.payments.NewPayment;
import changeover.billing.payments.Owed;
import changeover.billing.payments.OwedBy;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Statements;
import changeover.billing.payments.Undoing;
import changeover.billing.payments.Way;
import changeover.billing.periods.Periods;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A debt of 249.00 and its taxes (12.45 and 24.84) given up in parts, paid after all, credited; answers written by hand. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class WriteOffsTest {

    static final LocalDate DAY = LocalDate.of(2026, 4, 1);
    static final Period ALL = new Period(LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31));

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
    Statements statements;

    @Inject
    InvoiceLists lists;

    @Inject
    Journal journal;

    @Inject
    TaxReports taxes;

    @Inject
    Periods periods;

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

    private UUID giveUp(UUID invoice, LocalDate day, @Nullable String amount) {
        return writeOffs.giveUp(invoice, day, amount == null ? null : Money.of(amount, "CAD"), "Moved away");
    }

    private String said(UUID invoice) {
        return writeOffs.ofInvoice(invoice).stream()
                .map(one -> one.amount().decimal() + " ("
                        + one.shares().stream()
                                .map(share -> share.amount().decimal())
                                .collect(Collectors.joining(" "))
                        + ") lost " + one.lost().decimal())
                .collect(Collectors.joining(", "));
    }

    private String stands(UUID customer, LocalDate day) {
        OwedBy by = owed.of(customer, day);
        return by.open().decimal() + " credit " + by.credit().decimal();
    }

    private void holds() {
        books.check();
        assertTrue(journal.of(ALL).stream()
                .allMatch(entry -> entry.postings().stream()
                                .mapToLong(one -> one.amount().minor())
                                .sum()
                        == 0));
    }

    private String givenUpOfTheReport() {
        return taxes.of(ALL).rows().stream()
                .map(TaxReport.Row::givenUp)
                .map(one -> one.base().decimal() + " " + one.tax().decimal())
                .collect(Collectors.joining(", "));
    }

    /**
     * 12.45 × 100 / 286.29 = 4.35 and 24.84 × 100 / 286.29 = 8.68; the rest of the debt takes the rest of the taxes; of
     * 236.29 that stand after 50.00 came, 10.28 and 20.50.
     */
    @Test
    void a_debt_is_given_up_in_parts_paid_after_all_and_credited() {
        business.in(business.quebec(), () -> {
            UUID customer = business.customer("Ida Roe");
            UUID id = invoice(customer, DAY, "249.00");
            giveUp(id, DAY.plusDays(100), "100.00");
            assertEquals("100.00 (4.35 8.68) lost 86.97", said(id));
            assertEquals("186.29 credit 0.00", stands(customer, DAY.plusDays(100)));
            assertEquals("286.29 credit 0.00", stands(customer, DAY.plusDays(99)));
            holds();
            giveUp(id, DAY.plusDays(110), null);
            assertEquals("100.00 (4.35 8.68) lost 86.97, 186.29 (8.10 16.16) lost 162.03", said(id));
            assertEquals("0.00 credit 0.00", stands(customer, DAY.plusDays(110)));
            assertEquals("249.00 12.45, 249.00 24.84", givenUpOfTheReport());
            assertEquals(
                    "GIVEN_UP",
                    lists.rows(InvoiceFilter.ofCustomer(customer), DAY.plusDays(110))
                            .getFirst()
                            .standing()
                            .name());
            holds();
            UUID payment = pay(customer, DAY.plusDays(120), "50.00");
            assertEquals(
                    "100.00 (4.35 8.68) lost 86.97, 186.29 (8.10 16.16) lost 162.03, -50.00 (-2.17 -4.34) lost -43.49",
                    said(id));
            assertEquals("0.00 credit 0.00", stands(customer, DAY.plusDays(120)));
            assertEquals(
                    "50.00",
                    owed.item(id, DAY.plusDays(120)).orElseThrow().paid().decimal());
            holds();
            payments.undo(payment, Undoing.How.BOUNCED, DAY.plusDays(121), "no funds");
            assertEquals("50.00 credit 0.00", stands(customer, DAY.plusDays(121)));
            holds();
            UUID credit = credits.inFull(id, DAY.plusDays(130), new Wording("why", "why"));
            invoices.issue(credit, DAY.plusDays(130));
            assertEquals("0.00 credit 0.00", stands(customer, DAY.plusDays(130)));
            assertEquals("0.00 0.00, 0.00 0.00", givenUpOfTheReport());
            assertEquals(
                    "before, invoice, given-up, given-up, payment, taken-back, returned, credit, taken-back, taken-back",
                    statements.of(customer, DAY, DAY.plusDays(200)).stream()
                            .map(row -> row.what())
                            .collect(Collectors.joining(", ")));
            holds();
        });
    }

    @Test
    void it_was_too_soon_and_is_open_again_from_its_own_day() {
        business.in(business.quebec(), () -> {
            UUID customer = business.customer("Ida Roe");
            UUID id = invoice(customer, DAY, "249.00");
            UUID given = giveUp(id, DAY.plusDays(100), "86.29");
            check(() -> writeOffs.takeBack(given, DAY.plusDays(99), "They called"), "write-off.taken-back-before");
            writeOffs.takeBack(given, DAY.plusDays(105), "They called");
            assertEquals("200.00 credit 0.00", stands(customer, DAY.plusDays(104)));
            assertEquals("286.29 credit 0.00", stands(customer, DAY.plusDays(105)));
            assertEquals("86.29 (3.75 7.49) lost 75.05, -86.29 (-3.75 -7.49) lost -75.05", said(id));
            check(() -> writeOffs.takeBack(given, DAY.plusDays(106), "They called"), "write-off.taken-back-already");
            check(() -> writeOffs.takeBack(UUID.randomUUID(), DAY, "They called"), "write-off.not-found");
            holds();
        });
    }

    @Test
    void never_more_than_is_open_and_never_without_a_reason() {
        business.in(business.quebec(), () -> {
            UUID customer = business.customer("Ida Roe");
            UUID id = invoice(customer, DAY, "100.00");
            pay(customer, DAY.plusDays(10), "100.00");
            check(() -> giveUp(id, DAY.plusDays(20), "14.99"), "write-off.beyond-open");
            check(() -> giveUp(id, DAY.plusDays(5), "15.00"), "write-off.beyond-open");
            check(() -> giveUp(id, DAY.minusDays(1), null), "write-off.before-its-day");
            check(() -> giveUp(id, LocalDate.of(2226, 1, 1), null), "write-off.day-to-come");
            check(() -> giveUp(UUID.randomUUID(), DAY, null), "write-off.not-issued");
            check(() -> writeOffs.giveUp(id, DAY, null, " x "), "write-off.why");
            check(() -> giveUp(id, DAY.plusDays(20), "0.00"), "write-off.nothing");
            giveUp(id, DAY.plusDays(20), "14.98");
            check(() -> giveUp(id, DAY.plusDays(20), null), "write-off.nothing");
            periods.close(DAY.plusDays(30));
            UUID other = invoice(customer, DAY.plusDays(31), "100.00");
            check(() -> giveUp(other, DAY.plusDays(30), null), "period.closed");
            holds();
        });
    }

    private static void check(org.junit.jupiter.api.function.Executable verb, String expected) {
        assertEquals(expected, assertThrows(Refused.class, verb).first().code());
    }
}
