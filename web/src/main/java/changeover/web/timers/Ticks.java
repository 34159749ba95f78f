package changeover.web.timers;

import changeover.billing.documents.DocumentsToMake;
import changeover.billing.notices.OutboxMail;
import changeover.billing.runs.RunWork;
import changeover.contracts.calendar.Days;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Doors;
import changeover.contracts.tenants.Today;
import changeover.scheduling.dayplan.season.SeasonWork;
import io.quarkus.scheduler.Scheduled;
import io.quarkus.scheduler.Scheduled.ConcurrentExecution;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.UUID;
import java.util.function.Consumer;
import org.jboss.logging.Logger;

/** The timers of every business in turn; one that fails does not hold up the others. */
@ApplicationScoped
class Ticks {

    private static final Logger LOG = Logger.getLogger(Ticks.class);
    private static final int PAPERS_A_TICK = 200;
    private static final int MAILS_A_TICK = 50;

    @Inject
    Doors doors;

    @Inject
    CurrentTenant current;

    @Inject
    Today today;

    @Inject
    Days days;

    @Inject
    DocumentsToMake papers;

    @Inject
    OutboxMail mail;

    @Inject
    RunWork runs;

    @Inject
    SeasonWork seasons;

    /** Days pass once for each business, in order, whichever machine notices first. */
    @Scheduled(every = "{changeover.ticks.days:10m}", delayed = "20s", concurrentExecution = ConcurrentExecution.SKIP)
    void days() {
        each("days", tenant -> {
            LocalDate day = current.run(tenant, CurrentTenant.NOBODY, () -> today.day());
            days.letPass(tenant, day);
        });
    }

    /** Papers wanted by what was issued and closed, then the mail that waited for them. */
    @Scheduled(every = "{changeover.ticks.mail:20s}", delayed = "15s", concurrentExecution = ConcurrentExecution.SKIP)
    void papersAndMail() {
        each("papers", tenant -> papers.makePending(tenant, PAPERS_A_TICK));
        if (mail.hasServer()) {
            each("mail", tenant -> mail.sendPending(tenant, MAILS_A_TICK));
        }
    }

    /** Billing runs that were begun go on, a batch of each business in turn; after a restart where they stood. */
    @Scheduled(every = "{changeover.ticks.runs:3s}", delayed = "5s", concurrentExecution = ConcurrentExecution.SKIP)
    void billingRuns() {
        runs.goOn();
    }

    /** Seasons that somebody asked about are searched further; after a restart from the best answer that was written down. */
    @Scheduled(every = "{changeover.ticks.seasons:2s}", delayed = "6s", concurrentExecution = ConcurrentExecution.SKIP)
    void seasons() {
        seasons.goOn();
    }

    private void each(String what, Consumer<UUID> work) {
        for (UUID tenant : doors.tenants()) {
            try {
                work.accept(tenant);
            } catch (RuntimeException failure) {
                LOG.errorf(failure, "the timer for %s failed for %s", what, tenant);
            }
        }
    }
}
