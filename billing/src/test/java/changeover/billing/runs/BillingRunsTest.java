package changeover.billing.runs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.documents.Documents;
import changeover.billing.invoices.Draft;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.InvoiceChecks;
import changeover.billing.invoices.InvoiceIssued;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.contracts.PostgresForTests;
import changeover.contracts.words.Refused;
import io.agroal.api.AgroalDataSource;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** A run issues every draft once, whatever happens in the middle. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class BillingRunsTest {

    private static final LocalDate DAY = SomeDrafts.DAY;
    private static final int MANY = Boolean.getBoolean("changeover.deep") ? 10_000 : 1_000;

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
    Documents documents;

    @Inject
    AgroalDataSource datasource;

    @Inject
    PowerCut cut;

    /** Cuts the power inside the transaction that issues a document with the label. */
    @ApplicationScoped
    static class PowerCut {
        private volatile String at = "";

        void next(String label) {
            at = label;
        }

        void cut(@Observes InvoiceIssued issued) {
            if (issued.issued().stream().anyMatch(one -> one.label().equals(at))) {
                at = "";
                throw new IllegalStateException("the power was cut");
            }
        }
    }

    private List<UUID> some(UUID tenant, int count) {
        return business.in(tenant, () -> {
            UUID customer = business.customer("Ida Roe");
            UUID home = business.home(customer, "QC");
            List<Draft> all = new ArrayList<>();
            for (int at = 0; at < count; at++) {
                all.add(SomeDrafts.plan(customer, home, (at + 1) + ".00", "7.35"));
            }
            return drafts.write(all);
        });
    }

    private UUID start(UUID tenant) {
        return business.in(tenant, () -> runs.start(DAY));
    }

    private BillingRun find(UUID tenant, UUID run) {
        return business.in(tenant, () -> runs.find(run).orElseThrow());
    }

    private void gapless(UUID tenant, int count) {
        assertEquals(
                "1 " + count + " " + count,
                business.in(
                        tenant,
                        () -> business.one(
                                "select min(number) || ' ' || max(number) || ' ' || count(distinct number) from invoice_issue")));
        assertEquals(
                "[0, 0, 0, 0]",
                business.in(tenant, () -> {
                            try (Connection connection = datasource.getConnection()) {
                                return InvoiceChecks.all(connection).stream()
                                        .map(InvoiceChecks.Found::bad)
                                        .toList();
                            }
                        })
                        .toString());
    }

    @Test
    void a_thousand_drafts_are_issued_their_papers_made_and_their_mail_written() {
        UUID tenant = business.quebec();
        some(tenant, MANY);
        RunPreview preview = business.in(tenant, () -> previews.on(DAY));
        assertEquals(MANY, preview.drafts());
        assertEquals(MANY, preview.withoutMail().size());
        UUID id = start(tenant);
        assertEquals(BillingRun.State.RUNNING, find(tenant, id).state());
        work.goOn();
        BillingRun run = find(tenant, id);
        assertEquals(BillingRun.State.DONE, run.state());
        assertEquals(MANY, run.issued());
        assertEquals(0, run.papers());
        assertEquals(preview.totals(), run.totals());
        gapless(tenant, MANY);
        assertEquals(
                MANY + " " + MANY,
                business.in(
                        tenant,
                        () -> business.one(
                                "select (select count(*) from document) || ' ' || (select count(*) from outbox)")));
        assertEquals(
                "F-2026-0001",
                business.in(tenant, () -> runs.issued(id, 0, 10)).getFirst().label());
        assertEquals("run.nothing", refused(() -> start(tenant)));
    }

    @Test
    void a_run_cut_off_in_the_middle_goes_on_without_a_double_or_a_gap() {
        UUID tenant = business.quebec();
        some(tenant, 350);
        UUID id = start(tenant);
        assertTrue(work.nextBatch(tenant));
        cut.next("F-2026-0150");
        assertThrows(IllegalStateException.class, () -> work.nextBatch(tenant));
        assertEquals(100, find(tenant, id).issued(), "the batch that was cut off left nothing");
        cut.next("F-2026-0250");
        work.goOn();
        assertEquals(200, find(tenant, id).issued());
        work.goOn();
        assertEquals(350, find(tenant, id).issued());
        assertEquals(BillingRun.State.DONE, find(tenant, id).state());
        gapless(tenant, 350);
        assertEquals(0, business.in(tenant, () -> documents.waiting()));
    }

    @Test
    void two_machines_at_one_run_and_a_person_beside_them_issue_everything_once() throws Exception {
        UUID tenant = business.quebec();
        List<UUID> ids = some(tenant, 600);
        UUID id = start(tenant);
        assertEquals("run.going-on", refused(() -> start(tenant)));
        try (var threads = Executors.newFixedThreadPool(5)) {
            List<Callable<Integer>> all = new ArrayList<>(Collections.nCopies(4, () -> {
                work.goOn();
                return 0;
            }));
            all.add(() -> {
                int issued = 0;
                for (UUID draft : ids.subList(550, 600)) {
                    issued += business.in(tenant, () -> invoices.issue(List.of(draft), DAY))
                            .issued()
                            .size();
                }
                return issued;
            });
            for (var done : threads.invokeAll(all)) {
                done.get();
            }
        }
        work.goOn();
        BillingRun run = find(tenant, id);
        assertEquals(BillingRun.State.DONE, run.state());
        assertEquals(600, run.issued() + run.refused());
        gapless(tenant, 600);
    }

    @Test
    void a_halted_run_leaves_the_rest_as_drafts_and_a_new_one_takes_them() {
        UUID tenant = business.quebec();
        some(tenant, 250);
        UUID id = start(tenant);
        work.nextBatch(tenant);
        business.in(tenant, () -> runs.halt(id));
        assertFalse(work.nextBatch(tenant));
        assertEquals(BillingRun.State.HALTED, find(tenant, id).state());
        assertEquals(100, find(tenant, id).issued());
        assertEquals("run.ended", refused(() -> business.in(tenant, () -> runs.halt(id))));
        UUID next = start(tenant);
        work.goOn();
        assertEquals(150, find(tenant, next).issued());
        gapless(tenant, 250);
    }

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
                    SomeDrafts.plan(customer, business.home(customer, "AB"), "100.00"),
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
                preview.refused().stream()
                        .map(odd -> odd.why() == null ? "" : odd.why().code())
                        .toList()
                        .toString());
        assertEquals("Basil Fenn", preview.withoutMail().getFirst().customer());
        UUID id = start(tenant);
        work.goOn();
        BillingRun run = find(tenant, id);
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
                    all.add(SomeDrafts.plan(payer, business.home(payer, "AB"), "10.00"));
                }
            }
            drafts.write(all);
        });
        UUID id = start(tenant);
        work.goOn();
        BillingRun run = find(tenant, id);
        assertEquals("156 151 2 3", run.drafts() + " " + run.issued() + " " + run.joined() + " " + run.refused());
        gapless(tenant, 151);
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
        assertEquals("invoice.before-the-last", refused(() -> start(tenant)));
        assertEquals(
                "invoice.before-the-last",
                refused(() -> business.in(tenant, () -> invoices.issue(late, DAY.plusDays(2)))));
        assertEquals("run.day-to-come", refused(() -> business.in(tenant, () -> runs.start(LocalDate.MAX))));
        assertEquals(
                "F-2026-0002",
                business.in(tenant, () -> invoices.issue(late, DAY.plusDays(3))).label());
    }

    private static String refused(Executable verb) {
        return assertThrows(Refused.class, verb).first().code();
    }
}
