package changeover.billing.payments;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ABusiness;
import changeover.billing.BooksHold;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import io.agroal.api.AgroalDataSource;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Whatever the order in which money is noted, a document is paid once. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PaidOnceTest {

    static final LocalDate FIRST = LocalDate.of(2026, 4, 1);
    static final LocalDate CHEQUE = LocalDate.of(2026, 4, 20);
    static final LocalDate CARD = LocalDate.of(2026, 4, 25);

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    Payments payments;

    @Inject
    Owed owed;

    @Inject
    BooksHold books;

    @Inject
    AgroalDataSource datasource;

    /** It charges no taxes, so that the amounts are those of the lines. */
    private UUID small() {
        return business.open("CA-QC", "fr", null, null, true);
    }

    private UUID invoice(UUID customer, LocalDate day, String net) {
        UUID id = drafts.write(List.of(SomeDrafts.plan(customer, business.home(customer, "QC"), net)))
                .getFirst();
        invoices.issue(id, day);
        return id;
    }

    private UUID pay(UUID customer, LocalDate day, Way way, String amount, NewPayment.Part... parts) {
        return payments.take(new NewPayment(customer, day, way, money(amount), null, null, List.of(parts)));
    }

    private static Money money(String amount) {
        return Money.of(amount, "CAD");
    }

    private String paid(UUID invoice) {
        return owed.item(invoice, CARD).orElseThrow().paid().decimal();
    }

    private String credit(UUID customer) {
        return owed.of(customer, CARD).credit().decimal();
    }

    @Test
    void a_cheque_noted_late_pays_what_is_open_still() {
        business.in(small(), () -> {
            UUID customer = business.customer("Ida Roe");
            UUID first = invoice(customer, FIRST, "100.00");
            UUID second = invoice(customer, FIRST.plusDays(1), "100.00");
            pay(customer, CARD, Way.CARD, "100.00", new NewPayment.Part(first, money("100.00")));
            pay(customer, CHEQUE, Way.CHEQUE, "100.00");
            assertEquals("100.00 and 100.00", paid(first) + " and " + paid(second));
            pay(customer, CHEQUE, Way.CHEQUE, "30.00");
            assertEquals("30.00", credit(customer));
            books.check();
        });
    }

    @Test
    void credit_used_on_an_earlier_day_pays_nothing_that_was_paid_since() {
        business.in(small(), () -> {
            UUID customer = business.customer("Ida Roe");
            pay(customer, FIRST, Way.TRANSFER, "100.00");
            UUID first = invoice(customer, FIRST.plusDays(1), "100.00");
            pay(customer, CARD, Way.CARD, "100.00", new NewPayment.Part(first, money("100.00")));
            assertEquals("0.00", payments.settle(customer, CHEQUE).decimal());
            assertEquals("100.00", paid(first));
            UUID second = invoice(customer, FIRST.plusDays(2), "40.00");
            assertEquals("40.00", payments.settle(customer, CHEQUE).decimal());
            assertEquals("40.00 and 60.00", paid(second) + " and " + credit(customer));
            books.check();
        });
    }

    @Test
    void a_document_named_twice_is_paid_once() {
        business.in(small(), () -> {
            UUID customer = business.customer("Ida Roe");
            UUID id = invoice(customer, FIRST, "60.00");
            var part = new NewPayment.Part(id, money("50.00"));
            pay(customer, CHEQUE, Way.CARD, "100.00", part, part);
            assertEquals("60.00 and 40.00", paid(id) + " and " + credit(customer));
            books.check();
        });
    }

    /** Money meant for a document may come the day before it. */
    @Test
    void a_chosen_document_is_paid_by_money_that_came_before_it() {
        business.in(small(), () -> {
            UUID customer = business.customer("Ida Roe");
            UUID first = invoice(customer, FIRST, "100.00");
            UUID second = invoice(customer, CHEQUE.plusDays(1), "200.00");
            pay(customer, CHEQUE, Way.CHEQUE, "200.00", new NewPayment.Part(second, money("200.00")));
            assertEquals("0.00 and 200.00", paid(first) + " and " + paid(second));
            books.check();
        });
    }

    @Test
    void a_document_paid_twice_is_found() {
        business.in(small(), () -> {
            UUID customer = business.customer("Ida Roe");
            UUID first = invoice(customer, FIRST, "100.00");
            pay(customer, CHEQUE, Way.CARD, "100.00");
            UUID beyond = pay(customer, CARD, Way.CARD, "100.00");
            assertEquals(0, bad());
            business.execute("insert into payment_allocation (payment_id, invoice_id, amount_minor, day) values ('"
                    + beyond + "', '" + first + "', 1, '" + CARD + "')");
            assertEquals(1, bad());
        });
    }

    private long bad() {
        try (var connection = datasource.getConnection()) {
            return PaymentChecks.documents(connection).bad();
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
    }
}
