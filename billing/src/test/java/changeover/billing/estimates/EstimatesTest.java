package changeover.billing.estimates;

import static changeover.billing.estimates.AnEstimate.cad;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.billing.ABusiness;
import changeover.billing.BooksHold;
import changeover.billing.invoices.Invoices;
import changeover.billing.payments.Deposits;
import changeover.billing.payments.Owed;
import changeover.billing.payments.Way;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refused;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** A repair from its estimate to its paid invoice: answers written by hand. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class EstimatesTest {

    @Inject
    ABusiness business;

    @Inject
    AnEstimate some;

    @Inject
    Estimates estimates;

    @Inject
    Offering offering;

    @Inject
    Answering answering;

    @Inject
    EstimateWorks works;

    @Inject
    EstimateMoney money;

    @Inject
    SiteConsents consents;

    @Inject
    Invoices invoices;

    @Inject
    Deposits deposits;

    @Inject
    Owed owed;

    @Inject
    BooksHold books;

    @Inject
    Today today;

    private UUID home(String language) {
        some.prices();
        return business.home(business.customer("Ida Roe", language, "each"), "QC");
    }

    private static void refused(Executable verb, String expected) {
        assertEquals(expected, assertThrows(Refused.class, verb).first().code());
    }

    @Test
    void it_costs_what_such_a_visit_is_charged_and_stands_once_it_is_offered() {
        business.in(business.quebec(), () -> {
            UUID home = home("fr");
            UUID id = some.written(home, null);
            Estimate draft = estimates.find(id).orElseThrow();
            EstimateSum sum = estimates.sum(draft);
            assertEquals(
                    "205.90 30.84 236.74",
                    sum.subtotal().decimal() + " " + sum.tax().decimal() + " "
                            + sum.total().decimal());
            assertEquals(
                    List.of("labour 96.00", "part 49.90", "travel 45.00", "other 15.00"),
                    sum.lines().stream()
                            .map(line -> line.kind() + " " + line.net().decimal())
                            .toList());
            offering.offer(id);
            UUID second = some.written(home, null);
            offering.offer(second);
            int year = today.day().getYear();
            assertEquals(
                    "E-" + year + "-0002",
                    estimates.find(second).orElseThrow().label().orElseThrow());
            business.execute("update price set price_minor = 9900 where item_code = 'hour'");
            Estimate offered = estimates.find(id).orElseThrow();
            assertEquals("205.90", estimates.sum(offered).subtotal().decimal());
            assertEquals("E-" + year + "-0001", offered.label().orElseThrow());
            refused(
                    () -> estimates.rewrite(id, new FilledOn(0), some.facts()),
                    "constraint.an_offered_estimate_stands");
            refused(() -> offering.offer(id), "constraint.an_offered_estimate_stands");
            assertEquals(2, estimates.open().size());
            answering.withdraw(second, "Mika Tarn", "Twice");
            assertEquals(1, estimates.open().size());
            assertEquals(1, estimates.over(0, 10).size());
            books.check();
        });
    }

    @Test
    void a_draft_without_a_price_is_shown_and_not_offered() {
        business.in(business.quebec(), () -> {
            UUID home = home("fr");
            UUID id = some.written(home, null);
            business.execute("delete from price where item_code = '" + AnEstimate.SENSOR + "'");
            refused(() -> offering.offer(id), "invoice.price-missing");
            some.price(changeover.billing.pricing.ItemKind.PART, AnEstimate.SENSOR, "24.95");
            estimates.rewrite(
                    id,
                    new FilledOn(0),
                    new EstimateFacts("Moins", 0, false, some.facts().parts(), List.of(), today.day(), cad("60.00")));
            refused(() -> estimates.rewrite(id, new FilledOn(0), some.facts()), "changed-meanwhile");
            refused(() -> offering.offer(id), "estimate.deposit-beyond-total");
        });
    }

    @Test
    void what_is_wrong_is_said_at_its_field() {
        business.in(business.quebec(), () -> {
            UUID home = home("fr");
            UUID elsewhere = some.visit(business.home(business.customer("Amos Lee"), "QC"), "call");
            refused(() -> some.written(home, elsewhere), "estimate.visit-elsewhere");
            refused(
                    () -> estimates.write(new NewEstimate(
                            home,
                            null,
                            null,
                            null,
                            new EstimateFacts("Rien", 0, true, List.of(), List.of(), today.day(), null))),
                    "estimate.nothing");
            UUID nobody = business.home(business.customer("Amos Lee"), "QC");
            business.execute("delete from home_part where home_id = '" + nobody + "'");
            refused(() -> some.written(nobody, null), "estimate.nobody-pays");
        });
    }

    @Test
    void a_yes_on_the_spot_needs_the_owners_source_and_a_visit_that_was_asked_for() {
        business.in(business.quebec(), () -> {
            UUID home = home("fr");
            UUID found = some.written(home, some.visit(home, "plan"));
            UUID asked = some.written(home, some.visit(home, "call"));
            offering.offer(found);
            offering.offer(asked);
            refused(() -> answering.answer(asked, some.yes(ConsentChannel.SITE)), "estimate.channel-refused");
            refused(() -> consents.set("ca-qc", today.day(), true, "none"), "estimate.source-missing");
            consents.set("ca-qc", today.day(), true, "Our lawyer's letter");
            refused(() -> answering.answer(found, some.yes(ConsentChannel.SITE)), "estimate.channel-refused");
            Estimate yes = answering.answer(asked, some.yes(ConsentChannel.SITE));
            assertEquals(EstimateState.ACCEPTED, yes.state(today.day()));
            assertEquals(
                    "205.90", java.util.Objects.requireNonNull(yes.accepted()).decimal());
            refused(
                    () -> answering.answer(asked, some.yes(ConsentChannel.CALL)),
                    "constraint.an_estimate_is_answered_once");
            books.check();
        });
    }

    @Test
    void work_past_the_accepted_amount_needs_a_new_yes() {
        business.in(business.quebec(), () -> {
            UUID home = home("fr");
            UUID id = some.accepted(home);
            UUID visit = works.makeVisit(id, today.day(), 60);
            some.close(visit, home, 90, "3");
            UUID draft = some.draft(visit);
            Estimate estimate = estimates.find(id).orElseThrow();
            EstimateMoney.Charged charged = money.drafts(estimate).getFirst();
            assertEquals("278.85", charged.asked().decimal());
            assertEquals("72.95", charged.beyond().orElseThrow().decimal());
            refused(() -> invoices.issue(draft, today.day()), "invoice.beyond-accepted");
            refused(() -> works.more(id, cad("205.90"), some.yes(ConsentChannel.CALL)), "estimate.no-more");
            refused(() -> works.more(id, cad("278.85"), some.yes(ConsentChannel.SITE)), "estimate.channel-refused");
            works.more(id, cad("278.84"), some.yes(ConsentChannel.CALL));
            refused(() -> invoices.issue(draft, today.day()), "invoice.beyond-accepted");
            works.more(id, cad("278.85"), some.yes(ConsentChannel.CALL));
            assertEquals(2, money.more(estimate).size());
            assertEquals("320.61", invoices.issue(draft, today.day()).total().decimal());
            books.check();
        });
    }

    @Test
    void what_one_visit_was_charged_is_no_longer_left_for_the_next() {
        business.in(business.quebec(), () -> {
            UUID home = home("fr");
            UUID id = some.accepted(home);
            UUID first = works.makeVisit(id, today.day(), 60);
            some.close(first, home, 60, "1");
            assertEquals(
                    "208.05",
                    invoices.issue(some.draft(first), today.day()).total().decimal());
            UUID second = works.makeVisit(id, today.day(), 60);
            some.close(second, home, 60, "1");
            refused(() -> invoices.issue(some.draft(second), today.day()), "invoice.beyond-accepted");
            refused(() -> works.bind(id, first), "estimate.visit-not-open");
            Estimate estimate = estimates.find(id).orElseThrow();
            assertEquals("24.95", money.drafts(estimate).getFirst().left().decimal());
            books.check();
        });
    }

    @Test
    void its_deposit_is_kept_under_its_number_and_pays_the_visits_invoice() {
        business.in(business.quebec(), () -> {
            UUID home = home("fr");
            UUID offered = some.written(home, null);
            offering.offer(offered);
            refused(() -> money.take(offered, today.day(), Way.CARD, cad("100.00"), null), "estimate.not-accepted");
            answering.answer(offered, some.yes(ConsentChannel.CALL));
            UUID deposit = money.take(offered, today.day(), Way.CARD, cad("100.00"), null);
            Estimate estimate = estimates.find(offered).orElseThrow();
            assertEquals(
                    "Estimation " + estimate.label().orElseThrow(),
                    money.deposits(estimate).getFirst().words());
            UUID visit = works.makeVisit(offered, today.day(), 60);
            some.close(visit, home, 60, "2");
            UUID invoice = some.draft(visit);
            Money hundred = cad("100.00");
            assertEquals(hundred, invoices.preview(invoice, today.day()).paidBefore());
            Money total = invoices.issue(invoice, today.day()).total();
            assertEquals(hundred, invoices.view(invoice).orElseThrow().paidBefore());
            assertEquals(
                    total.minus(hundred),
                    owed.item(invoice, today.day()).orElseThrow().open());
            assertEquals("100.00", deposits.of(deposit).orElseThrow().applied().decimal());
            assertEquals("0.00", money.deposits(estimate).getFirst().left().decimal());
            books.check();
        });
    }
}
