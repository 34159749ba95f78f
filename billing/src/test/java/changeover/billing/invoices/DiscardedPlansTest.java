package changeover.billing.invoices;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.payments.NewPayment;
import changeover.billing.payments.Way;
import changeover.contracts.PostgresForTests;
import changeover.contracts.agreements.AgreementSold;
import changeover.contracts.agreements.SaleChannel;
import changeover.contracts.money.Money;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** What a discarded draft of a plan or of a credit leaves behind. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class DiscardedPlansTest extends DiscardsTold {

    @Test
    void an_instalment_is_given_up_and_the_first_visit_opens_the_others() {
        business.in(business.quebec(), () -> {
            UUID payer = business.customer("Ida Roe");
            UUID home = business.home(payer, "QC");
            UUID plan = agreement.inForce(home, payer, DAY, 2);
            sold.fire(new AgreementSold(List.of(new AgreementSold.Sold(
                    plan,
                    home,
                    payer,
                    DAY,
                    DAY.plusYears(1),
                    Money.of("249.00", "CAD"),
                    2,
                    DAY,
                    SaleChannel.DISTANCE,
                    false,
                    "fr"))));
            discard(UUID.fromString(business.one("select id from invoice where instalment = 1")));
            closed.fire(closed(agreement.visit(home, plan), home, plan, 75));
            assertEquals("plan 12450, visit 0", waiting());
            assertEquals("1", business.one("select count(*) from invoice where awaits_first_visit"));
        });
    }

    @Test
    void money_paid_ahead_stays_the_customers() {
        business.in(business.quebec(), () -> {
            UUID payer = business.customer("Ida Roe");
            UUID home = business.home(payer, "QC");
            UUID draft =
                    drafts.write(List.of(SomeDrafts.plan(payer, home, "60.00"))).getFirst();
            Money paid = Money.of("68.99", "CAD");
            var now =
                    new NewPayment(payer, DAY, Way.CHEQUE, paid, null, null, List.of(new NewPayment.Part(draft, paid)));
            payments.take(now);
            discard(draft);
            assertEquals("0", business.one("select count(*) from payment_allocation"));
            assertEquals(paid, owed.of(payer, DAY).credit());
            assertEquals("payment.not-theirs", refused(() -> payments.take(now)));
        });
    }

    @Test
    void a_credit_note_in_the_making_is_discarded_like_any_draft() {
        business.in(business.quebec(), () -> {
            UUID payer = business.customer("Ida Roe");
            UUID invoice = drafts.write(List.of(SomeDrafts.plan(payer, business.home(payer, "QC"), "60.00")))
                    .getFirst();
            invoices.issue(invoice, DAY);
            UUID credit = credits.inFull(invoice, DAY, new changeover.contracts.words.Wording("Goodwill", "Geste"));
            discard(credit);
            UUID again = credits.inFull(invoice, DAY, new changeover.contracts.words.Wording("Goodwill", "Geste"));
            assertEquals("68.99", invoices.issue(again, DAY).total().decimal());
        });
    }
}
