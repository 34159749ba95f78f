package changeover.billing.payments;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.billing.ABusiness;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refused;
import io.agroal.api.AgroalDataSource;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Money goes back in cash and on days gone by, and never twice. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class RefundsTest {

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
    Owed owed;

    @Inject
    AgroalDataSource datasource;

    @Test
    void what_went_back_pays_nothing_any_more_whatever_the_day() {
        business.in(business.quebec(), () -> {
            UUID customer = business.customer("Ida Roe");
            payments.take(new NewPayment(customer, DAY, Way.CARD, Money.of("50.02", "CAD"), null, null, List.of()));
            refunds.give(new NewRefund(customer, DAY.plusDays(9), Way.CASH, Money.of("50.00", "CAD"), "R-1", null));
            assertEquals(
                    "0.00",
                    owed.of(customer, DAY.plusDays(9)).credit().decimal(),
                    "the whole credit, rounded to five cents");
            invoices.issue(
                    drafts.write(List.of(SomeDrafts.plan(customer, business.home(customer, "QC"), "10.00")))
                            .getFirst(),
                    DAY.plusDays(2));
            assertEquals("0.00", payments.settle(customer, DAY.plusDays(3)).decimal());
            Refused refused = assertThrows(
                    Refused.class,
                    () -> refunds.give(
                            new NewRefund(customer, DAY.plusDays(3), Way.CARD, Money.of("0.01", "CAD"), null, null)));
            assertEquals("payment.refund-beyond-credit", refused.first().code(), "kept then, gone since");
            assertEquals("1 0", checked());
        });
    }

    private String checked() {
        try (var connection = datasource.getConnection()) {
            PaymentChecks.Found found = PaymentChecks.refunds(connection);
            return found.rows() + " " + found.bad();
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
    }
}
