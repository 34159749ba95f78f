package changeover.billing.invoices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.Prices;
import changeover.billing.tax.Work;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import changeover.scheduling.closeout.VisitAmended;
import changeover.scheduling.closeout.VisitClosed;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** What a person writes on a draft, and that it stays as they wrote it. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class DraftsByHandTest {

    static final LocalDate DAY = LocalDate.of(2026, 4, 1);

    @Inject
    ABusiness business;

    @Inject
    AnAgreement agreement;

    @Inject
    Event<VisitClosed> closed;

    @Inject
    Event<VisitAmended> amended;

    @Inject
    Drafts drafts;

    @Inject
    DraftsByHand hands;

    @Inject
    Invoices invoices;

    @Inject
    Credits credits;

    @Inject
    Prices prices;

    @Inject
    Repricing repricing;

    private static DraftChange.Kept as(int position) {
        return new DraftChange.Kept(position, null, null, null, "price" + position);
    }

    private static DraftChange.Kept as(int position, String words, String quantity, String price) {
        return new DraftChange.Kept(
                position, words, new BigDecimal(quantity), price == null ? null : cad(price), "price" + position);
    }

    private static DraftChange.Added own(String words, String quantity, String price) {
        return new DraftChange.Added(words, new BigDecimal(quantity), "HUR", cad(price), Work.REPAIR);
    }

    private static Money cad(String amount) {
        return Money.of(amount, "CAD");
    }

    private void change(UUID draft, List<DraftChange.Kept> kept, DraftChange.Added... added) {
        hands.change(draft, now(draft), new DraftChange(kept, List.of(added), null));
    }

    private FilledOn now(UUID draft) {
        return new FilledOn(hands.of(draft).orElseThrow().version());
    }

    private static String refused(Executable deed) {
        return assertThrows(Refused.class, deed).first().code();
    }

    private String lines(UUID draft) {
        return business.one("""
                select string_agg(position || ' ' || words_fr || ' ' || trim_scale(quantity) || ' ' || net_minor
                         || case when by_hand then ' hand' else '' end
                         || case when visit_changed then ' changed' else '' end, ', ' order by position)
                  from invoice_line where invoice_id = '%s'""".formatted(draft));
    }

    private static VisitClosed closed(UUID visit, UUID home, int minutes, VisitClosed.Part... parts) {
        return new VisitClosed(
                visit,
                home,
                null,
                "call",
                null,
                UUID.randomUUID(),
                DAY.plusDays(20),
                minutes,
                minutes,
                0,
                Arrays.asList(parts),
                List.of());
    }

    private static VisitClosed.Part filter(int quantity) {
        return new VisitClosed.Part(UUID.randomUUID(), "filter-16x25x1", BigDecimal.valueOf(quantity), null, "extra");
    }

    private void priced() {
        agreement.part("filter-16x25x1", "filter");
        prices.set(new PriceEntry(ItemKind.LABOUR, PriceBook.HOUR, cad("96.00"), null, DAY));
        prices.set(new PriceEntry(ItemKind.PART, "filter-16x25x1", cad("18.50"), null, DAY));
    }

    private UUID plan(String... amounts) {
        UUID customer = business.customer("Ida Roe");
        return drafts.write(List.of(SomeDrafts.plan(customer, business.home(customer, "QC"), amounts)))
                .getFirst();
    }

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
    void what_a_person_wrote_stays_when_the_visit_is_amended() {
        business.in(business.quebec(), () -> {
            priced();
            UUID payer = business.customer("Ida Roe");
            UUID home = business.home(payer, "QC");
            UUID visit = agreement.visit(home, null);
            VisitClosed before = closed(visit, home, 60, filter(1));
            closed.fire(before);
            UUID draft = UUID.fromString(business.one("select id from invoice"));
            change(draft, List.of(as(1, "Dépannage", "1", "80.00")), own("Essence", "1", "12.00"));
            assertEquals("1 Dépannage 1 8000 hand, 2 Essence 1 1200 hand", lines(draft));

            VisitClosed longer = closed(visit, home, 90, filter(2));
            amended.fire(new VisitAmended(UUID.randomUUID(), 2, before, longer));
            assertEquals("1 Dépannage 1 8000 hand changed, 2 Essence 1 1200 hand", lines(draft));
            DraftByHand said = hands.of(draft).orElseThrow();
            assertTrue(said.visitChanged());
            assertEquals(2, said.version());
            assertEquals("9200", business.one("select subtotal_minor from invoice"));
            assertEquals("2", business.one("select visit_version from invoice_line where position = 1"));

            change(draft, List.of(as(1), as(2)));
            assertEquals(false, hands.of(draft).orElseThrow().visitChanged(), "it was looked at");
            amended.fire(new VisitAmended(UUID.randomUUID(), 3, longer, longer));
            assertEquals(false, hands.of(draft).orElseThrow().visitChanged(), "nothing to pay has changed");

            invoices.issue(draft, DAY.plusDays(21));
            amended.fire(new VisitAmended(UUID.randomUUID(), 4, longer, longer));
            assertEquals("1", business.one("select count(*) from invoice"), "a person's price is not taken back");
            amended.fire(new VisitAmended(UUID.randomUUID(), 5, longer, closed(visit, home, 30)));
            assertEquals("credit 8000, visit 4800", business.one("""
                    select string_agg(kind || ' ' || subtotal_minor, ', ' order by kind) from invoice i
                     where not exists (select 1 from invoice_issue s where s.invoice_id = i.id)"""));
        });
    }

    @Test
    void lines_that_no_person_touched_follow_the_visit() {
        business.in(business.quebec(), () -> {
            priced();
            UUID payer = business.customer("Ida Roe");
            UUID home = business.home(payer, "QC");
            UUID visit = agreement.visit(home, null);
            VisitClosed before = closed(visit, home, 60, filter(1));
            closed.fire(before);
            UUID draft = UUID.fromString(business.one("select id from invoice"));
            change(draft, List.of(as(1, "Dépannage", "1", "80.00"), as(2)));
            VisitClosed two = closed(visit, home, 60, filter(2));
            amended.fire(new VisitAmended(UUID.randomUUID(), 2, before, two));
            assertEquals("1 Dépannage 1 8000 hand, 2 filter-16x25x1 2 3700", lines(draft));
            amended.fire(new VisitAmended(UUID.randomUUID(), 3, two, closed(visit, home, 0, filter(2))));
            assertEquals("1 Dépannage 1 8000 hand changed, 2 filter-16x25x1 2 3700", lines(draft));
        });
    }

    @Test
    void a_missing_price_comes_to_a_line_with_a_persons_words() {
        business.in(business.quebec(), () -> {
            UUID payer = business.customer("Ida Roe");
            UUID home = business.home(payer, "QC");
            UUID visit = agreement.visit(home, null);
            VisitClosed hour = closed(visit, home, 60);
            closed.fire(hour);
            UUID draft = UUID.fromString(business.one("select id from invoice"));
            change(draft, List.of(as(1, "Recherche de fuite", "0.5", null)));
            priced();
            assertEquals(1, repricing.take(draft));
            assertEquals("1 Recherche de fuite 0.5 4800 hand", lines(draft));
            assertEquals("9600", business.one("select reckoned_minor from invoice_line"));
            assertEquals(2, hands.of(draft).orElseThrow().version());
        });
    }

    @Test
    void joined_drafts_keep_what_a_person_wrote_and_took_off() {
        business.in(business.quebec(), () -> {
            UUID payer = business.customer("Ida Roe", "fr", "one");
            List<UUID> ids = drafts.write(List.of(
                    SomeDrafts.plan(payer, business.home(payer, "QC"), "249.00", "60.00"),
                    SomeDrafts.plan(payer, business.home(payer, "QC"), "100.00", "40.00")));
            change(ids.get(0), List.of(as(2)), own("Essence", "1", "12.00"));
            change(ids.get(1), List.of(as(2, "Formule", "1", "35.00")));
            var outcome = invoices.issue(ids, DAY);
            assertEquals(1, outcome.issued().size());
            assertEquals("1 Formule Confort 1 6000, 2 Essence 1 1200 hand, 3 Formule 1 3500 hand", lines(ids.get(0)));
            assertEquals(
                    "2", business.one("select count(*) from line_taken_off where invoice_id = '" + ids.get(0) + "'"));
            assertEquals("2", business.one("select version from invoice"));
            assertEquals("10700", business.one("select subtotal_minor from invoice_issue"));
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
