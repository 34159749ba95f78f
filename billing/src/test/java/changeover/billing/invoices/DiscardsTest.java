package changeover.billing.invoices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.payments.InvoiceFilter;
import changeover.billing.payments.InvoiceLists;
import changeover.billing.payments.NewPayment;
import changeover.billing.payments.Owed;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Way;
import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.Prices;
import changeover.contracts.PostgresForTests;
import changeover.contracts.agreements.AgreementSold;
import changeover.contracts.agreements.SaleChannel;
import changeover.contracts.money.Money;
import changeover.contracts.words.Constraints;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refused;
import changeover.scheduling.closeout.VisitAmended;
import changeover.scheduling.closeout.VisitClosed;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** A draft that is not to be asked for: it stays to be read, is on no list and is never issued. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class DiscardsTest {

    static final LocalDate DAY = LocalDate.of(2026, 4, 1);

    @Inject
    ABusiness business;

    @Inject
    AnAgreement agreement;

    @Inject
    Event<AgreementSold> sold;

    @Inject
    Event<VisitClosed> closed;

    @Inject
    Event<VisitAmended> amended;

    @Inject
    Drafts drafts;

    @Inject
    Discards discards;

    @Inject
    DraftsByHand hands;

    @Inject
    Invoices invoices;

    @Inject
    InvoiceLists lists;

    @Inject
    Payments payments;

    @Inject
    Owed owed;

    @Inject
    Credits credits;

    @Inject
    Prices prices;

    private void discard(UUID draft) {
        discards.discard(draft, new FilledOn(hands.of(draft).orElseThrow().version()), DAY, "Not wanted");
    }

    private static String refused(Executable deed) {
        return assertThrows(Refused.class, deed).first().code();
    }

    private static VisitClosed closed(UUID visit, UUID home, UUID plan, int minutes) {
        return new VisitClosed(
                visit,
                home,
                plan,
                plan == null ? "call" : "plan",
                null,
                UUID.randomUUID(),
                DAY.plusDays(20),
                minutes,
                minutes,
                0,
                List.of(),
                List.of());
    }

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

    private String waiting() {
        String said = business.one("""
                select string_agg(kind || ' ' || subtotal_minor, ', ' order by kind) from invoice i
                 where not exists (select 1 from invoice_issue s where s.invoice_id = i.id)
                   and not exists (select 1 from invoice_discard x where x.invoice_id = i.id)""");
        return said == null ? "none" : said;
    }

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
