package changeover.scheduling.visits;

import changeover.contracts.calendar.Window;
import changeover.contracts.customers.HomesShut;
import changeover.contracts.customers.ShutTimes;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

/** When the homes of agreements are shut: one statement, however many agreements. A home that never is, is missing. */
final class ShutInYears {

    /** Some windows of a term close after it. */
    private static final String OF_AGREEMENTS = """
            select a.id, s.from_day, s.until_day from agreement a
              join """ + HomesShut.TIMES + """
             s on s.tenant_id = a.tenant_id and s.home_id = a.home_id and s.from_day < a.term_until + 366
              and (s.until_day is null or s.until_day > a.term_from)
             where a.id = any (?::uuid[])
            """;

    private static final String OF_HOMES = "select s.home_id, s.from_day, s.until_day from " + HomesShut.TIMES
            + " s where s.home_id = any (?::uuid[])";

    private final Connection connection;

    ShutInYears(Connection connection) {
        this.connection = connection;
    }

    /** By the agreement. */
    Map<UUID, ShutTimes> ofAgreements(Collection<UUID> agreements) throws SQLException {
        return read(OF_AGREEMENTS, agreements);
    }

    Map<UUID, ShutTimes> ofHomes(Collection<UUID> homes) throws SQLException {
        return read(OF_HOMES, homes);
    }

    private Map<UUID, ShutTimes> read(String sql, Collection<UUID> ids) throws SQLException {
        Map<UUID, List<Window>> times = new HashMap<>();
        try (var ask = connection.prepareStatement(sql)) {
            ask.setArray(1, connection.createArrayOf("uuid", ids.toArray()));
            try (ResultSet row = ask.executeQuery()) {
                while (row.next()) {
                    times.computeIfAbsent(row.getObject(1, UUID.class), _ -> new ArrayList<>())
                            .add(ShutTimes.time(row.getObject(2, LocalDate.class), row.getObject(3, LocalDate.class)));
                }
            }
        }
        return times.entrySet().stream()
                .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, one -> new ShutTimes(one.getValue())));
    }
}
