package changeover.billing.reminders;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.fees.FeeKind;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.notices.OutboxMessage;
import changeover.billing.payments.NewPayment;
import changeover.billing.payments.Way;
import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.DayPassed;
import changeover.contracts.money.Money;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Who is reminded, once a step, and who is not: those who paid an hour ago, dispute it, or have a credit. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class RemindersTest extends LateBills {

    @Test
    void one_letter_a_customer_and_each_step_once() {
        business.in(business.quebec(), () -> {
            Step.usual().forEach(ladders::keep);
            UUID ida = business.customer("Ida Roe", "en", "each");
            late(ida, 25, "100.00");
            late(ida, 9, "20.00");
            late(ida, 3, "5.00");
            late(business.customer("Jo Poe"), 2, "100.00");
            List<DueReminder> all = due.on(today.day());
            assertEquals(1, all.size());
            assertEquals(
                    "friendly 137.98",
                    all.getFirst().step().tone().code() + " "
                            + all.getFirst().total().decimal());
            assertEquals(1, reminders.write());
            assertEquals(0, reminders.write(), "no step twice");
            OutboxMessage letter = written(ida).getFirst();
            assertEquals("A reminder: $137.98 is still open", letter.subject());
            assertTrue(letter.body().startsWith("Hello Ida Roe,"), letter.body());
            assertTrue(letter.body().contains("$114.98\n"), letter.body());
            assertEquals(2, letter.attached());
        });
    }

    @Test
    void in_french_to_those_who_read_french() {
        business.in(business.quebec(), () -> {
            Step.usual().forEach(ladders::keep);
            UUID customer = business.customer("Ida Roe");
            late(customer, 9, "100.00");
            reminders.write(List.of(customer));
            assertEquals(
                    "Un rappel\u00a0: 114,98\u00a0$ reste à payer",
                    written(customer).getFirst().subject());
        });
    }

    @Test
    void whoever_pays_before_it_leaves_gets_none_and_may_be_reminded_of_the_rest() {
        UUID tenant = business.quebec();
        UUID customer = business.in(tenant, () -> {
            ladders.keep(Step.usual().getLast());
            fees.set(
                    FeeKind.REMINDER,
                    "CA-QC",
                    LocalDate.of(2020, 1, 1),
                    Money.of("5.00", "CAD"),
                    "Agreement, clause 9");
            UUID one = business.customer("Ida Roe");
            late(one, 50, "100.00");
            reminders.write();
            assertEquals("1", business.one("select count(*) from fee_charged"));
            return one;
        });
        papers.makePending(tenant, 10);
        business.in(tenant, () -> pay(customer, "14.98"));
        business.in(tenant, () -> letters.batch());
        business.in(tenant, () -> {
            assertEquals(
                    OutboxMessage.Standing.WITHDRAWN,
                    written(customer).getFirst().standing());
            assertEquals("1", business.one("select count(*) from invoice_discard"), "the fee is not asked for");
            assertEquals(
                    RemindersSent.Came.WITHDRAWN,
                    sent.newest(customer, 5).getFirst().came());
            assertEquals("100.00", due.on(today.day()).getFirst().total().decimal());
            pay(customer, "100.00");
            assertEquals(List.of(), due.on(today.day()));
            assertEquals(0, checked());
        });
    }

    @Test
    void a_dispute_and_a_credit_hold_it_back() {
        business.in(business.quebec(), () -> {
            Step.usual().forEach(ladders::keep);
            UUID customer = business.customer("Ida Roe");
            UUID disputed = late(customer, 9, "100.00");
            UUID hold = holds.hold(customer, disputed, Hold.Why.DISPUTE, "The pad was wet", null);
            assertEquals(List.of(), due.on(today.day()));
            late(customer, 9, "10.00");
            assertEquals("11.50", due.on(today.day()).getFirst().total().decimal());
            holds.end(hold);
            assertEquals("126.48", due.on(today.day()).getFirst().total().decimal());
            UUID promised = holds.hold(
                    customer, null, Hold.Why.PROMISE, "On Friday", today.day().plusDays(3));
            assertEquals(List.of(), due.on(today.day()));
            assertEquals(1, due.on(today.day().plusDays(4)).size());
            holds.end(promised);
            UUID draft = drafts.write(List.of(SomeDrafts.plan(customer, business.home(customer, "QC"), "150.00")))
                    .getFirst();
            payments.take(new NewPayment(
                    customer,
                    today.day(),
                    Way.CARD,
                    Money.of("150.00", "CAD"),
                    null,
                    null,
                    List.of(new NewPayment.Part(draft, Money.of("1.00", "CAD")))));
            assertEquals(List.of(), due.on(today.day()), "what is kept for them would pay it");
        });
    }

    @Test
    void by_themselves_only_where_the_business_says_so_and_never_for_days_gone_by() {
        UUID tenant = business.quebec();
        business.in(tenant, () -> {
            Step.usual().forEach(ladders::keep);
            UUID customer = business.customer("Ida Roe");
            late(customer, 9, "100.00");
            days.fire(new DayPassed(tenant.toString(), today.day()));
            assertEquals(0, written(customer).size(), "a list with a yes until the business says otherwise");
            ladders.go(Ladders.How.DAILY);
            days.fire(new DayPassed(tenant.toString(), today.day().minusDays(1)));
            assertEquals(0, written(customer).size());
            days.fire(new DayPassed(tenant.toString(), today.day()));
            days.fire(new DayPassed(tenant.toString(), today.day()));
            assertEquals(1, written(customer).size());
        });
    }
}
