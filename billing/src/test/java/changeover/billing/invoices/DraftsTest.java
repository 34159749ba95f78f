package changeover.billing.invoices;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ABusiness;
import changeover.billing.pricing.Charge.Covered;
import changeover.billing.tax.ContractForm;
import changeover.billing.tax.Work;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class DraftsTest {

    static final LocalDate DAY = LocalDate.of(2026, 4, 1);

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Test
    void drafts_are_written_with_their_lines_and_sums() {
        UUID tenant = business.quebec();
        business.in(tenant, () -> {
            drafts.write(List.of(draft("249.00"), draft("100.00")));
            assertEquals("34900", business.one("select sum(subtotal_minor) from invoice"));
            assertEquals("34900", business.one("select sum(net_minor) from invoice_line"));
        });
    }

    static Draft draft(String net) {
        Money amount = Money.of(net, "CAD");
        DraftLine line = new DraftLine(
                null,
                null,
                null,
                null,
                DAY,
                "plan",
                null,
                null,
                Covered.BILLABLE,
                Work.MAINTENANCE,
                ContractForm.PLAN,
                new Wording("Plan Comfort", "Forfait Confort"),
                new Wording("One year", "Un an"),
                BigDecimal.ONE,
                "C62",
                amount,
                BigDecimal.ZERO,
                Money.zero(amount.currency()),
                amount);
        return new Draft(
                DocumentKind.PLAN,
                null,
                UUID.randomUUID(),
                null,
                null,
                null,
                null,
                null,
                null,
                "fr",
                amount.currency(),
                DAY,
                false,
                null,
                30,
                null,
                List.of(line));
    }
}
