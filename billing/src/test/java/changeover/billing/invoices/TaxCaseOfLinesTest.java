package changeover.billing.invoices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.tax.ContractForm;
import changeover.billing.tax.Work;
import changeover.contracts.PostgresForTests;
import changeover.contracts.words.Refused;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * What a line's work is and how its price was agreed are chosen on the draft, and decide its taxes. Texas: 34 TAC 3.291, 3.357; New
 * York: Publication 862 (a capital improvement is exempt), 20 NYCRR 527.7; 249.00 at 8.875 % is 22.10, at 8.25 % 20.54, by hand.
 */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class TaxCaseOfLinesTest extends DraftsTold {

    @Test
    void each_row_of_two_states_is_reached_from_a_draft() {
        business.in(business.quebec(), () -> {
            UUID customer = business.customer("Ida Roe");
            UUID home = business.home(customer, "US", "TX");
            UUID draft = drafts.write(List.of(SomeDrafts.plan(customer, home, "249.00")))
                    .getFirst();
            assertEquals("tx_sales O 0.00", taxes(draft));
            choose(draft, Work.REPAIR, ContractForm.SEPARATE);
            var refused = assertThrows(Refused.class, () -> invoices.preview(draft, DAY));
            assertEquals("tax.case-unknown", refused.first().code());
            choose(draft, Work.REPAIR, ContractForm.LUMP_SUM);
            assertEquals("tx_sales O 0.00", taxes(draft));
            business.execute("update home set property_use = 'commercial' where id = '" + home + "'");
            assertEquals("tx_sales S 20.54", taxes(draft));
            choose(draft, Work.MAINTENANCE, ContractForm.LUMP_SUM);
            assertEquals("tx_sales O 0.00", taxes(draft));
            choose(draft, Work.INSTALLATION, ContractForm.LUMP_SUM);
            assertEquals("tx_sales S 20.54", taxes(draft));

            UUID inNewYork = drafts.write(
                            List.of(SomeDrafts.plan(customer, business.home(customer, "US", "NY"), "249.00")))
                    .getFirst();
            assertEquals("ny_sales S 22.10", taxes(inNewYork));
            choose(inNewYork, Work.INSTALLATION, ContractForm.SEPARATE);
            assertEquals("ny_sales E 0.00", taxes(inNewYork));
        });
    }

    /** What a person chose is theirs, like what they wrote; chosen as it stands it changes nothing. */
    @Test
    void a_chosen_case_is_marked_as_a_persons() {
        business.in(business.quebec(), () -> {
            UUID draft = plan("249.00", "60.00");
            hands.change(
                    draft,
                    now(draft),
                    new DraftChange(
                            List.of(chosen(1, Work.MAINTENANCE, ContractForm.PLAN), chosen(2, Work.REPAIR, null)),
                            List.of(),
                            null));
            List<DraftByHand.Line> lines = hands.of(draft).orElseThrow().lines();
            assertEquals(
                    List.of(false, true),
                    lines.stream().map(DraftByHand.Line::byHand).toList());
            assertEquals(Work.REPAIR, lines.get(1).work());
            assertEquals(ContractForm.PLAN, lines.get(1).form());
            assertTrue(lines(draft).endsWith("6000 hand"), () -> lines(draft));
        });
    }

    private void choose(UUID draft, Work work, ContractForm form) {
        hands.change(draft, now(draft), new DraftChange(List.of(chosen(1, work, form)), List.of(), null));
    }

    private static DraftChange.Kept chosen(int position, Work work, ContractForm form) {
        return new DraftChange.Kept(position, null, null, null, "price" + position, work, form);
    }

    private String taxes(UUID draft) {
        return invoices.preview(draft, DAY).taxes().stream()
                .map(tax ->
                        tax.code() + " " + tax.category() + " " + tax.amount().decimal())
                .collect(Collectors.joining(", "));
    }
}
