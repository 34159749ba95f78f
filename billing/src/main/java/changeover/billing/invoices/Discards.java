package changeover.billing.invoices;

import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;

/**
 * A draft that is not to be asked for is discarded, with a reason; it stays to be read and is never issued. What was issued
 * is credited instead.
 *
 * <p>A discarded instalment is not written again: the business gives it up. A visit's draft is written again when the visit
 * is amended. What a discarded draft's lines say the plan included still counts as given, since the work was done; money
 * that was paid ahead for the draft is kept for the customer and may pay something else.
 */
@ApplicationScoped
public class Discards {

    private static final int SHORTEST_REASON = 3;

    @Inject
    EntityManager session;

    @Inject
    AgroalDataSource datasource;

    @Inject
    Invoices invoices;

    /** @throws changeover.contracts.words.Refused when it was issued, changed or discarded meanwhile, or without a reason */
    public void discard(UUID id, FilledOn filledOn, LocalDate day, String why) {
        if (why.strip().length() < SHORTEST_REASON) {
            throw Refusal.of("invoice.discard-why").at("why").thrown();
        }
        session.flush();
        try (Connection connection = datasource.getConnection()) {
            DraftHead.lock(connection, id);
            Invoice draft =
                    invoices.draft(id).orElseThrow(() -> invoices.notADraft(id).thrown());
            session.refresh(draft);
            filledOn.mustBe(draft.version());
            free(connection, id);
            try (PreparedStatement insert = connection.prepareStatement(
                    "insert into invoice_discard (invoice_id, day, why) values (?, ?, ?)")) {
                insert.setObject(1, id);
                insert.setObject(2, day);
                insert.setString(3, why.strip());
                insert.executeUpdate();
            }
            session.detach(draft);
        } catch (SQLException cause) {
            throw new IllegalStateException("the draft could not be discarded", cause);
        }
    }

    private static void free(Connection connection, UUID id) throws SQLException {
        try (PreparedStatement free = connection.prepareStatement("""
                delete from payment_allocation a where invoice_id = ? and not exists (
                  select 1 from payment_undoing u where u.tenant_id = a.tenant_id and u.payment_id = a.payment_id)""")) {
            free.setObject(1, id);
            free.executeUpdate();
        }
    }

    /** Empty while the document was not discarded. */
    public Optional<Discard> of(UUID id) {
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(
                        "select day, why, made_by from invoice_discard where invoice_id = ?")) {
            select.setObject(1, id);
            ResultSet row = select.executeQuery();
            return row.next()
                    ? Optional.of(new Discard(
                            row.getObject(1, LocalDate.class), row.getString(2), row.getObject(3, UUID.class)))
                    : Optional.empty();
        } catch (SQLException cause) {
            throw new IllegalStateException("the discard could not be read", cause);
        }
    }
}
