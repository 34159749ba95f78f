package changeover.billing.collection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.billing.ABusiness;
import changeover.billing.BooksHold;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.payments.Deposits;
import changeover.billing.payments.NewDeposit;
import changeover.billing.payments.NewPayment;
import changeover.billing.payments.Owed;
import changeover.billing.payments.OwedBy;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Way;
import changeover.billing.reminders.Hold;
import changeover.billing.reminders.Holds;
import changeover.billing.serving.ServingRules;
import changeover.billing.serving.Servings;
import changeover.billing.serving.Word;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refused;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The bank draws what the list said; what is kept for a customer, or held back, nobody asks them for. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class CollectingTest {

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    Payments payments;

    @Inject
    Deposits deposits;

    @Inject
    Holds holds;

    @Inject
    Mandates mandates;

    @Inject
    Collecting collecting;

    @Inject
    CollectedLately lately;

    @Inject
    Servings servings;

    @Inject
    Owed owed;

    @Inject
    BooksHold books;

    @Inject
    Today today;

    private record Case(UUID customer, UUID home) {}

    /** One who agreed, at a business that charges no taxes. */
    private Case somebody() {
        UUID customer = business.customer("Ida Roe");
        mandates.sign(customer, today.day(), "P-14");
        return new Case(customer, business.home(customer, "QC"));
    }

    private UUID small() {
        return business.open("CA-QC", "fr", null, null, true);
    }

    /** Ten days late. */
    private UUID late(Case one, String net) {
        LocalDate issued = today.day().minusDays(40);
        UUID id = drafts.write(List.of(SomeDrafts.on(issued, one.customer(), one.home(), net)))
                .getFirst();
        invoices.issue(id, issued);
        return id;
    }

    private void pay(Case one, LocalDate day, String amount, NewPayment.Part... parts) {
        payments.take(new NewPayment(one.customer(), day, Way.CARD, money(amount), null, null, List.of(parts)));
    }

    private static Money money(String amount) {
        return Money.of(amount, "CAD");
    }

    private Map<UUID, Collecting.Drawn> list() {
        return collecting.until(today.day()).stream()
                .collect(Collectors.toMap(
                        one -> one.item().id(), Collecting.Due::drawn, (one, _) -> one, LinkedHashMap::new));
    }

    private String asked() {
        return collecting.until(today.day()).stream()
                .map(one -> one.item().open().decimal())
                .collect(Collectors.joining(" "));
    }

    private String stands(Case one) {
        OwedBy by = owed.of(one.customer(), today.day());
        return by.open().decimal() + " credit " + by.credit().decimal();
    }

    @Test
    void what_the_bank_drew_is_noted_though_the_customer_paid_meanwhile() {
        business.in(small(), () -> {
            Case one = somebody();
            late(one, "95.00");
            Map<UUID, Collecting.Drawn> typedIn = list();
            pay(one, today.day(), "40.00");
            assertEquals("55.00", asked());
            assertEquals(1, collecting.collected(typedIn, today.day()));
            assertEquals("95.00", lately.list().payments().getFirst().amount().decimal());
            assertEquals("0.00 credit 40.00", stands(one));
            assertThrows(Refused.class, () -> collecting.collected(typedIn, today.day()));
            assertEquals("0.00 credit 40.00", stands(one));
            books.check();
        });
    }

    @Test
    void a_document_paid_in_full_meanwhile_leaves_a_credit_once() {
        business.in(small(), () -> {
            Case one = somebody();
            late(one, "95.00");
            Map<UUID, Collecting.Drawn> typedIn = list();
            pay(one, today.day(), "95.00");
            assertEquals("", asked());
            assertEquals(1, collecting.collected(typedIn, today.day()));
            assertThrows(Refused.class, () -> collecting.collected(typedIn, today.day()));
            assertEquals("0.00 credit 95.00", stands(one));
            assertEquals(1, lately.list().payments().size());
            books.check();
        });
    }

    @Test
    void what_is_kept_is_not_collected_but_a_deposit_is_no_credit() {
        business.in(small(), () -> {
            Case one = somebody();
            pay(one, today.day().minusDays(60), "30.00");
            late(one, "20.00");
            late(one, "80.00");
            deposits.take(new NewDeposit(
                    one.customer(), one.home(), null, null, today.day(), Way.CARD, money("500.00"), null, "Boiler"));
            assertEquals("70.00", asked());
            collecting.collected(list(), today.day());
            assertEquals("", asked());
            assertEquals("30.00 credit 530.00", stands(one));
        });
    }

    @Test
    void what_a_hold_keeps_back_is_not_collected() {
        business.in(small(), () -> {
            Case one = somebody();
            UUID disputed = late(one, "95.00");
            late(one, "10.00");
            assertEquals("95.00 10.00", asked());
            holds.hold(one.customer(), disputed, Hold.Why.DISPUTE, "The pump was never changed", null);
            assertEquals("10.00", asked());
        });
    }

    @Test
    void the_crew_is_told_nothing_of_what_is_kept_or_held_back() {
        business.in(small(), () -> {
            servings.rule(new ServingRules(List.of(new ServingRules.Rule(Word.ASK, 1, money("50.00")))));
            Case kept = somebody();
            late(kept, "100.00");
            Case held = somebody();
            UUID disputed = late(held, "100.00");
            List<UUID> homes = List.of(kept.home(), held.home());
            assertEquals(Map.of(kept.home(), Word.ASK, held.home(), Word.ASK), servings.at(homes, today.day()));
            holds.hold(held.customer(), disputed, Hold.Why.DISPUTE, "Never done", null);
            deposits.take(new NewDeposit(
                    kept.customer(), kept.home(), null, null, today.day(), Way.CARD, money("500.00"), null, "Boiler"));
            assertEquals(Map.of(kept.home(), Word.ASK), servings.at(homes, today.day()));
            pay(kept, today.day().minusDays(50), "60.00");
            assertEquals(Map.of(kept.home(), Word.SERVE), servings.at(homes, today.day()));
            pay(kept, today.day().minusDays(50), "40.00");
            assertEquals(Map.of(), servings.at(homes, today.day()));
        });
    }

    @Test
    void more_than_a_batch_is_marked_at_once_and_a_cut_list_says_so() {
        business.in(small(), () -> {
            Case one = somebody();
            LocalDate issued = today.day().minusDays(40);
            List<UUID> ids = drafts.write(IntStream.range(0, 205)
                    .mapToObj(_ -> SomeDrafts.on(issued, one.customer(), one.home(), "1.00"))
                    .toList());
            ids.forEach(id -> invoices.issue(id, issued));
            assertEquals(205, collecting.collected(list(), today.day()));
            assertEquals("0.00 credit 0.00", stands(one));
            assertEquals(200, lately.list().payments().size());
            assertEquals(true, lately.list().more());
        });
    }
}
