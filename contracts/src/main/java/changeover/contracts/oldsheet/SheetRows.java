package changeover.contracts.oldsheet;

import changeover.contracts.catalogue.CatalogueJson;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Writes understood lines, a statement for each table whatever their number; a home that is here already is left as it is. */
@ApplicationScoped
class SheetRows {

    private static final String CUSTOMERS = """
            insert into customer (key, name, language, phone, email, notes)
            select key, name, language, phone, email, note
              from jsonb_to_recordset(?::jsonb) as f (key text, name text, language text, phone text, email text, note text)
            on conflict (tenant_id, key) do nothing
            """;

    private static final String HOMES = """
            insert into home (key, street, unit_label, city, region, postal, country, to_be_read)
            select key, street, unit, city, region, postal, country, unread
              from jsonb_to_recordset(?::jsonb) as f (key text, street text, unit text, city text, region text, postal text,
                   country text, unread boolean)
            on conflict (tenant_id, key) do nothing
            returning key, id
            """;

    private static final String PARTS = """
            insert into home_part (home_id, customer_id, part, from_day)
            select f.home, c.id, part, f.since
              from jsonb_to_recordset(?::jsonb) as f (home uuid, customer text, since date)
              join customer c on c.tenant_id = current_tenant() and c.key = f.customer
              cross join unnest(array['signs', 'pays', 'lives', 'lets_in', 'gets_report']) as part
            """;

    private static final String UNITS = """
            insert into equipment (home_id, kind, name, make, model, serial, installed_on, position)
            select home, kind, name, make, model, serial, installed, position
              from jsonb_to_recordset(?::jsonb) as f (home uuid, kind text, name text, make text, model text, serial text,
                   installed date, position int)
            """;

    @Inject
    AgroalDataSource datasource;

    @Inject
    EntityManager session;

    /** Which of these keys are homes already. */
    Set<String> here(List<OldHome> homes) {
        return ids(
                        "select key, id from home where key = any (?)",
                        homes.stream().map(home -> home.where().key()).toList())
                .keySet();
    }

    /** The customers of these keys. */
    Map<String, UUID> customersOf(List<String> keys) {
        return ids("select key, id from customer where key = any (?)", keys);
    }

    private Map<String, UUID> ids(String sql, List<String> keys) {
        Map<String, UUID> ids = new HashMap<>();
        try (Connection connection = datasource.getConnection();
                var ask = connection.prepareStatement(sql)) {
            ask.setArray(1, connection.createArrayOf("text", keys.toArray()));
            try (var row = ask.executeQuery()) {
                while (row.next()) {
                    ids.put(row.getString(1), row.getObject(2, UUID.class));
                }
            }
            return ids;
        } catch (SQLException cause) {
            throw new IllegalStateException("the homes could not be asked for", cause);
        }
    }

    /**
     * @param names of the kinds, by code
     * @return the new homes' ids by their keys
     */
    Map<String, UUID> write(List<OldHome> homes, Map<String, KindName> names, LocalDate day) {
        session.flush();
        try (Connection connection = datasource.getConnection()) {
            run(connection, CUSTOMERS, customers(homes));
            Map<String, UUID> ids = homes(connection, homes);
            List<OldHome> fresh = homes.stream()
                    .filter(home -> ids.containsKey(home.where().key()))
                    .toList();
            run(
                    connection,
                    PARTS,
                    fresh.stream().map(home -> part(home, ids, day)).toList());
            run(
                    connection,
                    UNITS,
                    fresh.stream()
                            .flatMap(home -> units(home, ids, names).stream())
                            .toList());
            session.clear();
            return ids;
        } catch (SQLException cause) {
            throw new IllegalStateException("the old spreadsheet could not be written", cause);
        }
    }

    /** What a kind is called in each language. */
    record KindName(String english, String french) {

        String in(String language) {
            return language.equals("fr") ? french : english;
        }
    }

    /** Each customer once, with the notes of all their lines. */
    private static List<Map<String, @Nullable Object>> customers(List<OldHome> homes) {
        Map<String, Map<String, @Nullable Object>> customers = new LinkedHashMap<>();
        for (OldHome home : homes) {
            OldHome.Who who = home.who();
            Map<String, @Nullable Object> row = customers.computeIfAbsent(who.key(), key -> {
                Map<String, @Nullable Object> made = new LinkedHashMap<>();
                made.put("key", key);
                made.put("name", who.name());
                made.put("language", who.language());
                made.put("phone", who.phone());
                made.put("email", who.email());
                return made;
            });
            if (who.note() != null) {
                row.merge("note", who.note(), (one, more) -> one.equals(more) ? one : one + "\n" + more);
            }
        }
        return List.copyOf(customers.values());
    }

    private static Map<String, UUID> homes(Connection connection, List<OldHome> homes) throws SQLException {
        List<Map<String, @Nullable Object>> rows = new ArrayList<>();
        for (OldHome home : homes) {
            Map<String, @Nullable Object> row = new LinkedHashMap<>();
            row.put("key", home.where().key());
            row.put("street", home.where().street());
            row.put("unit", home.where().unitLabel());
            row.put("city", home.where().city());
            row.put("region", home.where().region());
            row.put("postal", home.where().postal());
            row.put("country", home.where().country());
            row.put("unread", home.toBeRead());
            rows.add(row);
        }
        Map<String, UUID> ids = new HashMap<>();
        try (var insert = connection.prepareStatement(HOMES)) {
            insert.setString(1, CatalogueJson.write(rows));
            try (var made = insert.executeQuery()) {
                while (made.next()) {
                    ids.put(made.getString(1), made.getObject(2, UUID.class));
                }
            }
        }
        return ids;
    }

    private static Map<String, @Nullable Object> part(OldHome home, Map<String, UUID> ids, LocalDate day) {
        OldHome.Deal deal = home.agreement();
        LocalDate since = deal != null && deal.from().isBefore(day) ? deal.from() : day;
        Map<String, @Nullable Object> row = new LinkedHashMap<>();
        row.put("home", ids.get(home.where().key()));
        row.put("customer", home.who().key());
        row.put("since", since.toString());
        return row;
    }

    private static List<Map<String, @Nullable Object>> units(
            OldHome home, Map<String, UUID> ids, Map<String, KindName> names) {
        List<Map<String, @Nullable Object>> units = new ArrayList<>();
        Map<String, Integer> counted = new HashMap<>();
        for (OldHome.Unit unit : home.units()) {
            KindName kind = names.getOrDefault(unit.kind(), new KindName(unit.kind(), unit.kind()));
            String name = kind.in(home.who().language());
            int nth = counted.merge(name, 1, Integer::sum);
            Map<String, @Nullable Object> row = new LinkedHashMap<>();
            row.put("home", ids.get(home.where().key()));
            row.put("kind", unit.kind());
            row.put("name", nth == 1 ? name : name + " " + nth);
            row.put("make", unit.make());
            row.put("model", unit.model());
            row.put("serial", unit.serial());
            row.put(
                    "installed",
                    unit.installed() == null ? null : unit.installed().toString());
            row.put("position", units.size() + 1);
            units.add(row);
        }
        return units;
    }

    private static void run(Connection connection, String sql, Object rows) throws SQLException {
        try (var statement = connection.prepareStatement(sql)) {
            statement.setString(1, CatalogueJson.write(rows));
            statement.executeUpdate();
        }
    }
}
