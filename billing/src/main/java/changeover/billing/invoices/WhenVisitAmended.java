package changeover.billing.invoices;

import changeover.contracts.words.Wording;
import changeover.scheduling.closeout.VisitAmended;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The bill follows the amended visit: a draft gets the new lines, beside those that a person wrote ({@link Following});
 * what was issued stays, a credit note gives it back and a new draft asks for what is right. Where nothing to pay has
 * changed, nothing happens: the visit is compared with what was reckoned of it, not with what a person made of that.
 *
 * <p>After a discard the visit is charged anew, by a draft of its own: it was the old record's draft that was not wanted.
 */
@ApplicationScoped
class WhenVisitAmended {

    private static final Wording WHY = new Wording(
            "The visit’s record was corrected; a new invoice takes its place.",
            "Le compte rendu de la visite a été corrigé; une nouvelle facture la remplace.");

    @Inject
    AgroalDataSource datasource;

    @Inject
    InvoiceRows rows;

    @Inject
    VisitDrafts visits;

    @Inject
    Drafts drafts;

    @Inject
    Credits credits;

    private record Charged(UUID invoiceId, boolean issued, boolean discarded) {}

    void follow(@Observes VisitAmended amended) {
        Optional<Draft> draft = visits.of(amended.now(), amended.version());
        if (draft.isEmpty()) {
            return;
        }
        UUID visit = amended.now().visitId();
        try (Connection connection = datasource.getConnection()) {
            Charged charged = charged(connection, visit);
            if (charged == null) {
                drafts.write(List.of(draft.get()));
            } else if (!charged.issued()) {
                AmendedDrafts.rewrite(connection, charged.invoiceId(), visit, draft.get());
            } else {
                replace(connection, charged.invoiceId(), visit, draft.get());
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("the amended visit could not be charged", cause);
        }
    }

    private void replace(Connection connection, UUID invoice, UUID visit, Draft draft) throws SQLException {
        if (Reckoned.sayTheSame(Reckoned.of(connection, invoice, visit), draft.lines())) {
            return;
        }
        boolean charged = rows.lines(connection, List.of(invoice)).stream()
                .anyMatch(line -> visit.equals(line.visitId()) && line.netMinor() > 0);
        if (charged) {
            credits.ofVisit(invoice, visit, draft.mayIssueFrom(), WHY);
        }
        drafts.write(List.of(draft));
    }

    /**
     * The document that charges the visit's newest version. A discarded draft charges nothing; what was issued before it
     * still counts, unless a credit note gives that back already.
     */
    private static @Nullable Charged charged(Connection connection, UUID visit) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("""
                with held as (
                  select invoice_id, visit_version from invoice_line where visit_id = ?
                  union all select id, visit_version from invoice where visit_id = ?)
                select h.invoice_id, s.id is not null, x.id is not null
                  from held h
                  join invoice i on i.id = h.invoice_id and i.kind = 'visit'
                  left join invoice_issue s on s.tenant_id = i.tenant_id and s.invoice_id = i.id
                  left join invoice_discard x on x.tenant_id = i.tenant_id and x.invoice_id = i.id
                 order by h.visit_version desc nulls last, x.id is not null""")) {
            select.setObject(1, visit);
            select.setObject(2, visit);
            ResultSet row = select.executeQuery();
            boolean afterADiscard = false;
            while (row.next()) {
                Charged one = new Charged(row.getObject(1, UUID.class), row.getBoolean(2), row.getBoolean(3));
                if (!one.discarded()) {
                    return afterADiscard && isGivenBack(connection, one.invoiceId(), visit) ? null : one;
                }
                afterADiscard = true;
            }
            return null;
        }
    }

    private static boolean isGivenBack(Connection connection, UUID invoice, UUID visit) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("""
                select 1 from invoice c
                  join invoice_line l on l.tenant_id = c.tenant_id and l.invoice_id = c.id and l.visit_id = ?
                 where c.credits_id = ? and not exists (
                   select 1 from invoice_discard x where x.tenant_id = c.tenant_id and x.invoice_id = c.id) limit 1""")) {
            select.setObject(1, visit);
            select.setObject(2, invoice);
            return select.executeQuery().next();
        }
    }
}
