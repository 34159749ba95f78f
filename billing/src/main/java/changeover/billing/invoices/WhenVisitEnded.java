package changeover.billing.invoices;

import changeover.scheduling.closeout.VisitClosed;
import changeover.scheduling.visits.VisitEnd;
import changeover.scheduling.visits.VisitEnded;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * We were at the door on the day that was given, and nobody let us in: a draft asks the fee, where the business has one. A
 * visit that we did not keep, that was called off, or that had no day asks nothing; none asks twice.
 */
@ApplicationScoped
class WhenVisitEnded {

    @Inject
    AgroalDataSource datasource;

    @Inject
    VisitDrafts visits;

    @Inject
    Drafts drafts;

    void charge(@Observes VisitEnded event) {
        List<Draft> asked = event.ended().stream()
                .filter(ended -> ended.how() == VisitEnd.NO_ACCESS)
                .flatMap(ended -> atTheDoor(ended).stream())
                .flatMap(visit -> visits.withoutAccess(visit).stream())
                .toList();
        if (!asked.isEmpty()) {
            drafts.write(asked);
        }
    }

    /** The trip as it was made: nobody stayed, nothing was used. */
    private Optional<VisitClosed> atTheDoor(VisitEnded.Ended ended) {
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select v.kind, a.technician_id, a.day from visit v
                          join appointment a on a.tenant_id = v.tenant_id and a.visit_id = v.id and a.day <= ?
                         where v.id = ? and not exists (
                           select 1 from invoice i where i.tenant_id = v.tenant_id and i.visit_id = v.id)""")) {
            select.setObject(1, ended.day());
            select.setObject(2, ended.visitId());
            ResultSet row = select.executeQuery();
            return row.next()
                    ? Optional.of(new VisitClosed(
                            ended.visitId(),
                            ended.homeId(),
                            ended.agreementId(),
                            row.getString(1),
                            null,
                            row.getObject(2, UUID.class),
                            row.getObject(3, LocalDate.class),
                            0,
                            0,
                            0,
                            List.of(),
                            List.of()))
                    : Optional.empty();
        } catch (SQLException cause) {
            throw new IllegalStateException("the trip could not be charged", cause);
        }
    }
}
