package changeover.billing.serving;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.billing.ABusiness;
import changeover.billing.collection.CollectedLately;
import changeover.billing.collection.Collecting;
import changeover.billing.collection.Mandates;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.payments.Owed;
import changeover.billing.payments.Returns;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refused;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What the crew is told by age, amount and a word about one customer; and what is collected from accounts. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class ServingsTest {

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    Servings servings;

    @Inject
    Mandates mandates;

    @Inject
    Collecting collecting;

    @Inject
    CollectedLately lately;

    @Inject
    Returns returns;

    @Inject
    Owed owed;

    @Inject
    Today today;

    private UUID late(UUID customer, UUID home, int days, String net) {
        LocalDate issued = today.day().minusDays(30L + days);
        UUID id = drafts.write(List.of(SomeDrafts.on(issued, customer, home, net)))
                .getFirst();
        invoices.issue(id, issued);
        return id;
    }

    @Test
    void by_age_and_amount_unless_somebody_said_otherwise() {
        business.in(business.quebec(), () -> {
            UUID ida = business.customer("Ida Roe");
            UUID home = business.home(ida, "QC");
            UUID jo = business.customer("Jo Poe");
            UUID other = business.home(jo, "QC");
            late(ida, home, 40, "100.00");
            assertEquals(Map.of(home, Word.SERVE), servings.at(List.of(home, other), today.day()));
            servings.rule(new ServingRules(List.of(
                    new ServingRules.Rule(Word.ASK, 30, Money.of("50.00", "CAD")),
                    new ServingRules.Rule(Word.NOT, 90, Money.of("0.00", "CAD")))));
            assertEquals(Map.of(home, Word.ASK), servings.at(List.of(home, other), today.day()));
            assertEquals(
                    Map.of(home, Word.NOT),
                    servings.at(List.of(home), today.day().plusDays(50)));
            assertThrows(Refused.class, () -> servings.say(ida, Word.SERVE, ""));
            servings.say(ida, Word.SERVE, "She pays on Friday");
            servings.say(jo, Word.NOT, "Three cheques came back");
            assertEquals(Map.of(home, Word.SERVE, other, Word.NOT), servings.at(List.of(home, other), today.day()));
            servings.say(jo, null, "Paid since");
            assertEquals(Map.of(home, Word.SERVE), servings.at(List.of(home, other), today.day()));
            assertEquals("rule", servings.of(jo).getFirst().what());
        });
    }

    @Test
    void a_due_days_documents_are_collected_from_those_who_agreed_and_one_comes_back() {
        business.in(business.quebec(), () -> {
            UUID ida = business.customer("Ida Roe");
            UUID jo = business.customer("Jo Poe");
            late(jo, business.home(jo, "QC"), 1, "10.00");
            late(ida, business.home(ida, "QC"), 1, "100.00");
            UUID later = late(ida, business.home(ida, "QC"), -5, "50.00");
            assertEquals(List.of(), collecting.until(today.day()));
            mandates.sign(ida, today.day(), "P-14, account ending 77");
            assertEquals(1, collecting.until(today.day()).size());
            assertEquals(2, collecting.until(today.day().plusDays(5)).size());
            assertThrows(
                    Refused.class,
                    () -> collecting.collected(
                            Map.of(UUID.randomUUID(), new Collecting.Drawn(Money.of("1.00", "CAD"), 0)), today.day()));
            Map<UUID, Collecting.Drawn> due = collecting.until(today.day()).stream()
                    .collect(Collectors.toMap(one -> one.item().id(), Collecting.Due::drawn));
            assertEquals(1, collecting.collected(due, today.day()));
            assertEquals("57.49", owed.of(ida, today.day()).open().decimal(), later.toString());
            CollectedLately.Collected one = lately.list().payments().getFirst();
            returns.back(one.paymentId(), today.day(), "No funds");
            assertEquals(true, collecting.until(today.day()).getFirst().cameBack());
            assertEquals(List.of(), lately.list().payments());
            mandates.end(mandates.of(ida).orElseThrow().id());
            assertEquals(List.of(), collecting.until(today.day()));
        });
    }
}
