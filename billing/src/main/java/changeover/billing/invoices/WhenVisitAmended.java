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
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The bill follows the amended visit: a draft gets the new lines; what was issued stays, a credit note gives it back and
 * a new draft asks for what is right. Where nothing to pay has changed, nothing happens.
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

    private record Charged(UUID invoiceId, boolean issued) {}

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
                drafts.rewrite(connection, charged.invoiceId(), visit, draft.get());
            } else {
                replace(connection, charged.invoiceId(), visit, draft.get());
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("the amended visit could not be charged", cause);
        }
    }

    private void replace(Connection connection, UUID invoice, UUID visit, Draft draft) throws SQLException {
        List<LineRow> before = rows.lines(connection, List.of(invoice)).stream()
                .filter(line -> visit.equals(line.visitId()))
                .toList();
        if (saysTheSame(before, draft.lines())) {
            return;
        }
        if (before.stream().anyMatch(line -> line.netMinor() > 0)) {
            credits.ofVisit(invoice, visit, draft.mayIssueFrom(), WHY);
        }
        drafts.write(List.of(draft));
    }

    private static boolean saysTheSame(List<LineRow> before, List<DraftLine> now) {
        if (before.size() != now.size()) {
            return false;
        }
        for (int at = 0; at < now.size(); at++) {
            LineRow was = before.get(at);
            DraftLine is = now.get(at);
            if (was.netMinor() != is.net().minor()
                    || !was.coverage().equals(is.covered().code())
                    || !Objects.equals(was.itemCode(), is.itemCode())
                    || was.quantity().compareTo(is.quantity()) != 0) {
                return false;
            }
        }
        return true;
    }

    /** The document that charges the visit's newest version. */
    private static @Nullable Charged charged(Connection connection, UUID visit) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("""
                select l.invoice_id, s.id is not null
                  from invoice_line l
                  join invoice i on i.tenant_id = l.tenant_id and i.id = l.invoice_id and i.kind = 'visit'
                  left join invoice_issue s on s.tenant_id = l.tenant_id and s.invoice_id = l.invoice_id
                 where l.visit_id = ? order by l.visit_version desc limit 1""")) {
            select.setObject(1, visit);
            ResultSet row = select.executeQuery();
            return row.next() ? new Charged(row.getObject(1, UUID.class), row.getBoolean(2)) : null;
        }
    }
}
