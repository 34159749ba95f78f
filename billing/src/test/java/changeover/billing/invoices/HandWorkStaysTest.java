package changeover.billing.invoices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.scheduling.closeout.VisitAmended;
import changeover.scheduling.closeout.VisitClosed;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** What a person wrote on a draft stays when the visit, the price or the document around it moves. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class HandWorkStaysTest extends DraftsTold {

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
}
