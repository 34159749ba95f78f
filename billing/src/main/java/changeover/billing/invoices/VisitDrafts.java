package changeover.billing.invoices;

import changeover.billing.pricing.Prices;
import changeover.contracts.tenants.Businesses;
import changeover.scheduling.closeout.VisitClosed;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jboss.logging.Logger;

/** What a closed visit is charged, from the agreement, the price book and what earlier visits used up. */
@ApplicationScoped
class VisitDrafts {

    private static final Logger LOG = Logger.getLogger(VisitDrafts.class);

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    @Inject
    VisitRows rows;

    @Inject
    Prices prices;

    @Inject
    PromisedLines promised;

    /** Empty, and said in the log, when the home has nobody who could be asked to pay. */
    Optional<Draft> of(VisitClosed closed, int version) {
        return charged(closed, version).map(charged -> charged.draft(accepted(closed)));
    }

    /** What was accepted for the visit's work, so that nobody types it twice. */
    private Optional<PromisedLines.Agreed> accepted(VisitClosed closed) {
        try (Connection connection = datasource.getConnection()) {
            return promised.of(connection, closed.visitId());
        } catch (SQLException cause) {
            throw new IllegalStateException("what was accepted for the visit could not be read", cause);
        }
    }

    /** What a trip to a closed door costs: empty where the business asks nothing for it, or nobody could be asked. */
    Optional<Draft> withoutAccess(VisitClosed atTheDoor) {
        return charged(atTheDoor, 1).flatMap(VisitCharged::withoutAccess);
    }

    private Optional<VisitCharged> charged(VisitClosed closed, int version) {
        List<String> parts =
                closed.partsUsed().stream().map(VisitClosed.Part::partCode).toList();
        try (Connection connection = datasource.getConnection()) {
            Optional<VisitFacts> facts = rows.of(connection, closed);
            if (facts.isEmpty()) {
                LOG.warnf("visit %s has nobody to pay for it: no draft was written", closed.visitId());
            }
            return facts.map(known -> new VisitCharged(
                    closed,
                    version,
                    known,
                    prices.of(parts),
                    businesses.current().currency(),
                    businesses.profile().facts().invoiceTermsDays()));
        } catch (SQLException cause) {
            throw new IllegalStateException("the visit could not be charged", cause);
        }
    }
}
