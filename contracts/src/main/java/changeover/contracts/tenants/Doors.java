package changeover.contracts.tenants;

import io.agroal.api.AgroalDataSource;
import io.quarkus.agroal.DataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * Which business stands at an address, and whether the person who knocks belongs there. Read through the second, small
 * datasource, because no business is in force yet.
 */
@ApplicationScoped
public class Doors {

    private static final String MEMBER = """
            select b.id, b.slug, b.name, b.zone, b.language, m.role, m.until_day, m.language
              from membership m join business b on b.id = m.tenant_id
             where m.person_id = ?
            """;

    private static final String JOINED = " and (m.asked_on is null or m.joined_on is not null)";
    private static final String ASKED = " and m.asked_on is not null and m.joined_on is null and m.declined_on is null";

    @Inject
    @DataSource("lookup")
    AgroalDataSource lookup;

    @Inject
    Clock clock;

    /** The door of one business for one person; empty when there is no such business or the person does not belong. */
    public Optional<Door> of(String slug, UUID personId) {
        return doors(MEMBER + JOINED + " and b.slug = ?", personId, slug).stream()
                .findFirst();
    }

    /** Every business that the person belongs to, by name. */
    public List<Door> ofPerson(UUID personId) {
        return doors(MEMBER + JOINED + " order by b.name", personId, null);
    }

    /** Every business that waits for the person's yes, by name; none of their doors is open to them yet. */
    public List<Door> asking(UUID personId) {
        return doors(MEMBER + ASKED + " order by b.name", personId, null);
    }

    /** Whether the person has, or ever had, a place in any other business than this one. */
    public boolean worksElsewhere(UUID personId, UUID tenant) {
        return !read(
                        "select 1 from membership where person_id = ? and tenant_id <> ? limit 1",
                        row -> row.getInt(1),
                        personId,
                        tenant)
                .isEmpty();
    }

    /** Every business of the installation, for timers. */
    public List<UUID> tenants() {
        return read("select id from business order by id", row -> row.getObject(1, UUID.class));
    }

    /** The id behind an address, for commands and links. */
    public Optional<UUID> tenant(String slug) {
        return read("select id from business where slug = ?", row -> row.getObject(1, UUID.class), slug).stream()
                .findFirst();
    }

    private List<Door> doors(String sql, UUID personId, @org.jspecify.annotations.Nullable String slug) {
        var found = slug == null ? read(sql, this::door, personId) : read(sql, this::door, personId, slug);
        return found.stream().flatMap(Optional::stream).toList();
    }

    private Optional<Door> door(ResultSet row) throws SQLException {
        ZoneId zone = ZoneId.of(row.getString(4));
        LocalDate until = row.getObject(7, LocalDate.class);
        if (until != null && LocalDate.now(clock.withZone(zone)).isAfter(until)) {
            return Optional.empty();
        }
        return Optional.of(new Door(
                row.getObject(1, UUID.class),
                row.getString(2),
                row.getString(3),
                zone,
                row.getString(5),
                Role.of(row.getString(6)),
                row.getString(8)));
    }

    private interface Reading<T> {
        T of(ResultSet row) throws SQLException;
    }

    private <T> List<T> read(String sql, Reading<T> reading, Object... facts) {
        try (var connection = lookup.getConnection();
                PreparedStatement ask = connection.prepareStatement(sql)) {
            for (int i = 0; i < facts.length; i++) {
                ask.setObject(i + 1, facts[i]);
            }
            var found = new ArrayList<T>();
            try (ResultSet row = ask.executeQuery()) {
                while (row.next()) {
                    found.add(reading.of(row));
                }
            }
            return found;
        } catch (SQLException cause) {
            throw new IllegalStateException("the doors could not be read", cause);
        }
    }
}
