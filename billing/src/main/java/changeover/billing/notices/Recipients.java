package changeover.billing.notices;

import changeover.billing.documents.Places;
import changeover.billing.documents.Words;
import changeover.contracts.tenants.Locales;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Who the messages go to: many customers in one question, each with the address that letters for them go to. */
@ApplicationScoped
class Recipients {

    /** A customer without an address of their own gets letters at a home of theirs. */
    private static final String CUSTOMERS = """
            select c.id, c.name, c.email, c.language, coalesce(c.street, h.street), coalesce(c.city, h.city),
              coalesce(c.region, h.region), coalesce(c.postal, h.postal),
              case when c.street is null then h.unit_label end
            from customer c left join lateral (
              select h.* from home_part p join home h on h.tenant_id = p.tenant_id and h.id = p.home_id
              where p.tenant_id = c.tenant_id and p.customer_id = c.id order by p.part = 'lives' desc, p.id limit 1) h
              on c.street is null
            where c.tenant_id = current_tenant() and c.id = any(?::uuid[])
            """;

    @Inject
    AgroalDataSource database;

    Map<UUID, Recipient> of(Collection<UUID> customers) {
        Map<UUID, Recipient> found = new LinkedHashMap<>();
        try (var connection = database.getConnection();
                PreparedStatement select = connection.prepareStatement(CUSTOMERS)) {
            Object[] ids = customers.stream().distinct().map(UUID::toString).toArray();
            select.setArray(1, connection.createArrayOf("uuid", ids));
            try (ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    Recipient recipient = recipient(row);
                    found.put(row.getObject(1, UUID.class), recipient);
                }
            }
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
        return found;
    }

    /** Whoever gets the report of a home on a day; when nobody was named, who signs. */
    List<Recipient> ofReport(UUID home, LocalDate day) {
        String sql = """
                select distinct p.customer_id, p.part from home_part p
                where p.tenant_id = current_tenant() and p.home_id = ?::uuid and p.part in ('gets_report', 'signs')
                  and p.from_day <= ?::date and (p.until_day is null or p.until_day > ?::date)
                """;
        List<UUID> getters = new ArrayList<>();
        List<UUID> signers = new ArrayList<>();
        try (var connection = database.getConnection();
                PreparedStatement select = connection.prepareStatement(sql)) {
            select.setString(1, home.toString());
            select.setString(2, day.toString());
            select.setString(3, day.toString());
            try (ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    (row.getString(2).equals("signs") ? signers : getters).add(row.getObject(1, UUID.class));
                }
            }
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
        return List.copyOf(of(getters.isEmpty() ? signers : getters).values());
    }

    /**
     * Whoever lives in a home on a day, signs for it or gets its reports: what may hurt them is told to all, once each. What serves a
     * building may hurt whoever is in any of its homes.
     *
     * @param machine that must not be used; null where it is no one machine
     */
    List<Recipient> ofDanger(UUID home, @Nullable UUID machine, LocalDate day) {
        String sql = """
                select distinct p.customer_id from home_part p
                where p.tenant_id = current_tenant() and p.part in ('lives', 'signs', 'gets_report')
                  and p.home_id in (
                    select ?::uuid
                    union
                    select h.id from equipment q
                      join home h on h.tenant_id = q.tenant_id and h.building_id = q.building_id
                     where q.tenant_id = current_tenant() and q.id = ?::uuid)
                  and p.from_day <= ?::date and (p.until_day is null or p.until_day > ?::date)
                """;
        List<UUID> told = new ArrayList<>();
        try (var connection = database.getConnection();
                PreparedStatement select = connection.prepareStatement(sql)) {
            select.setString(1, home.toString());
            select.setString(2, machine == null ? null : machine.toString());
            select.setString(3, day.toString());
            select.setString(4, day.toString());
            try (ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    told.add(row.getObject(1, UUID.class));
                }
            }
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
        return List.copyOf(of(told).values());
    }

    private static Recipient recipient(ResultSet row) throws SQLException {
        Words words = Words.in(Locales.of(row.getString(4)));
        return new Recipient(
                row.getObject(1, UUID.class),
                row.getString(2),
                row.getString(3),
                Places.lines(
                        words,
                        row.getString(9),
                        row.getString(5),
                        row.getString(6),
                        row.getString(7),
                        row.getString(8)),
                row.getString(4));
    }
}
