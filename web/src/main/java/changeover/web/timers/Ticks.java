package changeover.web.timers;

import changeover.billing.documents.DocumentsToMake;
import changeover.billing.notices.OutboxMail;
import changeover.billing.runs.RunWork;
import changeover.contracts.calendar.Nights;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Doors;
import changeover.scheduling.dayplan.change.RoadsAhead;
import changeover.scheduling.dayplan.season.SeasonWork;
import changeover.web.roads.RoadTable;
import io.micrometer.core.instrument.MeterRegistry;
import io.quarkus.scheduler.Scheduled;
import io.quarkus.scheduler.Scheduled.ConcurrentExecution;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
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
    Nights nights;

    @Inject
    CurrentTenant current;

    @Inject
    RoadTable roads;

    @Inject
    RoadsAhead ahead;

    @Inject
    MeterRegistry meters;

    @Inject
    DocumentsToMake papers;

    @Inject
    OutboxMail mail;

    @Inject
    RunWork runs;

    @Inject
    SeasonWork seasons;

    /** Days pass once for each business, in order, whichever machine notices first; how long it took is said. */
    @Scheduled(every = "{changeover.ticks.days:10m}", delayed = "20s", concurrentExecution = ConcurrentExecution.SKIP)
    void days() {
        Nights.Night night = nights.pass();
        if (night.businesses() > 0) {
            meters.timer("changeover.nights").record(night.took());
            meters.counter("changeover.days.passed").increment(night.days());
            LOG.infof(
                    "the night: %d days passed here of %d businesses that waited, %d failed, in %d ms",
                    night.days(),
                    night.businesses(),
                    night.failed(),
                    night.took().toMillis());
        }
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

    /** The roads of the coming days are asked for before anybody looks at them; nothing where no table is installed. */
    @Scheduled(every = "{changeover.ticks.roads:10m}", delayed = "45s", concurrentExecution = ConcurrentExecution.SKIP)
    void roads() {
        if (roads.isInstalled()) {
            each("roads", tenant -> roads.prepare(current.run(tenant, CurrentTenant.NOBODY, ahead::places)));
        }
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
