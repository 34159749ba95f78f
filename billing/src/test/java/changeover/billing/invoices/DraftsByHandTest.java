package changeover.billing.invoices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Wording;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** What a person writes on a draft, and that it stays as they wrote it. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class DraftsByHandTest extends DraftsTold {

    @Test
    void lines_are_changed_added_and_taken_off_and_the_taxes_follow() {
        business.in(business.quebec(), () -> {
            UUID draft = plan("249.00", "60.00", "40.00");
            change(
                    draft,
                    List.of(as(1, "Formule Confort, an 2", "1", "200.00"), as(3)),
                    own("Chauffe-bloc", "1.5", "33.33"));
            assertEquals(
                    "1 Formule Confort, an 2 1 20000 hand, 2 Formule Confort 1 4000, 3 Chauffe-bloc 1.5 5000 hand",
                    lines(draft));
            InvoiceView view = invoices.preview(draft, DAY);
            assertEquals("290.00", view.subtotal().decimal());
            assertEquals("333.43", view.total().decimal());
            assertEquals(true, view.lines().getFirst().byHand());
            DraftByHand said = hands.of(draft).orElseThrow();
            assertEquals(1, said.takenOff().size());
            assertEquals(1, said.version());
            var issued = invoices.issue(draft, DAY);
            assertEquals("333.43", issued.total().decimal());
            assertEquals(
                    "invoice.already-issued",
                    refused(() -> hands.change(draft, new FilledOn(2), new DraftChange(List.of(), List.of(), null))));
            assertTrue(hands.of(draft).isEmpty());
        });
    }

    @Test
    void what_cannot_be_is_refused_in_a_sentence() {
        business.in(business.quebec(), () -> {
            UUID draft = plan("249.00");
            FilledOn before = now(draft);
            change(draft, List.of(as(1, "Formule", "1", "249.00")));
            assertEquals(
                    "changed-meanwhile",
                    refused(() -> hands.change(draft, before, new DraftChange(List.of(as(1)), List.of(), null))));
            assertEquals("invoice.no-such-line", refused(() -> change(draft, List.of(as(1), as(2)))));
            assertEquals("invoice.no-such-line", refused(() -> change(draft, List.of(as(1), as(1)))));
            for (String quantity : List.of("0", "-1", "1.00001", "100000")) {
                assertEquals(
                        "invoice.quantity", refused(() -> change(draft, List.of(as(1, "Formule", quantity, "2.00")))));
            }
            var terms = new DraftChange.Terms(DAY.minusDays(1), null, 30);
            assertEquals(
                    "invoice.plan-not-earlier",
                    refused(() -> hands.change(draft, now(draft), new DraftChange(List.of(as(1)), List.of(), terms))));
        });
    }

    @Test
    void terms_are_changed_with_the_lines() {
        business.in(business.quebec(), () -> {
            UUID draft = plan("249.00");
            var terms = new DraftChange.Terms(DAY.plusDays(9), "PO-7", 10);
            hands.change(draft, now(draft), new DraftChange(List.of(as(1)), List.of(), terms));
            DraftByHand said = hands.of(draft).orElseThrow();
            assertEquals(
                    "PO-7 10 " + DAY.plusDays(9),
                    said.purchaseOrder() + " " + said.dueDays() + " " + said.mayIssueFrom());
            assertEquals(false, said.lines().getFirst().byHand());
        });
    }

    @Test
    void an_empty_draft_is_not_issued_and_no_price_breaks_it() {
        business.in(business.quebec(), () -> {
            UUID draft = plan("249.00");
            change(draft, List.of());
            assertEquals("0", business.one("select subtotal_minor from invoice where id = '" + draft + "'"));
            assertEquals(0, repricing.take(draft));
            assertEquals("invoice.no-lines", refused(() -> invoices.issue(draft, DAY)));
            change(draft, List.of(), own("Visite", "1", "80.00"));
            assertEquals("91.98", invoices.issue(draft, DAY).total().decimal());
        });
    }

    @Test
    void a_credit_notes_lines_stand() {
        business.in(business.quebec(), () -> {
            UUID invoice = plan("249.00");
            invoices.issue(invoice, DAY);
            UUID credit = credits.inFull(invoice, DAY, new Wording("Goodwill", "Geste"));
            assertEquals("credit.lines-stand", refused(() -> change(credit, List.of(as(1, "Moins", "1", "10.00")))));
            change(credit, List.of(as(1)));
        });
    }
}
