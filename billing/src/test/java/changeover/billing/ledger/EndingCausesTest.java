package changeover.billing.ledger;

import static changeover.billing.ledger.ASoldPlan.FIRST;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ABusiness;
import changeover.billing.ledger.ASoldPlan.Sold;
import changeover.contracts.PostgresForTests;
import changeover.contracts.agreements.EndingCause;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/**
 * The reason of an ending reaches the law of the place: New York General Business Law, § 395-a (2)(b), (c). By hand, with the spring
 * visit done and half of the plan's work its share: by days 249.00 × 136 / 365 = 92.78 is kept, by days and work 92.78 + 124.50.
 */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class EndingCausesTest {

    private static final LocalDate END = LocalDate.of(2026, 8, 15);

    @Inject
    ABusiness business;

    @Inject
    ASoldPlan plans;

    @Inject
    Settlements settlements;

    private Sold inNewYork() {
        Sold sold = plans.of("Ida Roe", 0, 0);
        UUID spring = plans.visit(sold, "plan", 60, null);
        plans.visit(sold, "plan", 60, null);
        plans.invoiced(sold, FIRST, 1, "249.00");
        plans.closed(sold, spring, LocalDate.of(2026, 5, 4), "done");
        business.execute("update home set country = 'US', region = 'NY' where id = '" + sold.home() + "'");
        return sold;
    }

    private void check(Sold sold, EndingCause asked, String rule, String way, String kept) {
        Settlement settlement = settlements.of(sold.id(), END, asked).orElseThrow();
        assertEquals(rule, settlement.policy().rule());
        Settlement.Way chosen = settlement.ways().stream()
                .filter(Settlement.Way::chosen)
                .findFirst()
                .orElseThrow();
        assertEquals(way + " " + kept, chosen.way().code() + " " + chosen.kept().decimal());
    }

    @Test
    void a_reason_is_asked_about_while_the_agreement_holds() {
        business.in(business.quebec(), () -> {
            Sold sold = inNewYork();
            check(sold, null, "own-terms", "pro-rata", "92.78");
            check(sold, EndingCause.UNWANTED, "own-terms", "pro-rata", "92.78");
            check(sold, EndingCause.MOVED, "ny-gbl-395a-moved", "pro-rata", "92.78");
            check(sold, EndingCause.COMMERCIAL_USE, "ny-gbl-395a-commercial", "pro-rata-less-work", "217.28");
        });
    }

    /** Once it has ended its own reason holds, whatever is asked. */
    @Test
    void the_reason_of_an_ended_agreement_is_its_own() {
        business.in(business.quebec(), () -> {
            Sold sold = inNewYork();
            business.execute("insert into agreement_ending (agreement_id, day, cause, why) values ('" + sold.id()
                    + "', '" + END + "', 'commercial-use', 'A workshop was set up in it')");
            check(sold, null, "ny-gbl-395a-commercial", "pro-rata-less-work", "217.28");
            check(sold, EndingCause.MOVED, "ny-gbl-395a-commercial", "pro-rata-less-work", "217.28");
        });
    }
}
