package changeover.billing.invoices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.payments.InvoiceFilter;
import changeover.billing.payments.NewPayment;
import changeover.billing.payments.Way;
import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.words.Constraints;
import changeover.contracts.words.FilledOn;
import changeover.scheduling.closeout.VisitAmended;
import changeover.scheduling.closeout.VisitClosed;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A draft that is not to be asked for: it stays to be read, is on no list and is never issued. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class DiscardsTest extends DiscardsTold {

    @Test
    void a_discarded_draft_is_on_no_list_and_is_never_issued() {
        business.in(business.quebec(), () -> {
            UUID payer = business.customer("Ida Roe", "fr", "one");
            List<UUID> ids = drafts.write(List.of(
                    SomeDrafts.plan(payer, business.home(payer, "QC"), "249.00"),
                    SomeDrafts.plan(payer, business.home(payer, "QC"), "60.00")));
            UUID gone = ids.get(1);
            assertEquals("invoice.discard-why", refused(() -> discards.discard(gone, new FilledOn(0), DAY, " x ")));
            assertEquals(
                    "changed-meanwhile", refused(() -> discards.discard(gone, new FilledOn(7), DAY, "Moved away")));
            discard(gone);
            assertEquals("Not wanted", discards.of(gone).orElseThrow().why());
            assertTrue(hands.of(gone).isEmpty());
            assertEquals(List.of(ids.get(0)), lists.ready(DAY));
            assertEquals(1, lists.rows(InvoiceFilter.ofCustomer(payer), DAY).size());
            assertEquals("60.00", invoices.preview(gone, DAY).subtotal().decimal(), "it can still be read");
            var outcome = invoices.issue(ids, DAY);
            assertEquals("invoice.discarded", outcome.refused().get(gone).code());
            assertEquals(0, outcome.joined().size());
            assertEquals(
                    "249.00", invoices.view(ids.get(0)).orElseThrow().subtotal().decimal());
            assertEquals("invoice.discarded", refused(() -> discards.discard(gone, new FilledOn(0), DAY, "Again")));
            assertEquals(
                    "invoice.already-issued",
                    refused(() -> discards.discard(ids.get(0), new FilledOn(0), DAY, "Late")));
        });
    }

    @Test
    void the_database_keeps_it_so() {
        UUID tenant = business.quebec();
        UUID[] ids = business.in(tenant, () -> {
            UUID payer = business.customer("Ida Roe");
            UUID home = business.home(payer, "QC");
            List<UUID> two = drafts.write(
                    List.of(SomeDrafts.plan(payer, home, "249.00"), SomeDrafts.plan(payer, home, "60.00")));
            invoices.issue(two.get(0), DAY);
            payments.take(new NewPayment(payer, DAY, Way.CHEQUE, Money.of("5.00", "CAD"), null, null, List.of()));
            discard(two.get(1));
            return two.toArray(UUID[]::new);
        });
        String issue =
                "insert into invoice_discard (invoice_id, day, why) values ('" + ids[0] + "', '2026-04-01', 'No')";
        for (String wrong : List.of(
                issue.replace("'No'", "'Not wanted'"),
                "update invoice set due_days = 3 where id = '" + ids[1] + "'",
                "delete from invoice_line where invoice_id = '" + ids[1] + "'",
                "update invoice_line set net_minor = 0 where invoice_id = '" + ids[1] + "'",
                """
                insert into payment_allocation (payment_id, invoice_id, amount_minor, day)
                select id, '%s', 1, '2026-04-01' from payment""".formatted(ids[1]),
                """
                insert into invoice_issue (invoice_id, kind, customer_id, series, number, label, day, tax_day, due_day,
                    language, currency, subtotal_minor, tax_minor, total_minor, seller, buyer, works, previous_hash, hash)
                select '%s', kind, customer_id, series, number + 1, label || '-2', day, tax_day, due_day, language, currency,
                       subtotal_minor, tax_minor, total_minor, seller, buyer, works, previous_hash, hash
                  from invoice_issue""".formatted(ids[1]))) {
            var failure = assertThrows(
                    RuntimeException.class,
                    () -> business.in(tenant, () -> {
                        business.execute(wrong);
                    }));
            assertTrue(Constraints.refusal(failure).isPresent(), wrong);
        }
        for (String wrong :
                List.of("delete from invoice_discard", "update invoice_discard set why = 'Something else'")) {
            assertThrows(
                    RuntimeException.class,
                    () -> business.in(tenant, () -> {
                        business.execute(wrong);
                    }));
        }
    }

    @Test
    void an_amended_visit_is_charged_anew_after_a_discard() {
        business.in(business.quebec(), () -> {
            prices.set(new PriceEntry(ItemKind.LABOUR, PriceBook.HOUR, Money.of("96.00", "CAD"), null, DAY));
            UUID payer = business.customer("Ida Roe");
            UUID home = business.home(payer, "QC");
            UUID visit = agreement.visit(home, null);
            VisitClosed hour = closed(visit, home, null, 60);
            VisitClosed two = closed(visit, home, null, 120);
            closed.fire(hour);
            discard(UUID.fromString(business.one("select id from invoice")));
            amended.fire(new VisitAmended(UUID.randomUUID(), 2, hour, two));
            assertEquals("visit 19200", waiting());

            UUID second = lists.ready(DAY.plusDays(30)).getFirst();
            invoices.issue(second, DAY.plusDays(30));
            amended.fire(new VisitAmended(UUID.randomUUID(), 3, two, hour));
            assertEquals("credit 19200, visit 9600", waiting());
            discard(UUID.fromString(business.one("select id from invoice where visit_version = 3")));
            amended.fire(new VisitAmended(UUID.randomUUID(), 4, hour, two));
            assertEquals("credit 19200, visit 19200", waiting(), "given back once, asked for once");
            discard(UUID.fromString(business.one("select id from invoice where kind = 'credit'")));
            discard(UUID.fromString(business.one("select id from invoice where visit_version = 4")));
            amended.fire(new VisitAmended(UUID.randomUUID(), 5, two, two));
            assertEquals("none", waiting(), "what was issued is right again");
            amended.fire(new VisitAmended(UUID.randomUUID(), 6, two, hour));
            assertEquals("credit 19200, visit 9600", waiting());
        });
    }

    @Test
    void a_visit_whose_invoice_was_given_back_by_hand_may_still_be_amended() {
        business.in(business.quebec(), () -> {
            prices.set(new PriceEntry(ItemKind.LABOUR, PriceBook.HOUR, Money.of("96.00", "CAD"), null, DAY));
            UUID payer = business.customer("Ida Roe");
            UUID home = business.home(payer, "QC");
            UUID visit = agreement.visit(home, null);
            VisitClosed hour = closed(visit, home, null, 60);
            VisitClosed two = closed(visit, home, null, 120);
            closed.fire(hour);
            UUID invoice = lists.ready(DAY.plusDays(30)).getFirst();
            invoices.issue(invoice, DAY.plusDays(30));
            UUID credit = credits.inFull(
                    invoice, DAY.plusDays(30), new changeover.contracts.words.Wording("Goodwill", "Geste"));
            invoices.issue(credit, DAY.plusDays(30));
            amended.fire(new VisitAmended(UUID.randomUUID(), 2, hour, two));
            assertEquals("visit 19200", waiting(), "nothing is left to give back, and the record is charged anew");
        });
    }
}
