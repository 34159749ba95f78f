package changeover.contracts.homesfile;

import changeover.contracts.customers.AccessCodes;
import changeover.contracts.customers.EquipmentRead;
import changeover.contracts.tenants.Today;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

/** Writes understood rows, a statement for each table whatever their number. */
@ApplicationScoped
class HomesRows {

    private static final String CUSTOMERS = """
            insert into customer as c (key, name, language, phone, email)
            select customer, customer, language, phone, email
              from jsonb_to_recordset(?::jsonb) as f (customer text, language text, phone text, email text)
            on conflict (tenant_id, key) do update
              set language = excluded.language, phone = excluded.phone, email = excluded.email, version = c.version + 1
              where (c.language, c.phone, c.email) is distinct from (excluded.language, excluded.phone, excluded.email)
            """;

    private static final String HOMES = """
            insert into home as h (key, street, city, region, postal, country, latitude, longitude, to_be_read)
            select key, street, city, region, postal, country, latitude, longitude, unread
              from jsonb_to_recordset(?::jsonb) as f (key text, street text, city text, region text, postal text,
                   country text, latitude numeric, longitude numeric, unread boolean)
            on conflict (tenant_id, key) do update
              set street = excluded.street, city = excluded.city, region = excluded.region, postal = excluded.postal,
                  country = excluded.country, latitude = excluded.latitude, longitude = excluded.longitude,
                  version = h.version + 1
              where (h.street, h.city, h.region, h.postal, h.country, h.latitude, h.longitude) is distinct from
                    (excluded.street, excluded.city, excluded.region, excluded.postal, excluded.country,
                     excluded.latitude, excluded.longitude)
            """;

    /** Where the file names another customer than the one who signs today, the old one's parts end today. */
    private static final String PARTS_END = """
            with wanted as (select h.id as home_id, c.id as customer_id
              from jsonb_to_recordset(?::jsonb) as f (key text, customer text)
              join home h on h.tenant_id = current_tenant() and h.key = f.key
              join customer c on c.tenant_id = h.tenant_id and c.key = f.customer)
            update home_part p set until_day = greatest(?::date, p.from_day + 1)
              from wanted w where p.tenant_id = current_tenant() and p.home_id = w.home_id and p.until_day is null
               and exists (select from home_part s where (s.tenant_id, s.home_id) = (p.tenant_id, p.home_id)
                    and s.part = 'signs' and s.until_day is null and s.customer_id <> w.customer_id)
            """;

    private static final String PARTS_BEGIN = """
            insert into home_part (home_id, customer_id, part, from_day)
            select h.id, c.id, part, greatest(?::date, coalesce((select max(o.until_day) from home_part o
                     where (o.tenant_id, o.home_id) = (h.tenant_id, h.id)), ?::date))
              from jsonb_to_recordset(?::jsonb) as f (key text, customer text)
              join home h on h.tenant_id = current_tenant() and h.key = f.key
              join customer c on c.tenant_id = h.tenant_id and c.key = f.customer
              cross join unnest(array['signs', 'pays', 'lives', 'lets_in', 'gets_report']) as part
             where not exists (select from home_part p where (p.tenant_id, p.home_id) = (h.tenant_id, h.id)
                    and p.part = 'signs' and p.until_day is null)
            """;

    private static final String UNITS = """
            insert into equipment as e
                   (home_id, owner_customer_id, kind, name, make, model, serial, installed_on, fits, nameplate, position)
            select h.id, null, f.kind, f.name, f.make, f.model, f.serial, f.installed, f.fits, f.nameplate, f.position
              from jsonb_to_recordset(?::jsonb) as f (key text, kind text, name text, make text, model text, serial text,
                   installed date, fits jsonb, nameplate jsonb, position int)
              join home h on h.tenant_id = current_tenant() and h.key = f.key
            on conflict (tenant_id, coalesce(home_id, building_id), name) where ended_on is null do update
              set kind = excluded.kind, make = excluded.make, model = excluded.model, serial = excluded.serial,
                  installed_on = excluded.installed_on, fits = excluded.fits, nameplate = excluded.nameplate,
                  version = e.version + 1
              where (e.kind, e.make, e.model, e.serial, e.installed_on, e.fits, e.nameplate) is distinct from
                    (excluded.kind, excluded.make, excluded.model, excluded.serial, excluded.installed_on,
                     excluded.fits, excluded.nameplate)
            """;

    private static final String READ = """
            update home h set to_be_read = false, version = version + 1
             where h.tenant_id = current_tenant() and h.to_be_read
               and h.key in (select f.key from jsonb_to_recordset(?::jsonb) as f (key text))
            returning h.id
            """;

    @Inject
    AgroalDataSource datasource;

    @Inject
    EntityManager session;

    @Inject
    AccessCodes codes;

    @Inject
    Today today;

    @Inject
    ObjectMapper json;

    @Inject
    Event<EquipmentRead> read;

    void write(List<ReadLine> lines) {
        session.flush();
        LocalDate day = today.day();
        Map<String, List<ReadLine>> homes = lines.stream()
                .collect(Collectors.groupingBy(read -> read.home().key(), LinkedHashMap::new, Collectors.toList()));
        List<ReadLine> first = homes.values().stream().map(List::getFirst).toList();
        Map<String, ReadLine> customers = new LinkedHashMap<>();
        lines.forEach(read -> customers.putIfAbsent(read.home().customer(), read));
        String owners = said(first.stream().map(ReadLine::home).toList());
        try (Connection connection = datasource.getConnection()) {
            run(
                    connection,
                    CUSTOMERS,
                    said(customers.values().stream().map(ReadLine::home).toList()));
            run(
                    connection,
                    HOMES,
                    said(first.stream().map(read -> home(read, homes)).toList()));
            run(connection, PARTS_END, owners, day);
            run(connection, PARTS_BEGIN, day, day, owners);
            String units =
                    said(homes.values().stream().flatMap(HomesRows::units).toList());
            run(connection, UNITS, units);
            List<UUID> known = read(connection, units);
            session.clear();
            if (!known.isEmpty()) {
                read.fire(new EquipmentRead(known, day));
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("the homes file could not be written", cause);
        }
        access(first);
    }

    /** The homes whose machines were to be read and are in the file. */
    private static List<UUID> read(Connection connection, String units) throws SQLException {
        var known = new java.util.ArrayList<UUID>();
        try (var update = connection.prepareStatement(READ)) {
            update.setString(1, units);
            try (var row = update.executeQuery()) {
                while (row.next()) {
                    known.add(row.getObject(1, UUID.class));
                }
            }
        }
        return known;
    }

    private static Map<String, Object> home(ReadLine read, Map<String, List<ReadLine>> homes) {
        ReadLine.HomeCells cells = read.home();
        var row = new LinkedHashMap<String, Object>();
        row.put("key", cells.key());
        row.put("street", cells.street());
        row.put("city", cells.city());
        row.put("region", cells.region());
        row.put("postal", cells.postal());
        row.put("country", cells.country());
        row.put("latitude", cells.latitude());
        row.put("longitude", cells.longitude());
        row.put("unread", homes.getOrDefault(cells.key(), List.of()).stream().allMatch(one -> one.unit() == null));
        return row;
    }

    private static java.util.stream.Stream<Map<String, Object>> units(List<ReadLine> home) {
        var units = new java.util.ArrayList<Map<String, Object>>();
        for (ReadLine read : home) {
            ReadLine.UnitCells unit = read.unit();
            if (unit != null) {
                var row = new LinkedHashMap<String, Object>();
                row.put("key", read.home().key());
                row.put("kind", unit.kind());
                row.put("name", unit.name());
                row.put("make", unit.make());
                row.put("model", unit.model());
                row.put("serial", unit.serial());
                row.put(
                        "installed",
                        unit.installed() == null ? null : unit.installed().toString());
                row.put("fits", unit.fits());
                row.put("nameplate", unit.nameplate());
                row.put("position", units.size() + 1);
                units.add(row);
            }
        }
        return units.stream();
    }

    /** Keys and codes are few: one by one, through the register that encrypts them; a known one is replaced. */
    private void access(List<ReadLine> homes) {
        for (ReadLine read : homes) {
            if (read.home().access().isEmpty()) {
                continue;
            }
            UUID home = session.createQuery("select id from Home where key = :key", UUID.class)
                    .setParameter("key", read.home().key())
                    .getSingleResult();
            for (ReadLine.Access access : read.home().access()) {
                codes.list(home).stream()
                        .filter(known -> known.kind().equals(access.kind())
                                && known.label().equals(access.label()))
                        .forEach(known -> codes.remove(known.id()));
                codes.add(home, access.kind(), access.label(), access.secret());
            }
        }
    }

    private String said(Object rows) {
        try {
            return json.writeValueAsString(rows);
        } catch (JsonProcessingException cause) {
            throw new IllegalStateException(cause);
        }
    }

    private static void run(Connection connection, String sql, Object... values) throws SQLException {
        try (var statement = connection.prepareStatement(sql)) {
            for (int i = 0; i < values.length; i++) {
                statement.setObject(i + 1, values[i]);
            }
            statement.executeUpdate();
        }
    }
}
