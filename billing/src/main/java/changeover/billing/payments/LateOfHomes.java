package changeover.billing.payments;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Currency;
import java.util.List;
import java.util.UUID;

/**
 * Who pays for some homes (the payer of an agreement in force, else who is written down for it, else who signs or lives there, as
 * for a visit's invoice), and what these few are late with on a day: two questions, however
 * many homes.
 */
@ApplicationScoped
public class LateOfHomes {

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    public record Payer(UUID homeId, UUID customerId) {}

    public List<Payer> payers(Collection<UUID> homes, LocalDate day) {
        List<Payer> payers = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        with day as (select ?::date as day), home as (select unnest(?::uuid[]) as id)
                        select home_id, customer_id from (
                          select p.home_id, p.customer_id, rank() over (partition by p.home_id order by array_position(
                                   array['pays', 'signs', 'lives', 'gets_report', 'lets_in'], p.part) nulls last) as turn
                            from home_part p cross join day d
                           where p.home_id in (select id from home) and p.from_day <= d.day
                             and (p.until_day is null or p.until_day > d.day)) written
                         where turn = 1
                        union
                        select a.home_id, a.payer_id
                          from agreement a
                          join agreement_acceptance y on y.tenant_id = a.tenant_id and y.agreement_id = a.id
                          left join agreement_ending e on e.tenant_id = a.tenant_id and e.agreement_id = a.id
                          cross join day d
                         where a.home_id in (select id from home) and a.term_from <= d.day and a.term_until > d.day
                           and (e.id is null or e.day > d.day)""")) {
            select.setObject(1, day);
            select.setArray(2, connection.createArrayOf("uuid", homes.toArray()));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                payers.add(new Payer(row.getObject(1, UUID.class), row.getObject(2, UUID.class)));
            }
            return payers;
        } catch (SQLException cause) {
            throw new IllegalStateException("who pays for homes could not be read", cause);
        }
    }

    /** Open documents of these customers whose day of payment has passed, due first; only what is theirs is read. */
    public List<OpenByAge.Item> late(Collection<UUID> customers, LocalDate day) {
        Currency currency = businesses.current().currency();
        List<OpenByAge.Item> late = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(OpenSql.OPEN_OF_FEW + """
                        select invoice_id, label, customer_id, day, due_day, open_minor from item
                         where customer_id = any (?) and open_minor > 0 and due_day < ?::date
                         order by due_day, series, number""")) {
            Owed.bindDays(select, day);
            select.setArray(OpenSql.DAYS + 1, connection.createArrayOf("uuid", customers.toArray()));
            select.setObject(OpenSql.DAYS + 2, day);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                late.add(new OpenByAge.Item(
                        row.getObject(1, UUID.class),
                        row.getString(2),
                        row.getObject(3, UUID.class),
                        "",
                        row.getObject(4, LocalDate.class),
                        row.getObject(5, LocalDate.class),
                        new Money(row.getLong(6), currency)));
            }
            return late;
        } catch (SQLException cause) {
            throw new IllegalStateException("what the payers of homes are late with could not be read", cause);
        }
    }
}
