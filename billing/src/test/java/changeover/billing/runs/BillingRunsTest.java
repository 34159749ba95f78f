package changeover.billing.runs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.documents.Documents;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.InvoiceIssued;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;

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
    ARun aRun;

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

    @Test
    void a_thousand_drafts_are_issued_their_papers_made_and_their_mail_written() {
        UUID tenant = business.quebec();
        aRun.some(tenant, MANY);
        RunPreview preview = business.in(tenant, () -> previews.on(DAY));
        assertEquals(MANY, preview.drafts());
        assertEquals(MANY, preview.withoutMail().size());
        UUID id = aRun.start(tenant);
        assertEquals(BillingRun.State.RUNNING, aRun.find(tenant, id).state());
        work.goOn();
        BillingRun run = aRun.find(tenant, id);
        assertEquals(BillingRun.State.DONE, run.state());
        assertEquals(MANY, run.issued());
        assertEquals(0, run.papers());
        assertEquals(preview.totals(), run.totals());
        aRun.gapless(tenant, MANY);
        assertEquals(
                MANY + " " + MANY,
                business.in(
                        tenant,
                        () -> business.one(
                                "select (select count(*) from document) || ' ' || (select count(*) from outbox)")));
        assertEquals(
                "F-2026-0001",
                business.in(tenant, () -> runs.issued(id, 0, 10)).getFirst().label());
        assertEquals("run.nothing", ARun.refused(() -> aRun.start(tenant)));
    }

    @Test
    void a_run_cut_off_in_the_middle_goes_on_without_a_double_or_a_gap() {
        UUID tenant = business.quebec();
        aRun.some(tenant, 350);
        UUID id = aRun.start(tenant);
        assertTrue(work.nextBatch(tenant));
        cut.next("F-2026-0050");
        assertThrows(IllegalStateException.class, () -> work.nextBatch(tenant));
        assertEquals(35, aRun.find(tenant, id).issued(), "the batch that was cut off left nothing");
        cut.next("F-2026-0250");
        work.goOn();
        assertEquals(245, aRun.find(tenant, id).issued());
        work.goOn();
        assertEquals(350, aRun.find(tenant, id).issued());
        assertEquals(BillingRun.State.DONE, aRun.find(tenant, id).state());
        aRun.gapless(tenant, 350);
        assertEquals(0, business.in(tenant, () -> documents.waiting()));
    }

    @Test
    void two_machines_at_one_run_and_a_person_beside_them_issue_everything_once() throws Exception {
        UUID tenant = business.quebec();
        List<UUID> ids = aRun.some(tenant, 600);
        UUID id = aRun.start(tenant);
        assertEquals("run.going-on", ARun.refused(() -> aRun.start(tenant)));
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
        BillingRun run = aRun.find(tenant, id);
        assertEquals(BillingRun.State.DONE, run.state());
        assertEquals(600, run.issued() + run.refused());
        aRun.gapless(tenant, 600);
    }

    @Test
    void a_halted_run_leaves_the_rest_as_drafts_and_a_new_one_takes_them() {
        UUID tenant = business.quebec();
        aRun.some(tenant, 250);
        UUID id = aRun.start(tenant);
        work.nextBatch(tenant);
        business.in(tenant, () -> runs.halt(id));
        assertFalse(work.nextBatch(tenant));
        assertEquals(BillingRun.State.HALTED, aRun.find(tenant, id).state());
        assertEquals(25, aRun.find(tenant, id).issued());
        assertEquals("run.ended", ARun.refused(() -> business.in(tenant, () -> runs.halt(id))));
        UUID next = aRun.start(tenant);
        work.goOn();
        assertEquals(225, aRun.find(tenant, next).issued());
        aRun.gapless(tenant, 250);
    }
}
