package changeover.billing.invoices;

import changeover.scheduling.closeout.VisitClosed;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.List;

/** A closed visit gives its draft, and opens the plan's invoices that waited for the first visit. */
@ApplicationScoped
class WhenVisitClosed {

    @Inject
    AgroalDataSource datasource;

    @Inject
    VisitDrafts visits;

    @Inject
    Drafts drafts;

    void charge(@Observes VisitClosed closed) {
        if (closed.agreementId() != null) {
            firstVisitIsDone(closed);
        }
        visits.of(closed, 1).filter(draft -> !draft.lines().isEmpty()).ifPresent(draft -> drafts.write(List.of(draft)));
    }

    private void firstVisitIsDone(VisitClosed closed) {
        try (Connection connection = datasource.getConnection();
                PreparedStatement update = connection.prepareStatement("""
                        update invoice i set awaits_first_visit = false, version = version + 1,
                               may_issue_from = greatest(may_issue_from, ?)
                         where agreement_id = ? and awaits_first_visit and not exists (
                           select 1 from invoice_discard x where x.tenant_id = i.tenant_id and x.invoice_id = i.id)""")) {
            update.setObject(1, closed.day());
            update.setObject(2, closed.agreementId());
            update.executeUpdate();
        } catch (SQLException cause) {
            throw new IllegalStateException("the plan's invoices could not be opened", cause);
        }
    }
}
