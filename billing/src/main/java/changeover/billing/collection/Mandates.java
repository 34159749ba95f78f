package changeover.billing.collection;

import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;

/** Who agreed that what is due is collected from their account. */
@ApplicationScoped
public class Mandates {

    @Inject
    AgroalDataSource datasource;

    @Inject
    Today today;

    /** @param reference what stands on the signed paper: its number, the end of the account */
    public record Mandate(UUID id, UUID customerId, LocalDate signedOn, String reference) {}

    /** The one that stands; empty when there is none. */
    public Optional<Mandate> of(UUID customer) {
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select m.id, m.customer_id, m.signed_on, m.reference from debit_mandate m
                         where m.customer_id = ? and not exists (
                           select 1 from debit_mandate_end e where e.tenant_id = m.tenant_id and e.mandate_id = m.id)
                         order by m.id desc limit 1""")) {
            select.setObject(1, customer);
            ResultSet row = select.executeQuery();
            return row.next()
                    ? Optional.of(new Mandate(
                            row.getObject(1, UUID.class),
                            row.getObject(2, UUID.class),
                            row.getObject(3, LocalDate.class),
                            row.getString(4)))
                    : Optional.empty();
        } catch (SQLException cause) {
            throw new IllegalStateException("the mandate could not be read", cause);
        }
    }

    /** A new one takes the place of the one that stood. */
    public void sign(UUID customer, LocalDate signedOn, String reference) {
        if (signedOn.isAfter(today.day())) {
            throw Refusal.of("collection.signed-to-come").at("signedOn").thrown();
        }
        if (reference.isBlank()) {
            throw Refusal.of("collection.reference").at("reference").thrown();
        }
        of(customer).ifPresent(before -> end(before.id()));
        write(
                "insert into debit_mandate (customer_id, signed_on, reference) values (?, ?, ?)",
                customer,
                signedOn,
                reference.strip());
    }

    public void end(UUID mandate) {
        write("insert into debit_mandate_end (mandate_id, day) values (?, ?)", mandate, today.day());
    }

    private void write(String sql, Object... values) {
        try (Connection connection = datasource.getConnection();
                PreparedStatement insert = connection.prepareStatement(sql)) {
            for (int at = 0; at < values.length; at++) {
                insert.setObject(at + 1, values[at]);
            }
            insert.executeUpdate();
        } catch (SQLException cause) {
            throw new IllegalStateException("the mandate could not be kept", cause);
        }
    }
}
