package changeover.billing.invoices;

import changeover.contracts.agreements.AgreementTakenOver;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;

/** What is still to be asked for an agreement is asked of whoever has it then; what was issued, or was due before, stays. */
@ApplicationScoped
class WhenAgreementTakenOver {

    @Inject
    AgroalDataSource datasource;

    void askTheNewOne(@Observes AgreementTakenOver event) {
        try (Connection connection = datasource.getConnection();
                PreparedStatement update = connection.prepareStatement("""
                        update invoice i set customer_id = ?, language = ?, purchase_order = null, version = version + 1
                         where i.tenant_id = current_tenant() and i.agreement_id = ? and i.kind = 'plan'
                           and i.customer_id = ? and (i.may_issue_from >= ? or i.awaits_first_visit)
                           and not exists (select 1 from invoice_issue s
                             where s.tenant_id = i.tenant_id and s.invoice_id = i.id)
                           and not exists (select 1 from invoice_discard d
                             where d.tenant_id = i.tenant_id and d.invoice_id = i.id)""")) {
            update.setObject(1, event.payerId());
            update.setString(2, event.language());
            update.setObject(3, event.agreementId());
            update.setObject(4, event.wasPayerId());
            update.setObject(5, event.day());
            update.executeUpdate();
        } catch (SQLException cause) {
            throw new IllegalStateException("the drafts could not pass to the new payer", cause);
        }
    }
}
