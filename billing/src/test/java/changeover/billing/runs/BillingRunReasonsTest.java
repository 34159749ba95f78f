package changeover.billing.runs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.invoices.Draft;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** What a run leaves out, joins and refuses, with its reason. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class BillingRunReasonsTest {

    private static final LocalDate DAY = SomeDrafts.DAY;

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    BillingRuns runs;

    @Inject
    RunPreviews previews;

    @Inject
    RunWork work;

    @Inject
    ARun aRun;

    @Test
    void what_is_odd_is_said_before_and_kept_after() {
        UUID tenant = business.quebec();
        business.in(tenant, () -> {
            UUID customer = business.customer("Ida Roe");
            business.execute("update customer set email = 'ida@example.com'");
            UUID silent = business.customer("Basil Fenn");
            drafts.write(List.of(
                    SomeDrafts.plan(customer, business.home(customer, "QC"), "100.00"),
                    SomeDrafts.plan(silent, business.home(silent, "QC"), "10.00"),
                    SomeDrafts.plan(customer, business.home(customer, "XX"), "100.00"),
                    SomeDrafts.on(DAY.plusDays(1), customer, business.home(customer, "QC"), "100.00")));
            business.execute("insert into invoice (kind, customer_id, language, currency, may_issue_from,"
                    + " awaits_first_visit, due_days, subtotal_minor) values ('plan', '" + customer
                    + "', 'fr', 'CAD', '2026-03-01', true, 30, 100)");
        });
        RunPreview preview = business.in(tenant, () -> previews.on(DAY));
        assertEquals(2, preview.drafts());
        assertEquals("126.48", preview.totals().getFirst().decimal());
        assertEquals(
                "[tax.place-unknown, invoice.awaits-first-visit]",
                preview.refused().stream().map(odd -> odd.why().code()).toList().toString());
        assertEquals("Basil Fenn", preview.withoutMail().getFirst().draft().customer());
        UUID id = aRun.start(tenant);
        work.goOn();
        BillingRun run = aRun.find(tenant, id);
        assertEquals(
                "2 1 126.48",
                run.issued() + " " + run.refused() + " "
                        + run.totals().getFirst().decimal());
        RunLeft left = business.in(tenant, () -> runs.left(id)).getFirst();
        assertEquals("Ida Roe", left.customer());
        assertTrue(left.why().fr().contains("Aucune taxe"), left.why().fr());
    }

    @Test
    void a_payer_who_wants_one_invoice_gets_one_and_a_place_without_a_tax_holds_up_no_other() {
        UUID tenant = business.quebec();
        business.in(tenant, () -> {
            UUID each = business.customer("Ida Roe");
            UUID payer = business.customer("Gestion Roe", "fr", "one");
            List<Draft> all = new ArrayList<>();
            for (int at = 0; at < 150; at++) {
                all.add(SomeDrafts.plan(each, business.home(each, "QC"), "1.00"));
                if (at % 50 == 0) {
                    all.add(SomeDrafts.plan(payer, business.home(payer, "QC"), "10.00"));
                    all.add(SomeDrafts.plan(payer, business.home(payer, "XX"), "10.00"));
                }
            }
            drafts.write(all);
        });
        UUID id = aRun.start(tenant);
        work.goOn();
        BillingRun run = aRun.find(tenant, id);
        assertEquals("156 151 2 3", run.drafts() + " " + run.issued() + " " + run.joined() + " " + run.refused());
        aRun.gapless(tenant, 151);
    }

    @Test
    void numbers_and_days_rise_together() {
        UUID tenant = business.quebec();
        UUID late = business.in(tenant, () -> {
            UUID customer = business.customer("Ida Roe");
            UUID home = business.home(customer, "QC");
            List<UUID> ids = drafts.write(
                    List.of(SomeDrafts.plan(customer, home, "1.00"), SomeDrafts.plan(customer, home, "2.00")));
            invoices.issue(ids.getFirst(), DAY.plusDays(3));
            return ids.getLast();
        });
        assertEquals("invoice.before-the-last", ARun.refused(() -> aRun.start(tenant)));
        assertEquals(
                "invoice.before-the-last",
                ARun.refused(() -> business.in(tenant, () -> invoices.issue(late, DAY.plusDays(2)))));
        assertEquals("run.day-to-come", ARun.refused(() -> business.in(tenant, () -> runs.start(LocalDate.MAX))));
        assertEquals(
                "F-2026-0002",
                business.in(tenant, () -> invoices.issue(late, DAY.plusDays(3))).label());
    }
}
