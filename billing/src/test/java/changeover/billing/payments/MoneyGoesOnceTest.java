package changeover.billing.payments;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.billing.ABusiness;
import changeover.billing.BooksHold;
import changeover.billing.invoices.Credits;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.writeoffs.WriteOffs;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Money that was set free goes one way: back, or to a document, or into the deposit it came from. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class MoneyGoesOnceTest {

    static final LocalDate DAY = LocalDate.of(2026, 4, 1);
    static final Wording WHY = new Wording("why", "why");

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
    Refunds refunds;

    @Inject
    Deposits deposits;

    @Inject
    WriteOffs writeOffs;

    @Inject
    Owed owed;

    @Inject
    BooksHold books;

    private record Case(UUID customer, UUID home) {}

    private Case somebody() {
        UUID customer = business.customer("Ida Roe");
        return new Case(customer, business.home(customer, "QC"));
    }

    private UUID invoice(Case one, LocalDate day, String net) {
        UUID id = drafts.write(List.of(SomeDrafts.plan(one.customer(), one.home(), net)))
                .getFirst();
        invoices.issue(id, day);
        return id;
    }

    private UUID deposit(Case one, String amount) {
        return deposits.take(
                new NewDeposit(one.customer(), one.home(), null, null, DAY, Way.CARD, money(amount), "4410", "Boiler"));
    }

    private UUID pay(Case one, LocalDate day, String amount, NewPayment.Part... parts) {
        return payments.take(
                new NewPayment(one.customer(), day, Way.TRANSFER, money(amount), null, null, List.of(parts)));
    }

    private void refund(Case one, LocalDate day, String amount) {
        refunds.give(new NewRefund(one.customer(), day, Way.CARD, money(amount), null, null));
    }

    private static Money money(String amount) {
        return Money.of(amount, "CAD");
    }

    private String open(UUID invoice, LocalDate day) {
        OpenItem item = owed.item(invoice, day).orElseThrow();
        return item.open().decimal() + " given up " + item.givenUp().decimal();
    }

    private static void check(org.junit.jupiter.api.function.Executable verb, String expected) {
        assertEquals(expected, assertThrows(Refused.class, verb).first().code());
    }

    /** The credit note sets the deposit free again: it is the deposit's money, and goes back under its name alone. */
    @Test
    void a_deposit_freed_by_a_credit_note_goes_back_once() {
        business.in(business.quebec(), () -> {
            Case one = somebody();
            UUID id = deposit(one, "286.29");
            UUID invoice = invoice(one, DAY.plusDays(1), "249.00");
            deposits.apply(id, invoice, DAY.plusDays(1), null);
            invoices.issue(credits.inFull(invoice, DAY.plusDays(2), WHY), DAY.plusDays(2));
            assertEquals("286.29", deposits.of(id).orElseThrow().left().decimal());
            check(() -> refund(one, DAY.plusDays(3), "286.29"), "payment.refund-beyond-credit");
            deposits.giveBack(id, DAY.plusDays(3), Way.CARD, money("286.29"), null);
            payments.settle(one.customer(), DAY.plusDays(4));
            check(() -> deposits.giveBack(id, DAY.plusDays(4), Way.CARD, money("0.01"), null), "deposit.beyond-left");
            check(() -> refund(one, DAY.plusDays(4), "0.01"), "payment.refund-beyond-credit");
            books.check();
        });
    }

    /** On the day it paid the invoice it could not go back, though it is free again since. */
    @Test
    void a_deposit_goes_nowhere_on_a_day_when_it_paid_something_else() {
        business.in(business.quebec(), () -> {
            Case one = somebody();
            UUID id = deposit(one, "286.29");
            UUID invoice = invoice(one, DAY.plusDays(1), "249.00");
            UUID other = invoice(one, DAY.plusDays(1), "10.00");
            deposits.apply(id, invoice, DAY.plusDays(5), null);
            invoices.issue(credits.inFull(invoice, DAY.plusDays(9), WHY), DAY.plusDays(9));
            check(() -> deposits.giveBack(id, DAY.plusDays(3), Way.CARD, money("1.00"), null), "deposit.beyond-left");
            check(() -> deposits.apply(id, other, DAY.plusDays(3), money("1.00")), "deposit.beyond-left");
            books.check();
        });
    }

    /** A credit note of one series lies before an invoice of the other that was written later. */
    @Test
    void what_was_set_free_on_a_later_day_is_not_set_free_again() {
        business.in(business.quebec(), () -> {
            Case one = somebody();
            UUID paid = invoice(one, DAY, "100.00");
            pay(one, DAY, "114.98", new NewPayment.Part(paid, money("114.98")));
            invoices.issue(credits.inPart(paid, DAY.plusDays(1), Map.of(1, money("50.00")), WHY), DAY.plusDays(1));
            payments.settle(one.customer(), DAY.plusDays(5));
            payments.settle(one.customer(), DAY.plusDays(3));
            assertEquals("0.00 given up 0.00", open(paid, DAY.plusDays(6)));
            check(() -> refund(one, DAY.plusDays(6), "57.50"), "payment.refund-beyond-credit");
            refund(one, DAY.plusDays(6), "57.49");
            books.check();
        });
    }

    /** What the person kept beside an open document is no money for a debt that was given up. */
    @Test
    void what_was_given_up_is_opened_by_money_that_nothing_else_waits_for() {
        business.in(business.quebec(), () -> {
            Case one = somebody();
            UUID lost = invoice(one, DAY, "100.00");
            writeOffs.giveUp(lost, DAY.plusDays(1), null, "Moved away");
            UUID first = invoice(one, DAY.plusDays(2), "100.00");
            UUID second = invoice(one, DAY.plusDays(2), "100.00");
            pay(one, DAY.plusDays(3), "200.00", new NewPayment.Part(first, money("114.98")));
            assertEquals("0.00 given up 114.98", open(lost, DAY.plusDays(3)));
            assertEquals("114.98 given up 0.00", open(second, DAY.plusDays(3)));
            pay(one, DAY.plusDays(4), "60.00", new NewPayment.Part(second, money("29.96")));
            assertEquals("0.00 given up 84.94", open(lost, DAY.plusDays(4)));
            books.check();
        });
    }

    /** A payment that only makes good what went back of one that did not hold pays no debt that was given up. */
    @Test
    void money_owed_for_a_payment_that_did_not_hold_opens_nothing() {
        business.in(business.quebec(), () -> {
            Case one = somebody();
            UUID bounced = pay(one, DAY, "50.00");
            refund(one, DAY.plusDays(2), "50.00");
            UUID lost = invoice(one, DAY.plusDays(2), "100.00");
            writeOffs.giveUp(lost, DAY.plusDays(3), null, "Moved away");
            payments.undo(bounced, Undoing.How.BOUNCED, DAY.plusDays(3), "no funds");
            pay(one, DAY.plusDays(4), "50.00");
            assertEquals("0.00 given up 114.98", open(lost, DAY.plusDays(4)));
            books.check();
        });
    }

    /** The cheque had come before the debt was given up, and was noted after. */
    @Test
    void money_of_an_earlier_day_pays_what_was_given_up_since() {
        business.in(business.quebec(), () -> {
            Case one = somebody();
            UUID lost = invoice(one, DAY, "100.00");
            writeOffs.giveUp(lost, DAY.plusDays(5), null, "Moved away");
            pay(one, DAY.plusDays(1), "50.00");
            assertEquals("64.98 given up 0.00", open(lost, DAY.plusDays(1)));
            assertEquals("0.00 given up 64.98", open(lost, DAY.plusDays(5)));
            check(() -> refund(one, DAY.plusDays(6), "0.01"), "payment.refund-beyond-credit");
            books.check();
        });
    }
}
