package changeover.billing.reminders;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.notices.OutboxMessage;
import changeover.billing.payments.NewRefund;
import changeover.billing.payments.Way;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** What is kept for a customer is taken off what a reminder asks for. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class LessWhatIsKeptTest extends LateBills {

    /** A plan of 286.29 paid, then 156.22 and its taxes, 179.62, taken back; a visit of 286.29 is late: 106.67 is asked for. */
    @Test
    void what_is_kept_is_taken_off_what_is_due_first_and_the_letter_says_so() {
        UUID tenant = business.quebec();
        UUID customer = business.in(tenant, () -> {
            Step.usual().forEach(ladders::keep);
            UUID one = business.customer("Ida Roe", "en", "each");
            UUID plan = late(one, 10, "249.00");
            pay(one, "286.29");
            credit(plan, "156.22");
            late(one, 9, "249.00");
            late(one, 8, "20.00");
            assertEquals("129.67", due.on(today.day()).getFirst().total().decimal());
            assertEquals(1, reminders.write());
            assertEquals("129.67", sent.newest(one, 5).getFirst().asked().decimal());
            OutboxMessage letter = written(one).getFirst();
            assertEquals("A reminder: $129.67 is still open", letter.subject());
            assertTrue(
                    letter.body().contains(": $286.29, less $179.62 that we keep for you: $106.67\n"), letter.body());
            assertTrue(letter.body().contains(": $23.00\n"), letter.body());
            return one;
        });
        papers.makePending(tenant, 10);
        business.in(tenant, () -> letters.batch().ifPresent(batch -> outbox.printed(batch.messages())));
        business.in(tenant, () -> {
            assertEquals(
                    RemindersSent.Came.LEFT, sent.newest(customer, 5).getFirst().came());
            assertEquals(0, checked());
            UUID jo = business.customer("Jo Poe");
            UUID plan = late(jo, 8, "249.00");
            pay(jo, "286.29");
            credit(plan, "156.22");
            late(jo, 8, "249.00");
            reminders.write(List.of(jo));
            String french = written(jo).getFirst().body();
            assertTrue(
                    french.contains(
                            "\u00a0: 286,29\u00a0$, moins 179,62\u00a0$ que nous gardons pour vous\u00a0: 106,67\u00a0$\n"),
                    french);
        });
    }

    /** What is kept goes back to them meanwhile: the letter says too little, and is withdrawn. */
    @Test
    void a_letter_is_withdrawn_when_what_is_kept_is_another_amount() {
        UUID tenant = business.quebec();
        UUID customer = business.in(tenant, () -> {
            Step.usual().forEach(ladders::keep);
            UUID one = business.customer("Ida Roe", "en", "each");
            UUID plan = late(one, 10, "249.00");
            pay(one, "286.29");
            credit(plan, "156.22");
            late(one, 9, "249.00");
            reminders.write();
            return one;
        });
        papers.makePending(tenant, 10);
        business.in(
                tenant,
                () -> refunds.give(
                        new NewRefund(customer, today.day(), Way.CARD, Money.of("79.62", "CAD"), null, null)));
        business.in(tenant, () -> letters.batch());
        business.in(tenant, () -> {
            assertEquals(
                    RemindersSent.Came.WITHDRAWN,
                    sent.newest(customer, 5).getFirst().came());
            assertEquals("186.29", due.on(today.day()).getFirst().total().decimal());
        });
    }
}
