package changeover.billing.payments;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.fees.FeeKind;
import changeover.billing.fees.Fees;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.ledger.Journal;
import changeover.billing.ledger.Period;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refused;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A cheque comes back: the invoice is open again and the place's fee is asked once, taxed as the table says. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class ReturnsTest {

    static final LocalDate DAY = LocalDate.of(2026, 4, 1);

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    Payments payments;

    @Inject
    Refunds refunds;

    @Inject
    Today today;

    @Inject
    Returns returns;

    @Inject
    Fees fees;

    @Inject
    Owed owed;

    @Inject
    Journal journal;

    private UUID cheque(String name) {
        UUID customer = business.customer(name);
        UUID id = drafts.write(List.of(SomeDrafts.plan(customer, business.home(customer, "QC"), "249.00")))
                .getFirst();
        invoices.issue(id, DAY);
        return payments.take(
                new NewPayment(customer, DAY, Way.CHEQUE, Money.of("286.29", "CAD"), "14", null, List.of()));
    }

    @Test
    void without_a_row_for_the_place_nothing_is_asked() {
        business.in(business.quebec(), () -> {
            UUID cheque = cheque("Ida Roe");
            fees.set(FeeKind.RETURNED, "CA-ON", DAY, Money.of("45.00", "CAD"), "Agreement, clause 9");
            assertTrue(returns.back(cheque, DAY.plusDays(5), "No funds").isEmpty());
            assertEquals("286.29", owed.all(DAY.plusDays(5)).open().decimal());
        });
    }

    @Test
    void the_fee_is_drafted_once_with_its_tax_and_its_own_account() {
        business.in(business.quebec(), () -> {
            UUID cheque = cheque("Ida Roe");
            fees.set(FeeKind.RETURNED, "ca-qc", DAY, Money.of("20.00", "CAD"), "Agreement, clause 9");
            UUID draft = returns.back(cheque, DAY.plusDays(5), "No funds").orElseThrow();
            assertThrows(Refused.class, () -> returns.back(cheque, DAY.plusDays(6), "Again"));
            invoices.issue(draft, DAY.plusDays(5));
            assertEquals("309.29", owed.all(DAY.plusDays(5)).open().decimal(), "286.29 and 20.00 with 1.00 and 2.00");
            assertEquals(
                    "cheque -286.29, receivable 286.29; receivable 23.00, fees -20.00, tax gst 123456789 RT0001 -1.00,"
                            + " tax qst 1234567890 TQ0001 -2.00",
                    journal.of(new Period(DAY.plusDays(5), DAY.plusDays(5))).stream()
                            .map(entry -> entry.postings().stream()
                                    .map(one -> one.role() + " " + one.amount().decimal())
                                    .collect(Collectors.joining(", ")))
                            .sorted()
                            .collect(Collectors.joining("; ")));
        });
    }

    @Test
    void a_fee_needs_a_source_and_ends_with_nought() {
        business.in(business.quebec(), () -> {
            Refused refused = assertThrows(
                    Refused.class, () -> fees.set(FeeKind.RETURNED, "CA-QC", DAY, Money.of("20.00", "CAD"), "clause"));
            assertEquals("fee.source-missing", refused.first().code());
            fees.set(FeeKind.RETURNED, "CA-QC", DAY, Money.of("20.00", "CAD"), "Agreement, clause 9");
            fees.set(FeeKind.RETURNED, "CA-QC", DAY.plusDays(9), Money.of("0.00", "CAD"), "Asked no more");
            assertTrue(fees.on(FeeKind.RETURNED, "CA-QC", DAY.plusDays(8)).isPresent());
            assertTrue(fees.on(FeeKind.RETURNED, "CA-QC", DAY.plusDays(9)).isEmpty());
            assertTrue(fees.on(FeeKind.REMINDER, "CA-QC", DAY).isEmpty());
        });
    }

    /** A transfer of ours that comes back is no cheque of theirs. */
    @Test
    void money_given_back_that_comes_back_costs_the_customer_nothing() {
        business.in(business.quebec(), () -> {
            UUID customer = business.customer("Ida Roe");
            business.home(customer, "QC");
            fees.set(FeeKind.RETURNED, "CA-QC", DAY, Money.of("20.00", "CAD"), "Agreement, clause 9");
            payments.take(new NewPayment(customer, DAY, Way.TRANSFER, Money.of("50.00", "CAD"), null, null, List.of()));
            UUID refund = refunds.give(
                    new NewRefund(customer, DAY.plusDays(1), Way.TRANSFER, Money.of("50.00", "CAD"), null, null));
            assertTrue(returns.back(refund, DAY.plusDays(2), "Account closed").isEmpty());
            assertEquals("50.00", owed.of(customer, DAY.plusDays(2)).credit().decimal());
        });
    }

    @Test
    void no_payment_is_undone_on_a_day_to_come() {
        business.in(business.quebec(), () -> {
            UUID cheque = cheque("Ida Roe");
            for (LocalDate day : List.of(today.day().plusDays(1), LocalDate.of(9999, 12, 31))) {
                Refused refused = assertThrows(Refused.class, () -> returns.back(cheque, day, "No funds"));
                assertEquals("payment.undone-to-come", refused.first().code());
            }
        });
    }
}
